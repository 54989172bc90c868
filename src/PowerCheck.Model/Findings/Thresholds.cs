namespace PowerCheck.Model.Findings;

/// <summary>Every threshold of the verdict in one place (M13), all assumed.</summary>
public static class Thresholds
{
    /// <summary>Share of a limit from which on it is in doubt.</summary>
    public const double DoubtFrom = 0.9;

    /// <summary>Closeness given to what is in doubt by a rule of its own, not by a margin: between doubt and limit.</summary>
    public const double InDoubt = 0.95;

    /// <summary>Closeness given to what is past a limit that has no scale of its own.</summary>
    public const double PastLimit = 1.1;

    /// <summary>Torque reserve under which the climb fails.</summary>
    public const double ReserveFails = 1.0;

    /// <summary>Torque reserve under which the climb is in doubt.</summary>
    public const double ReserveDoubtful = 1.5;

    /// <summary>Duty at level creep under which the throttle cannot be felt.</summary>
    public const double DutyDoubtful = 0.03;

    /// <summary>Duty at level creep under which the throttle is coarse.</summary>
    public const double DutyCaution = 0.05;

    /// <summary>Overall ratios that are usual in crawling: lowest.</summary>
    public const double RatioLowest = 12;

    /// <summary>Overall ratios that are usual in crawling: highest.</summary>
    public const double RatioHighest = 120;

    /// <summary>Locked current over the lasting current from which on a commutator burns.</summary>
    public const double CommutatorFactor = 3;

    /// <summary>What a fuse carries for ever, over its rating. Source: iso8820.</summary>
    public const double FuseCarries = 1.10;

    /// <summary>From which multiple of its rating on a fuse may open within a second. Source: iso8820.</summary>
    public const double FuseMayOpen = 1.35;

    /// <summary>At which multiple of its rating a fuse opens within <see cref="FuseOpensS"/>. Source: iso8820.</summary>
    public const double FuseOpensAt = 2;

    /// <summary>Time within which a fuse opens at that multiple [s]. Source: iso8820.</summary>
    public const double FuseOpensS = 5;

    /// <summary>Largest difference of two pitches that still counts as the same: rounding of a printed module.</summary>
    public const double PitchRounding = 0.002;

    /// <summary>Probability of being past a limit from which on it fails.</summary>
    public const double FailsFrom = 0.8;

    /// <summary>Probability of being past a limit from which on it is in doubt.</summary>
    public const double DoubtfulFrom = 0.2;

    /// <summary>Probability of being past a limit from which on it holds with a caution only.</summary>
    public const double CautionFrom = 0.05;

    /// <summary>Probabilities at which the outcome is another one.</summary>
    public static readonly IReadOnlyList<double> Turns = [DoubtfulFrom, FailsFrom];

    /// <summary>What a probability comes to: past a limit by the best estimate it never holds.</summary>
    /// <param name="exceedance">Probability of being past the limit, 0 to 1.</param>
    /// <param name="past">Whether the best estimate is past the limit.</param>
    /// <param name="worst">The worst outcome that it can have.</param>
    /// <param name="inDoubt">Whether a rule of its own puts it in doubt short of the limit.</param>
    /// <param name="caution">Whether a rule of its own cautions though it holds.</param>
    /// <returns>The outcome, and whether it deserves a caution though it holds.</returns>
    public static (Outcome Outcome, bool Caution) Outcome(
        double exceedance,
        bool past,
        Outcome worst,
        bool inDoubt,
        bool caution
    )
    {
        var outcome =
            exceedance >= FailsFrom ? Findings.Outcome.Fails
            : exceedance >= DoubtfulFrom || past || inDoubt ? Findings.Outcome.Doubtful
            : Findings.Outcome.Holds;
        // The outcomes stand in falling order of weight.
        var capped = outcome < worst ? worst : outcome;
        return (capped, capped == Findings.Outcome.Holds && (caution || exceedance >= CautionFrom));
    }

    /// <summary>Probability on either side of which it is clear on which side of a limit a figure is.</summary>
    public const double ClearFrom = 0.95;

    /// <summary>Share of the variance from assumed figures from which on measuring comes first.</summary>
    public const double MostlyAssumed = 0.5;

    /// <summary>Whether it is not clear on which side of a limit a figure is.</summary>
    /// <param name="exceedance">Probability of being past the limit, 0 to 1.</param>
    public static bool IsOpen(double exceedance) => exceedance is > 1 - ClearFrom and < ClearFrom;

    /// <summary>How sure a verdict is that a limit decides.</summary>
    /// <param name="chance">How sure the limit is.</param>
    public static Confidence Confidence(Chance chance) =>
        !IsOpen(chance.Exceedance) ? Findings.Confidence.High
        : chance.DecidedBy.Count == 0
        || chance.DecidedBy.Where(share => share.Assumed).Sum(share => share.Part) > MostlyAssumed
            ? Findings.Confidence.Low
        : Findings.Confidence.Medium;

    /// <summary>What a severeness comes to: how close a figure is to its limit, 1 at it.</summary>
    /// <param name="severeness">Figure over limit, on the scale on which the margin is meant.</param>
    public static Outcome Outcome(double severeness) =>
        double.IsNaN(severeness) ? Findings.Outcome.Unknown
        : severeness > 1 ? Findings.Outcome.Fails
        : severeness > DoubtFrom ? Findings.Outcome.Doubtful
        : Findings.Outcome.Holds;
}
