using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Batches.Outcomes;

/// <summary>Counts what became of the lines.</summary>
internal sealed class Tally
{
    private readonly Dictionary<string, long> verdicts = Enum.GetValues<Verdict>()
        .ToDictionary(verdict => Words.Of(verdict), _ => 0L, StringComparer.Ordinal);
    private long problems;
    private long lastLine;

    /// <summary>Counts an outcome.</summary>
    /// <param name="line">Its line.</param>
    /// <param name="verdict">Its verdict; null for a problem.</param>
    public void Count(long line, string? verdict)
    {
        lastLine = line;
        if (verdict is null)
        {
            problems++;
        }
        else
        {
            verdicts[verdict]++;
        }
    }

    /// <summary>The tally as it is answered.</summary>
    /// <param name="reason">Why not all of the request is answered; null when all is.</param>
    /// <param name="firstLine">Where the first rig stands.</param>
    public TallyAnswer Write(Reason? reason, long firstLine) =>
        new()
        {
            Kind = "tally",
            Lines = verdicts.Values.Sum() + problems,
            Verdicts = new()
            {
                Suitable = verdicts[Words.Of(Verdict.Suitable)],
                Limited = verdicts[Words.Of(Verdict.Limited)],
                Unsuitable = verdicts[Words.Of(Verdict.Unsuitable)],
                Undetermined = verdicts[Words.Of(Verdict.Undetermined)],
            },
            Problems = problems,
            Complete = reason is null,
            Reason = reason?.Word,
            Message = reason?.Message,
            NextLine = reason is null ? null : Math.Max(firstLine, lastLine + 1),
            Model = new() { Version = ModelVersion.Current },
            BatterySafety = SafetyBlock.Plain,
        };
}
