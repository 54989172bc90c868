namespace PowerCheck.Model.Findings;

/// <summary>Every kind of finding that a check can make.</summary>
public static class FindingCatalogue
{
    /// <summary>All kinds, by part.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [];
}
