using PowerCheck.Api.Door;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>How warm each part gets.</summary>
public sealed class TemperaturesAnswer
{
    /// <summary>Winding, or a brushed motor's rotor: the mean.</summary>
    public required TemperatureAnswer MotorWinding { get; init; }

    /// <summary>Magnets.</summary>
    public required TemperatureAnswer MotorMagnet { get; init; }

    /// <summary>Motor case.</summary>
    public required TemperatureAnswer MotorCase { get; init; }

    /// <summary>Controller, by its thermal memory.</summary>
    public required TemperatureAnswer Controller { get; init; }

    /// <summary>Cells of the pack.</summary>
    public required TemperatureAnswer Battery { get; init; }

    /// <summary>Lasting motor current above which the winding never settles.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 61)]
    public double? RunawayCurrentA { get; init; }
}

/// <summary>How warm one part gets.</summary>
public sealed class TemperatureAnswer
{
    /// <summary>At the end of the run, from cold.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 58)]
    public double? CourseEndC { get; init; }

    /// <summary>Highest within a lap of the course repeated for ever.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 63)]
    public double? PeakC { get; init; }

    /// <summary>Time into the course, from cold, at which it reaches its limit; absent when it does not.</summary>
    [Figure(nameof(Unit.Second), 0, 1e12, 900)]
    public double? CourseSecondsToLimit { get; init; }

    /// <summary>What it stands.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 120)]
    public double? LimitC { get; init; }

    /// <summary>True when the course repeated for ever never settles; absent otherwise.</summary>
    [Flag(true)]
    public bool? Runaway { get; init; }

    /// <summary>Where it would settle if a load case lasted, by case. A case without a figure never settles or is not known.</summary>
    public required SettledAnswer SettledC { get; init; }

    /// <summary>How long a load case takes to bring it to its limit, by case.</summary>
    public required SecondsToLimitAnswer SecondsToLimit { get; init; }
}

/// <summary>Settled temperatures by load case.</summary>
public sealed class SettledAnswer
{
    /// <summary>Creep on the level.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 34)]
    public double? Level { get; init; }

    /// <summary>Creep up the slope.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 71)]
    public double? Climb { get; init; }

    /// <summary>Standing on the slope.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 40)]
    public double? Hold { get; init; }

    /// <summary>Tires slipping at creep.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 110)]
    public double? Slip { get; init; }

    /// <summary>Full throttle, tires slipping.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 130)]
    public double? Punch { get; init; }

    /// <summary>Wheel wedged.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 240)]
    public double? Jam { get; init; }

    /// <summary>Wedged at full throttle.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 400)]
    public double? Stall { get; init; }

    /// <summary>Full throttle on the level.</summary>
    [Figure(nameof(Unit.Celsius), -1e12, 1e12, 45)]
    public double? Top { get; init; }
}

/// <summary>Times to the limit by load case.</summary>
public sealed class SecondsToLimitAnswer
{
    /// <summary>Creep on the level.</summary>
    public TimeToLimitAnswer? Level { get; init; }

    /// <summary>Creep up the slope.</summary>
    public TimeToLimitAnswer? Climb { get; init; }

    /// <summary>Standing on the slope.</summary>
    public TimeToLimitAnswer? Hold { get; init; }

    /// <summary>Tires slipping at creep.</summary>
    public TimeToLimitAnswer? Slip { get; init; }

    /// <summary>Full throttle, tires slipping.</summary>
    public TimeToLimitAnswer? Punch { get; init; }

    /// <summary>Wheel wedged.</summary>
    public TimeToLimitAnswer? Jam { get; init; }

    /// <summary>Wedged at full throttle.</summary>
    public TimeToLimitAnswer? Stall { get; init; }

    /// <summary>Full throttle on the level.</summary>
    public TimeToLimitAnswer? Top { get; init; }
}

/// <summary>How long one load case takes to bring one part to its limit.</summary>
public sealed class TimeToLimitAnswer
{
    /// <summary>From the temperature of the air; absent when the limit is not reached from there.</summary>
    [Figure(nameof(Unit.Second), 0, 1e12, 210)]
    public double? Cold { get; init; }

    /// <summary>From the end of a lap of the course; absent when the limit is not reached from there.</summary>
    [Figure(nameof(Unit.Second), 0, 1e12, 140)]
    public double? Warm { get; init; }

    /// <summary>Whether the limit is reached at all.</summary>
    [Flag(true)]
    public required bool Reached { get; init; }
}
