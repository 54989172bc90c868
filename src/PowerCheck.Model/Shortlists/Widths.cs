using MathNet.Numerics.Distributions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Shortlists;

/// <summary>How far the limits of a rig are spread, taken over to rigs that are nearly the same.</summary>
/// <param name="findings">What was found of the rig, with its spread.</param>
internal sealed class Widths(IReadOnlyList<Finding> findings)
{
    /// <summary>The findings of a rig as its spread would weigh them.</summary>
    /// <param name="found">What was found of it by its best estimate.</param>
    public IReadOnlyList<Finding> Weigh(IReadOnlyList<Finding> found) =>
        Judgement.Weigh(found, [.. found.Select(Of)]);

    private Chance? Of(Finding finding)
    {
        var like = Reaches.Same(finding, findings);
        if (like?.Chance is not { } chance || double.IsNaN(finding.Reach))
        {
            return null;
        }

        var distance = Reaches.Distance(finding);
        return chance with
        {
            Exceedance =
                chance.Width > 0 ? Normal.CDF(0, 1, (distance / chance.Width) + Skew(like, chance))
                : distance > 0 ? 1
                : 0,
        };
    }

    // What the probability was past that of a distance without any skew; far from the limit it cannot be told.
    private static double Skew(Finding like, Chance chance) =>
        chance.Exceedance is > 0.001 and < 0.999
            ? Response.Deviate(chance.Exceedance) - (Reaches.Distance(like) / chance.Width)
            : 0;
}
