using PowerCheck.Model.Units;

namespace PowerCheck.Model.Findings;

/// <summary>One limit held against one figure, and what came of it.</summary>
public sealed record Finding
{
    /// <summary>What kind of finding it is.</summary>
    public required FindingKind Kind { get; init; }

    /// <summary>What came of it.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>Whether it holds but deserves a word all the same.</summary>
    public bool Caution { get; init; }

    /// <summary>Whether it holds and there is no more to say.</summary>
    public bool IsHeld => Outcome == Outcome.Holds && !Caution;

    /// <summary>Whether it decides the verdict.</summary>
    public bool Decides { get; init; }

    /// <summary>The load case, or "course"; null where the whole rig is meant.</summary>
    public string? LoadCase { get; init; }

    /// <summary>The computed figure, SI; NaN when there is none or it is not known.</summary>
    public double Estimate { get; init; } = double.NaN;

    /// <summary>The limit, SI; NaN when there is none or it is not known.</summary>
    public double Limit { get; init; } = double.NaN;

    /// <summary>The unit in which both are shown.</summary>
    public Unit Unit { get; init; } = Unit.One;

    /// <summary>For how long it is judged, or the time that the message speaks of [s]; NaN when there is none.</summary>
    public double DurationS { get; init; } = double.NaN;

    /// <summary>How close the figure is to the limit: 1 at the limit, above 1 past it; NaN when not known.</summary>
    public double Severeness { get; init; } = double.NaN;

    /// <summary>
    /// How far the figure has come towards its limit without any step: 1 at the limit, above 1 past it; NaN where nothing is
    /// compared or known. What the probability of being past the limit is found from.
    /// </summary>
    public double Reach { get; init; } = double.NaN;

    /// <summary>The worst outcome that it can have.</summary>
    public Outcome Worst { get; init; } = Outcome.Fails;

    /// <summary>Whether a rule of its own puts it in doubt short of the limit.</summary>
    public bool InDoubt { get; init; }

    /// <summary>Whether the figure is the most that it can be, so that past the limit nothing is known.</summary>
    public bool Bound { get; init; }

    /// <summary>How sure it is; null where that was not asked for or nothing can be said.</summary>
    public Chance? Chance { get; init; }

    /// <summary>What was computed, the limit, and what it means, in plain words; made when it is read.</summary>
    public string Message => Sentence(this);

    /// <summary>Makes the message.</summary>
    public required Func<Finding, string> Sentence { get; init; }

    /// <summary>Whether all of <see cref="Needs"/> are needed together, else each alone would do.</summary>
    public bool NeedsAll { get; init; }

    /// <summary>What would have to be known; empty unless the outcome is unknown.</summary>
    public IReadOnlyList<Need> Needs { get; init; } = [];

    /// <summary>What to measure so that it is surer; null where that would not help.</summary>
    public Measure? Measure { get; init; }

    /// <summary>What each single thing that the builder can change does to it, the smallest change first; empty unless sought.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];
}

/// <summary>A figure that would decide an unknown outcome.</summary>
/// <param name="Path">The member that gives it.</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="Threshold">The value at which the outcome turns, SI; NaN when it does not turn on this figure alone.</param>
/// <param name="HoldsBelow">Whether the limit holds under the threshold (else above it).</param>
public sealed record Need(string Path, Unit Unit, double Threshold, bool HoldsBelow);

/// <summary>What came of a limit.</summary>
public enum Outcome
{
    /// <summary>Past the limit.</summary>
    Fails,

    /// <summary>So close to the limit that it may be past it.</summary>
    Doubtful,

    /// <summary>Within the limit.</summary>
    Holds,

    /// <summary>Not to be told from what was given.</summary>
    Unknown,
}

/// <summary>What may happen to people (signal words of ANSI Z535.4).</summary>
public enum Severity
{
    /// <summary>Will result in death or serious injury.</summary>
    Danger,

    /// <summary>Could result in death or serious injury.</summary>
    Warning,

    /// <summary>
    /// Could result in minor or moderate injury, as where a rig stops, rolls or loses a part unawares.
    /// </summary>
    Caution,

    /// <summary>Not about personal injury.</summary>
    Notice,
}

/// <summary>What a limit passed leads to.</summary>
public enum Effect
{
    /// <summary>Fire.</summary>
    Fire,

    /// <summary>Injury.</summary>
    Injury,

    /// <summary>Damage to a part.</summary>
    Damage,

    /// <summary>The rig shuts down or is lost from the radio.</summary>
    Shutdown,

    /// <summary>It does not do what is wanted.</summary>
    Performance,
}
