using PowerCheck.Api.Door;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>How the spread of the figures was carried to the limits.</summary>
public sealed class SpreadingAnswer
{
    /// <summary>How it was asked for.</summary>
    [Text(20, "linear")]
    public required string Asked { get; init; }

    /// <summary>How it was done: Monte Carlo where taking each input by itself would mislead.</summary>
    [Text(20, "linear")]
    public required string Used { get; init; }

    /// <summary>How many rigs were computed for it.</summary>
    [Figure(nameof(Model.Units.Unit.One), 0, 1e6, 190)]
    public required int Samples { get; init; }
}

/// <summary>How far off a given figure may be.</summary>
public sealed class ToleranceAnswer
{
    /// <summary>The member that gives it.</summary>
    [Text(100, "motor.kvRpmPerVolt")]
    public required string Path { get; init; }

    /// <summary>The figure, in the unit of the member's name.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 3300)]
    public required double Value { get; init; }

    /// <summary>The unit of value and spread; absent for plain numbers.</summary>
    [Text(10, "rpm/V")]
    public string? Unit { get; init; }

    /// <summary>How far off it may be, 95 %.</summary>
    public required SpreadAnswer Spread { get; init; }

    /// <summary>Who says so: the caller, or what is usual of such a label.</summary>
    [Text(20, "label")]
    public required string Basis { get; init; }
}
