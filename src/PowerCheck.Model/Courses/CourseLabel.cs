namespace PowerCheck.Model.Courses;

/// <summary>What is known of the course and the day, in SI; null is what is not.</summary>
public sealed record CourseLabel
{
    /// <summary>Air temperature [°C].</summary>
    public double? AmbientC { get; init; }

    /// <summary>Steepest slope to climb [rad].</summary>
    public double? ClimbSlopeRad { get; init; }

    /// <summary>Creep speed [m/s].</summary>
    public double? CreepSpeedMPerS { get; init; }

    /// <summary>Rolling resistance coefficient.</summary>
    public double? RollingResistanceCoefficient { get; init; }

    /// <summary>Friction coefficient tire to ground.</summary>
    public double? FrictionCoefficient { get; init; }

    /// <summary>How long the rig is to run [s].</summary>
    public double? WantedS { get; init; }

    /// <summary>Jam current as a multiple of the slip current.</summary>
    public double? JamSlipFactor { get; init; }

    /// <summary>Share of the time that servos, winch and the like work, 0 to 1.</summary>
    public double? AccessoryDuty { get; init; }

    /// <summary>Creep-back speed up to which a rig counts as holding [m/s].</summary>
    public double? HoldCreepMPerS { get; init; }

    /// <summary>The segments of one lap; empty for the default lap.</summary>
    public IReadOnlyList<SegmentLabel> Segments { get; init; } = [];

    /// <summary>For how long each load case is judged.</summary>
    public JudgingLabel Judging { get; init; } = new();
}

/// <summary>One segment of a lap, in SI.</summary>
public sealed record SegmentLabel
{
    /// <summary>How long it lasts [s], above 0.</summary>
    public required double DurationS { get; init; }

    /// <summary>What happens in it.</summary>
    public required SegmentKind Kind { get; init; }

    /// <summary>Slope [rad], negative downhill.</summary>
    public double? SlopeRad { get; init; }

    /// <summary>Speed [m/s] of a creep.</summary>
    public double? SpeedMPerS { get; init; }

    /// <summary>Throttle, 0 to 1, of a jam.</summary>
    public double? Throttle { get; init; }
}

/// <summary>What happens in a segment.</summary>
public enum SegmentKind
{
    /// <summary>Driving at a slow, steady speed.</summary>
    Creep,

    /// <summary>Standing on a slope.</summary>
    Hold,

    /// <summary>Wheel wedged, throttle fed.</summary>
    Jammed,

    /// <summary>Standing without load.</summary>
    Rest,
}

/// <summary>For how long each load case is judged [s]; null for the default.</summary>
public sealed record JudgingLabel
{
    /// <summary>Climb [s].</summary>
    public double? ClimbS { get; init; }

    /// <summary>Hold [s].</summary>
    public double? HoldS { get; init; }

    /// <summary>Slip [s].</summary>
    public double? SlipS { get; init; }

    /// <summary>Punch [s].</summary>
    public double? PunchS { get; init; }

    /// <summary>Jam [s].</summary>
    public double? JamS { get; init; }
}
