using PowerCheck.Api.Door;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>One limit held against one figure, and what came of it.</summary>
public sealed class FindingAnswer
{
    /// <summary>What was held against what: part and limit. /v1/findings explains every code; more may come.</summary>
    [Text(60, "controller.heat")]
    public required string Code { get; init; }

    /// <summary>What came of it. The verdict follows from the outcomes alone.</summary>
    [Word<Outcome>("holds")]
    public required string Outcome { get; init; }

    /// <summary>What may happen to people (ANSI Z535 words).</summary>
    [Word<Severity>("notice")]
    public required string Severity { get; init; }

    /// <summary>What a passed limit leads to: fire, injury, damage, shutdown or performance.</summary>
    [Text(20, "damage")]
    public required string Effect { get; init; }

    /// <summary>Whether this finding decides the verdict.</summary>
    [Flag(false)]
    public required bool Decides { get; init; }

    /// <summary>The part that it is about.</summary>
    [Text(30, "controller")]
    public required string Part { get; init; }

    /// <summary>The load case, where one is meant.</summary>
    [Text(20, "climb")]
    public string? LoadCase { get; init; }

    /// <summary>The computed figure.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 0.42)]
    public double? Estimate { get; init; }

    /// <summary>Lower end of the figure's 95 % interval; absent where spread was not asked for or has no end.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 0.35)]
    public double? Low { get; init; }

    /// <summary>Upper end of the figure's 95 % interval; absent where spread was not asked for or has no end.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 0.49)]
    public double? High { get; init; }

    /// <summary>The limit.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 1)]
    public double? Limit { get; init; }

    /// <summary>The unit of estimate and limit; absent for plain numbers.</summary>
    [Text(10, "A")]
    public string? Unit { get; init; }

    /// <summary>Probability that the figure is past its limit; absent where spread was not asked for.</summary>
    [Figure(nameof(Model.Units.Unit.One), 0, 1, 0.12)]
    public double? ExceedanceProbability { get; init; }

    /// <summary>For how long it is judged, or the time that the message speaks of.</summary>
    [Figure(nameof(Model.Units.Unit.Second), 0, 1e12, 60)]
    public double? Seconds { get; init; }

    /// <summary>What was computed, the limit, and what it means, in plain words.</summary>
    [Text(1000, "The controller reaches 42 % of its thermal rating within 60 s of climbing.")]
    public required string Message { get; init; }

    /// <summary>The inputs whose spread decides the distance to the limit, largest share of its variance first.</summary>
    [Items(100)]
    public IReadOnlyList<ShareAnswer>? DecidedBy { get; init; }

    /// <summary>Figures that would decide an unknown outcome.</summary>
    [Items(20)]
    public IReadOnlyList<NeedAnswer>? Needs { get; init; }

    /// <summary>What to measure so that it is surer; absent where that would not help or spread was not asked for.</summary>
    public MeasureAnswer? Measure { get; init; }

    /// <summary>Of a limit that fails or is in doubt (with spread, of the deciding one): what each single thing that can be changed does to it, the smallest change first.</summary>
    [Items(30)]
    public IReadOnlyList<RemedyAnswer>? Remedies { get; init; }

    /// <summary>Keys of the sources it rests on; /v1/sources explains them.</summary>
    [Items(20)]
    [Text(20, "iec60149")]
    public required IReadOnlyList<string> Sources { get; init; }
}

/// <summary>The share of an input in the variance of the distance to a limit.</summary>
public sealed class ShareAnswer
{
    /// <summary>The member that gives the input.</summary>
    [Text(100, "motor.resistanceMilliohm")]
    public required string Path { get; init; }

    /// <summary>Its share.</summary>
    [Figure(nameof(Model.Units.Unit.One), 0, 1, 0.6)]
    public required double Share { get; init; }
}

/// <summary>A figure that would decide an unknown outcome.</summary>
public sealed class NeedAnswer
{
    /// <summary>The member that gives it.</summary>
    [Text(100, "motor.resistanceMilliohm")]
    public required string Path { get; init; }

    /// <summary>The value at which the outcome turns; absent when it does not turn on this figure alone.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 19)]
    public double? Threshold { get; init; }

    /// <summary>The unit of the threshold; absent for plain numbers.</summary>
    [Text(10, "mΩ")]
    public string? Unit { get; init; }

    /// <summary>True when the limit holds below the threshold, false when above; absent without a threshold.</summary>
    [Flag(true)]
    public bool? HoldsBelow { get; init; }
}

/// <summary>What to measure.</summary>
public sealed class MeasureAnswer
{
    /// <summary>The member that then gives it.</summary>
    [Text(100, "motor.resistanceMilliohm")]
    public required string Path { get; init; }

    /// <summary>How it is measured with common tools.</summary>
    [Text(600, "Read each cell's internal resistance on the charger.")]
    public required string How { get; init; }
}

/// <summary>What a single thing that the builder can change does to a limit. Sent at its path, to gives the outcome holds and this verdict.</summary>
public sealed class RemedyAnswer
{
    /// <summary>The member that says it.</summary>
    [Text(100, "vehicle.massKg")]
    public required string Path { get; init; }

    /// <summary>Its value now.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 3.2)]
    public required double From { get; init; }

    /// <summary>The nearest value found at which the limit holds; absent when there is none.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 2.9)]
    public double? To { get; init; }

    /// <summary>True when no value that was tried makes the limit hold; else absent.</summary>
    [Flag(true)]
    public bool? None { get; init; }

    /// <summary>The unit of both; absent for plain numbers.</summary>
    [Text(10, "kg")]
    public string? Unit { get; init; }

    /// <summary>The verdict on the rig with it, found by checking it again; absent when there is none.</summary>
    [Word<Verdict>("suitable")]
    public string? Verdict { get; init; }

    /// <summary>What it does, in plain words.</summary>
    [Text(
        300,
        "With the mass at 2.9 kg instead of 3.2 kg this limit holds; the verdict is then suitable."
    )]
    public required string Message { get; init; }
}
