using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Assumptions;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes assumptions, figures in the unit of the member that would have given them.</summary>
internal static class AssumptionWriter
{
    public static AssumptionAnswer Write(Assumption assumption) =>
        new()
        {
            Path = assumption.Path,
            Value = Shown.Figure(assumption.Value, assumption.Unit),
            Word = assumption.Word,
            Unit = Shown.Symbol(assumption.Unit),
            Spread = ToleranceWriter.Spread(assumption.Spread, assumption.Value, assumption.Unit),
            Basis = assumption.Basis,
            Source = assumption.Source,
        };
}
