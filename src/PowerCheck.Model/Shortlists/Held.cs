using PowerCheck.Model.Findings;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Shortlists;

/// <summary>Limits that hold without a caution, and are to go on doing so.</summary>
/// <param name="limits">The limits.</param>
internal sealed class Held(IReadOnlyList<Finding> limits)
{
    /// <summary>How many they are.</summary>
    public int Count => limits.Count;

    /// <summary>Those of a rig.</summary>
    /// <param name="findings">What was found of it.</param>
    public static Held Of(IReadOnlyList<Finding> findings) => new([.. findings.Where(Is)]);

    /// <summary>Whether a limit is one of these.</summary>
    /// <param name="finding">The limit.</param>
    public static bool Is(Finding finding) => finding.Kind.Judged && finding.IsHeld;

    /// <summary>Those that hold in another rig too.</summary>
    /// <param name="findings">What was found of it.</param>
    public Held Also(IReadOnlyList<Finding> findings) =>
        new([.. limits.Where(limit => Holds(limit, findings))]);

    /// <summary>Whether a limit is of a kind that is among these.</summary>
    /// <param name="finding">The limit.</param>
    public bool IsAbout(Finding finding) => limits.Any(limit => limit.Kind == finding.Kind);

    /// <summary>The limit that does not hold in another rig, of several the farthest past it; null when all hold.</summary>
    /// <param name="findings">What was found of it.</param>
    public Finding? Broken(IReadOnlyList<Finding> findings) =>
        limits
            .Where(limit => !Holds(limit, findings))
            .MaxBy(limit =>
                Reaches.Same(limit, findings) is { } same
                    ? same.Chance?.Exceedance ?? same.Severeness
                    : double.NegativeInfinity
            );

    private static bool Holds(Finding limit, IReadOnlyList<Finding> findings) =>
        Reaches.Same(limit, findings) is { } same && Is(same);
}
