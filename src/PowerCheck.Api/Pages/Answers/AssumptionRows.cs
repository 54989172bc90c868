using PowerCheck.Api.Checks.Answers;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>What was assumed, that first which decides the verdict.</summary>
internal static class AssumptionRows
{
    /// <summary>The assumptions, each with its share in the distance to the deciding limit; null for none.</summary>
    public static IEnumerable<(AssumptionAnswer Assumption, double? Share)> Of(CheckAnswer answer)
    {
        var deciding = answer.Findings.FirstOrDefault(finding => finding.Decides);
        var shares = (deciding?.DecidedBy ?? []).ToDictionary(
            share => share.Path,
            share => share.Share,
            StringComparer.Ordinal
        );
        // Sorting keeps the order of equals.
        return answer
            .Assumptions.Select(one =>
                (one, shares.TryGetValue(one.Path, out var share) ? share : (double?)null)
            )
            .OrderByDescending(pair => pair.Item2 ?? 0);
    }
}
