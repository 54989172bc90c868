using PowerCheck.Model.Findings;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Remedies;

/// <summary>A limit that does not hold, and how far from it the figure must stay so that it does.</summary>
/// <param name="Finding">The limit.</param>
/// <param name="Margin">Distance to keep, in standard uncertainties of that distance.</param>
internal sealed record Aim(Finding Finding, double Margin)
{
    /// <summary>Distances that are tried one after the other: the first leaves a probability of 0.14, assumed.</summary>
    private static readonly double[] Margins = [1.1, 1.4, 1.8, 2.5];

    /// <summary>Ever safer aims at a limit; without a spread there is only one.</summary>
    /// <param name="finding">The limit.</param>
    public static IEnumerable<Aim> At(Finding finding) =>
        (finding.Chance is null ? [0.0] : Margins).Select(margin => new Aim(finding, margin));

    /// <summary>Whether the best estimate of another rig keeps the distance.</summary>
    /// <param name="findings">What was found of the other rig.</param>
    public bool Met(IReadOnlyList<Finding> findings)
    {
        if (Reaches.Same(Finding, findings) is not { } found || found.Outcome == Outcome.Unknown)
        {
            return false;
        }

        return Finding.Chance is { } chance
            ? !found.InDoubt && Reaches.Distance(found) <= -Margin * chance.Width
            : found.Outcome == Outcome.Holds;
    }
}
