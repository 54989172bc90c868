using PowerCheck.Api.Door;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>A figure or word that the request left out and the model filled in. Sent at its path, it is assumed no more.</summary>
public sealed class AssumptionAnswer
{
    /// <summary>The member that would have given it.</summary>
    [Text(100, "vehicle.drivetrain.efficiency")]
    public required string Path { get; init; }

    /// <summary>The figure, in the unit of the member's name; absent where a word was assumed.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 0.75)]
    public double? Value { get; init; }

    /// <summary>The word, or true or false; absent where a figure was assumed.</summary>
    [Text(30, "lipo")]
    public string? Word { get; init; }

    /// <summary>The unit of value and spread; absent for plain numbers and words.</summary>
    [Text(10, "mm")]
    public string? Unit { get; init; }

    /// <summary>How wide the figure may lie, 95 %; absent where it is counted and not measured.</summary>
    public SpreadAnswer? Spread { get; init; }

    /// <summary>Where it comes from, in plain words.</summary>
    [Text(600, "assumed: typical of a crawler's drivetrain")]
    public required string Basis { get; init; }

    /// <summary>Key of the source; /v1/sources explains it.</summary>
    [Text(20, "assumed")]
    public required string Source { get; init; }
}

/// <summary>How wide a figure may lie: relative, factor, absolute, or low and high.</summary>
public sealed class SpreadAnswer
{
    /// <summary>Share of the value either side.</summary>
    [Figure(nameof(Model.Units.Unit.One), 0, 100, 0.12)]
    public double? Relative { get; init; }

    /// <summary>Factor either side, log-normal.</summary>
    [Figure(nameof(Model.Units.Unit.One), 1, 100, 1.5)]
    public double? Factor { get; init; }

    /// <summary>Distance either side, in the unit of the path.</summary>
    [Figure(nameof(Model.Units.Unit.One), 0, 1e12, 20)]
    public double? Absolute { get; init; }

    /// <summary>Lower end, in the unit of the path.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 0.3)]
    public double? Low { get; init; }

    /// <summary>Upper end, in the unit of the path.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 0.8)]
    public double? High { get; init; }
}
