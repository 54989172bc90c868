using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Shortlists;

/// <summary>What a part must be able to do that is left open, and which of some candidates do best (M14).</summary>
/// <param name="Requirements">What it must be able to do.</param>
/// <param name="Assumptions">What was assumed to find that.</param>
/// <param name="Unmet">The limits that do not hold with a part that has just what is required.</param>
/// <param name="Candidates">The candidates in order.</param>
public sealed record Shortlist(
    IReadOnlyList<Requirement> Requirements,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<Finding> Unmet,
    IReadOnlyList<Ranked> Candidates
)
{
    /// <summary>Finds the requirement and ranks the candidates.</summary>
    /// <param name="label">The rig without the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="fitted">The rig with the part that is fitted; null when none is.</param>
    /// <param name="candidates">The candidates.</param>
    /// <param name="order">What they are ordered by.</param>
    /// <param name="spread">How the spread of the figures is carried to the limits.</param>
    /// <param name="stop">Tells that nobody waits for the answer any more.</param>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public static Shortlist Of(
        RigLabel label,
        SoughtPart part,
        RigLabel? fitted,
        IReadOnlyList<Candidate> candidates,
        ShortlistOrder order,
        SpreadMethod spread,
        CancellationToken stop = default
    )
    {
        var required = RequiredPart.Of(label, part, spread, stop);
        return new(
            [.. RequiredWords.Of(label, part), .. required.Requirements],
            required.Assumptions,
            required.Unmet,
            Ranking.Of(candidates, fitted, part, order, spread, stop)
        );
    }
}
