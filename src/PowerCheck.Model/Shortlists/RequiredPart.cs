using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Shortlists;

/// <summary>What a part must be able to do that is left open (M14).</summary>
/// <param name="Requirements">The figures that the part must have, each with the limit that sets it.</param>
/// <param name="Settled">The rig with a part that has just these.</param>
/// <param name="Assumptions">What was assumed of the rig and of the part.</param>
/// <param name="Unmet">The limits that do not hold in a rig with a part that has just these.</param>
public sealed record RequiredPart(
    IReadOnlyList<Requirement> Requirements,
    RigLabel Settled,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<Finding> Unmet
)
{
    /// <summary>The figures that the part must have so that every limit that it can help holds without a caution.</summary>
    /// <remarks>
    /// Each figure is settled at what it needs before the next is sought, so that a part that has just these holds. With spread
    /// the window of a figure is foretold by the widths of the limits of the rig so far, and its bounds are found by checks.
    /// </remarks>
    /// <param name="label">The rig without the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="spread">How the spread of the figures is carried to the limits.</param>
    /// <param name="stop">Tells that nobody waits for it any more.</param>
    public static RequiredPart Of(
        RigLabel label,
        SoughtPart part,
        SpreadMethod spread,
        CancellationToken stop = default
    )
    {
        var open = OpenPart.Of(part, label);
        var inspector = new Inspector(spread, stop);
        var rig = open.Label;
        var found = new List<Requirement>();
        foreach (var figure in open.Figures)
        {
            stop.ThrowIfCancellationRequested();
            var settled =
                spread == SpreadMethod.None
                    ? SettledFigure.Of(new(rig, figure))
                    : SettledFigure.Of(new(rig, figure), inspector);
            // A figure may be settled again once others are.
            found.RemoveAll(required =>
                string.Equals(required.Path, figure.Path, StringComparison.Ordinal)
            );
            found.AddRange(settled.Requirements);
            rig = settled.Rig;
        }

        return new(
            found,
            rig,
            [.. open.Assumed, .. RigCompletion.Of(rig).Ledger.Assumptions],
            [
                .. Check
                    .Run(rig, spread, remedies: false, stop)
                    .Findings.Where(finding => IsUnmet(finding, part)),
            ]
        );
    }

    // What is unknown only for want of words of the part itself is told where they are asked for.
    private static bool IsUnmet(Finding finding, SoughtPart part) =>
        finding is { Kind.Judged: true, Outcome: not Outcome.Holds }
        && (
            finding.Needs.Count == 0
            || finding.Needs.Any(need =>
                !need.Path.StartsWith(OpenPart.Prefix(part), StringComparison.Ordinal)
            )
        );
}
