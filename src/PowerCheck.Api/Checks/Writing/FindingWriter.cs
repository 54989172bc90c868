using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes findings.</summary>
internal static class FindingWriter
{
    public static IReadOnlyList<FindingAnswer> Write(IReadOnlyList<Finding> findings, bool all) =>
        [.. findings.Where(finding => all || Tells(finding)).Select(Write)];

    private static bool Tells(Finding finding) =>
        finding.Outcome != Outcome.Holds || finding.Caution || finding.Decides;

    private static FindingAnswer Write(Finding finding) =>
        new()
        {
            Code = finding.Kind.Code,
            Outcome = Words.Of(finding.Outcome),
            Severity = Words.Of(finding.Kind.Severity),
            Effect = Words.Of(finding.Kind.Effect),
            Decides = finding.Decides,
            Part = finding.Kind.Part,
            LoadCase = finding.LoadCase,
            Estimate = Shown.Figure(finding.Estimate, finding.Unit),
            Low = Shown.Figure(finding.Chance?.Low ?? double.NaN, finding.Unit),
            High = Shown.Figure(finding.Chance?.High ?? double.NaN, finding.Unit),
            Limit = Shown.Figure(finding.Limit, finding.Unit),
            Unit = Shown.Symbol(finding.Unit),
            ExceedanceProbability = Shown.Probability(finding.Chance?.Exceedance),
            Seconds = Shown.Figure(finding.DurationS),
            Message = finding.Message,
            DecidedBy = finding.Chance is { DecidedBy.Count: > 0 } chance
                ? [.. chance.DecidedBy.Select(Write)]
                : null,
            Needs = finding.Needs.Count == 0 ? null : [.. finding.Needs.Select(Write)],
            Measure = finding.Measure is { } measure
                ? new() { Path = measure.Path, How = measure.How }
                : null,
            Remedies =
                finding.Remedies.Count == 0
                    ? null
                    : [.. finding.Remedies.Select(RemedyWriter.Write)],
            Sources = finding.Kind.Sources,
        };

    private static ShareAnswer Write(Share share) =>
        new() { Path = share.Path, Share = Shown.Probability(share.Part)!.Value };

    private static NeedAnswer Write(Need need)
    {
        var threshold = Shown.Figure(need.Threshold, need.Unit);
        return new()
        {
            Path = need.Path,
            Threshold = threshold,
            Unit = Shown.Symbol(need.Unit),
            HoldsBelow = threshold is null ? null : need.HoldsBelow,
        };
    }
}
