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
    /// <summary>
    /// How much further a probability is put than it comes to [standard deviations], and how much more each time that a check
    /// does not agree, assumed.
    /// </summary>
    private const double Spare = 0.02;

    /// <summary>How often a check may be asked, assumed enough.</summary>
    private const int Rounds = 6;

    /// <summary>The figures that the part must have so that every limit that it can help holds without a caution.</summary>
    /// <remarks>
    /// With spread, first by the best estimate; then by how far the limits of a part of just that kind are spread, which
    /// changes little with the part, until a check of it agrees.
    /// </remarks>
    /// <param name="label">The rig without the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="spread">How the spread of the figures is carried to the limits.</param>
    public static RequiredPart Of(RigLabel label, SoughtPart part, SpreadMethod spread)
    {
        var open = OpenPart.Of(part, label);
        var found = Of(open, Limits);
        if (spread == SpreadMethod.None)
        {
            return found;
        }

        var weighed = Check.Run(found.Settled, spread).Findings;
        var spares = new Dictionary<(string Code, string? LoadCase), double>();
        for (var round = 0; round < Rounds; round++)
        {
            var widths = new Widths(
                weighed,
                limit => spares.GetValueOrDefault((limit.Kind.Code, limit.LoadCase), Spare)
            );
            found = Of(open, rig => widths.Weigh(Limits(rig)));
            weighed = Check.Run(found.Settled, spread).Findings;
            var missed = found.Requirements.Where(required => !IsMet(required, weighed)).ToArray();
            if (round > 0 && missed.Length == 0)
            {
                break;
            }

            // The first round starts from a part far from what it must be.
            foreach (var required in round > 0 ? missed : [])
            {
                var key = (required.SetBy, required.LoadCase);
                spares[key] = spares.GetValueOrDefault(key, Spare) + Spare;
            }
        }

        return found;
    }

    private static bool IsMet(Requirement required, IReadOnlyList<Finding> findings) =>
        findings.Any(finding =>
            string.Equals(finding.Kind.Code, required.SetBy, StringComparison.Ordinal)
            && string.Equals(finding.LoadCase, required.LoadCase, StringComparison.Ordinal)
            && finding is { Outcome: Outcome.Holds, Caution: false }
        );

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
