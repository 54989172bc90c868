using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Shortlists;

/// <summary>Inspects the rigs that are tried on the way to a requirement.</summary>
/// <param name="spread">How the spread of the figures is carried to the limits.</param>
/// <param name="stop">Tells that nobody waits for it any more.</param>
internal sealed class Inspector(SpreadMethod spread, CancellationToken stop)
{
    private readonly Dictionary<RigLabel, IReadOnlyList<Finding>> weighed = [];

    // That is where what is required ends.
    private static readonly IReadOnlyList<double> Sides = [Thresholds.CautionFrom];

    /// <summary>What holds of a rig by its best estimate.</summary>
    /// <param name="rig">The rig.</param>
    public static IReadOnlyList<Finding> Limits(RigLabel rig) =>
        Judgement.Limits(RigCompletion.Of(rig).Inspect());

    /// <summary>What holds of it with the spread of its figures.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="held">The limits that are looked at.</param>
    public IReadOnlyList<Finding> Weighed(RigLabel rig, Held held) =>
        Check.Weighed(rig, spread, Sides, held.IsAbout, stop);

    /// <summary>The same of all limits.</summary>
    /// <param name="rig">The rig.</param>
    public IReadOnlyList<Finding> Weighed(RigLabel rig)
    {
        if (!weighed.TryGetValue(rig, out var findings))
        {
            weighed[rig] = findings = Check.Weighed(rig, spread, Sides, only: null, stop);
        }

        return findings;
    }
}
