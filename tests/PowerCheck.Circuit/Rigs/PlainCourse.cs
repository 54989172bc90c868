namespace PowerCheck.Circuit.Rigs;

/// <summary>A course and a day as plain figures.</summary>
public sealed record PlainCourse
{
    /// <summary>Air temperature.</summary>
    public required double AmbientC { get; init; }

    /// <summary>Steepest slope.</summary>
    public required double ClimbSlopeDegrees { get; init; }

    /// <summary>Creep speed.</summary>
    public required double CreepSpeedMPerS { get; init; }

    /// <summary>Rolling resistance coefficient.</summary>
    public required double RollingResistanceCoefficient { get; init; }

    /// <summary>Friction coefficient.</summary>
    public required double FrictionCoefficient { get; init; }

    /// <summary>How long the rig is to run.</summary>
    public required double WantedMinutes { get; init; }

    /// <summary>Jam current as a multiple of the slip current.</summary>
    public required double JamSlipFactor { get; init; }

    /// <summary>Share of the time that accessories work.</summary>
    public required double AccessoryDuty { get; init; }

    /// <summary>Creep-back speed up to which a rig counts as holding.</summary>
    public required double HoldCreepMPerS { get; init; }

    /// <summary>One lap.</summary>
    public required IReadOnlyList<PlainSegment> Segments { get; init; }

    /// <summary>For how long the climb is judged.</summary>
    public required double ClimbSeconds { get; init; }

    /// <summary>For how long the hold is judged.</summary>
    public required double HoldSeconds { get; init; }

    /// <summary>For how long the slip is judged.</summary>
    public required double SlipSeconds { get; init; }

    /// <summary>For how long the punch is judged.</summary>
    public required double PunchSeconds { get; init; }

    /// <summary>For how long the jam is judged.</summary>
    public required double JamSeconds { get; init; }
}

/// <summary>One segment of a lap.</summary>
public sealed record PlainSegment
{
    /// <summary>What happens in it.</summary>
    public required PlainSegmentKind Kind { get; init; }

    /// <summary>How long it lasts.</summary>
    public required double Seconds { get; init; }

    /// <summary>Slope of a creep or a hold, negative downhill.</summary>
    public double SlopeDegrees { get; init; }

    /// <summary>Speed of a creep.</summary>
    public double SpeedMPerS { get; init; }

    /// <summary>Throttle of a jam, 0 to 1.</summary>
    public double Throttle { get; init; }
}

/// <summary>What happens in a segment.</summary>
public enum PlainSegmentKind
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
