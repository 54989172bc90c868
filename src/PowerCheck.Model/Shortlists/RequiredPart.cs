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
public sealed record RequiredPart(
    IReadOnlyList<Requirement> Requirements,
    RigLabel Settled,
    IReadOnlyList<Assumption> Assumptions
)
{
    /// <summary>How often the spread is looked at again at what it asks for, assumed enough.</summary>
    private const int Rounds = 2;

    /// <summary>The figures that the part must have so that every limit that it can help holds without a caution.</summary>
    /// <remarks>
    /// With spread, first by the best estimate; then by how far the limits of a part of just that kind are spread, which
    /// changes little with the part.
    /// </remarks>
    /// <param name="label">The rig without the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="spread">How the spread of the figures is carried to the limits.</param>
    public static RequiredPart Of(RigLabel label, SoughtPart part, SpreadMethod spread)
    {
        var open = OpenPart.Of(part, label);
        var found = Of(open, Limits);
        for (var round = 0; spread != SpreadMethod.None && round < Rounds; round++)
        {
            var widths = new Widths(Check.Run(found.Settled, spread).Findings);
            found = Of(open, rig => widths.Weigh(Limits(rig)));
        }

        return found;
    }

    private static IReadOnlyList<Finding> Limits(RigLabel rig) =>
        Judgement.Limits(RigCompletion.Of(rig).Inspect());

    // Each figure is settled at what it needs before the next is sought, so that a part that has just these holds.
    private static RequiredPart Of(OpenPart open, Inspect inspect)
    {
        var rig = open.Label;
        var found = new List<Requirement>();
        foreach (var figure in open.Figures)
        {
            var window = new Window(rig, figure, inspect);
            found.AddRange(window.Requirements);
            rig = window.Settled;
        }

        return new(found, rig, [.. open.Assumed, .. RigCompletion.Of(rig).Ledger.Assumptions]);
    }
}
