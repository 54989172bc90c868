using PowerCheck.Api.Door;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of the course and the day.</summary>
public sealed class CourseRequest
{
    /// <summary>Temperature of the air.</summary>
    [Figure(nameof(Unit.Celsius), -40, 60, 25)]
    public double? AmbientC { get; set; }

    /// <summary>Steepest slope to climb.</summary>
    [Figure(nameof(Unit.Degree), 0, 89, 45)]
    public double? ClimbSlopeDegrees { get; set; }

    /// <summary>Creep speed.</summary>
    [Figure(nameof(Unit.MetrePerSecond), 0.01, 10, 0.3)]
    public double? CreepSpeedMPerS { get; set; }

    /// <summary>Rolling resistance over weight.</summary>
    [Figure(nameof(Unit.One), 0, 1, 0.06)]
    public double? RollingResistanceCoefficient { get; set; }

    /// <summary>Friction of tire on ground over weight.</summary>
    [Figure(nameof(Unit.One), 0.05, 3, 1.2)]
    public double? FrictionCoefficient { get; set; }

    /// <summary>How long the rig is to run on one charge.</summary>
    [Figure(nameof(Unit.Minute), 0.1, 1440, 30)]
    public double? WantedMinutes { get; set; }

    /// <summary>Motor current of a jam as a multiple of the current at which the tires slip.</summary>
    [Figure(nameof(Unit.One), 1, 10, 2)]
    public double? JamSlipFactor { get; set; }

    /// <summary>Share of the time that servos, winch and the like work.</summary>
    [Figure(nameof(Unit.One), 0, 1, 0.3)]
    public double? AccessoryDuty { get; set; }

    /// <summary>Creep-back speed up to which a rig counts as holding.</summary>
    [Figure(nameof(Unit.MetrePerSecond), 0.001, 1, 0.03)]
    public double? HoldCreepMPerS { get; set; }

    /// <summary>The segments of one lap, which is repeated. A typical lap when left out.</summary>
    [Items(64)]
    public IReadOnlyList<SegmentRequest>? Segments { get; set; }

    /// <summary>For how long each load case is judged.</summary>
    public JudgingRequest? Judging { get; set; }
}

/// <summary>One segment of a lap.</summary>
public sealed class SegmentRequest
{
    /// <summary>How long it lasts.</summary>
    [Must]
    [Figure(nameof(Unit.Second), 0.1, 36000, 20)]
    public double? Seconds { get; set; }

    /// <summary>What happens in it: creeping, standing on a slope, a wedged wheel with throttle fed, or rest.</summary>
    [Must]
    [Word<SegmentKind>("creep")]
    public string? Kind { get; set; }

    /// <summary>Slope of a creep or a hold, negative downhill.</summary>
    [Figure(nameof(Unit.Degree), -89, 89, 20)]
    public double? SlopeDegrees { get; set; }

    /// <summary>Speed of a creep.</summary>
    [Figure(nameof(Unit.MetrePerSecond), 0.01, 10, 0.3)]
    public double? SpeedMPerS { get; set; }

    /// <summary>Throttle of a jam; needed for one, and for nothing else.</summary>
    [Figure(nameof(Unit.One), 0, 1, 0.5)]
    public double? Throttle { get; set; }
}

/// <summary>For how long each load case is judged.</summary>
public sealed class JudgingRequest
{
    /// <summary>How long a climb lasts.</summary>
    [Figure(nameof(Unit.Second), 0.1, 36000, 60)]
    public double? ClimbSeconds { get; set; }

    /// <summary>How long the rig stands on the slope.</summary>
    [Figure(nameof(Unit.Second), 0.1, 36000, 30)]
    public double? HoldSeconds { get; set; }

    /// <summary>How long the tires slip at creep.</summary>
    [Figure(nameof(Unit.Second), 0.1, 36000, 3)]
    public double? SlipSeconds { get; set; }

    /// <summary>How long full throttle lasts.</summary>
    [Figure(nameof(Unit.Second), 0.1, 36000, 3)]
    public double? PunchSeconds { get; set; }

    /// <summary>How long a wheel stays wedged.</summary>
    [Figure(nameof(Unit.Second), 0.1, 36000, 2)]
    public double? JamSeconds { get; set; }
}
