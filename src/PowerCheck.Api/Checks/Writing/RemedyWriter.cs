using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes what single changes do, in the unit of the member that says them.</summary>
internal static class RemedyWriter
{
    public static RemedyAnswer Write(Remedy remedy) =>
        new()
        {
            Path = remedy.Path,
            From = Shown.Figure(remedy.From, remedy.Unit)!.Value,
            To = Shown.Figure(remedy.To, remedy.Unit),
            None = remedy.Verdict is null ? true : null,
            Unit = Shown.Symbol(remedy.Unit),
            Verdict = remedy.Verdict is { } verdict ? Words.Of(verdict) : null,
            Message = remedy.Message,
        };
}
