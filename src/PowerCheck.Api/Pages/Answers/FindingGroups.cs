using PowerCheck.Api.Checks.Answers;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>Findings of one outcome.</summary>
/// <param name="Title">What they are.</param>
/// <param name="Sign">A sign for each, so that color is not needed.</param>
/// <param name="Outcome">Their outcome.</param>
/// <param name="Findings">The findings.</param>
public sealed record FindingGroup(
    string Title,
    string Sign,
    string Outcome,
    IReadOnlyList<FindingAnswer> Findings
);

/// <summary>Sorts findings by what they mean.</summary>
internal static class FindingGroups
{
    private static readonly (string Outcome, string Title, string Sign)[] Kinds =
    [
        ("fails", "Fails", "✕"),
        ("doubtful", "In doubt", "≈"),
        ("unknown", "Cannot be told yet", "?"),
        ("holds", "Holds", "✓"),
    ];

    /// <summary>The groups that have findings, the gravest first.</summary>
    public static IEnumerable<FindingGroup> Of(IReadOnlyList<FindingAnswer> findings) =>
        Kinds
            .Select(kind => new FindingGroup(
                kind.Title,
                kind.Sign,
                kind.Outcome,
                [.. findings.Where(finding => IsOf(finding, kind.Outcome))]
            ))
            .Where(group => group.Findings.Count > 0);

    private static bool IsOf(FindingAnswer finding, string outcome) =>
        string.Equals(finding.Outcome, outcome, StringComparison.Ordinal);
}
