namespace PowerCheck.Circuit.Electrical;

/// <summary>The situations in which a rig is computed.</summary>
public enum PlainCase
{
    /// <summary>Steady creep on the level.</summary>
    Level,

    /// <summary>Steady creep up the slope.</summary>
    Climb,

    /// <summary>Standing on the slope.</summary>
    Hold,

    /// <summary>Creeping on the level, tires just letting go.</summary>
    Slip,

    /// <summary>Full throttle, tires slipping, half charged.</summary>
    Punch,

    /// <summary>Full throttle, tires slipping, with the reserve left.</summary>
    PunchAtReserve,

    /// <summary>Wheel wedged, driver feeding throttle.</summary>
    Jam,

    /// <summary>Wedged at full throttle.</summary>
    Stall,

    /// <summary>Full throttle on the level, settled.</summary>
    Top,
}

/// <summary>What the circuits say of one situation. Motor and controller figures are of one.</summary>
public sealed record CasePoint
{
    /// <summary>Mean motor current [A].</summary>
    public required double MotorA { get; init; }

    /// <summary>Mean square of the ripple [A²].</summary>
    public double RippleA2 { get; init; }

    /// <summary>Voltage at the motor's terminals [V].</summary>
    public required double MotorV { get; init; }

    /// <summary>Motor speed [rad/s].</summary>
    public required double SpeedRadPerS { get; init; }

    /// <summary>Voltage of the bus, of the time that the bridge is on where it is unsmoothed [V].</summary>
    public required double BusV { get; init; }

    /// <summary>Mean battery current [A].</summary>
    public required double BatteryA { get; init; }

    /// <summary>Root mean square battery current [A].</summary>
    public required double BatteryRmsA { get; init; }

    /// <summary>Share of the time that the bridge is on.</summary>
    public required double Duty { get; init; }

    /// <summary>Torque at all wheels [N·m].</summary>
    public required double WheelNm { get; init; }

    /// <summary>Heat in a motor [W].</summary>
    public required double MotorW { get; init; }

    /// <summary>Heat in a controller [W].</summary>
    public required double ControllerW { get; init; }

    /// <summary>Heat in the pack [W].</summary>
    public required double BatteryW { get; init; }

    /// <summary>Whether the pack can carry it.</summary>
    public bool Attained { get; init; } = true;

    /// <summary>Road speed [m/s].</summary>
    public double RoadMPerS { get; init; }

    /// <summary>Speed at which the rig creeps back where no current holds it [m/s]; not a number where nothing does, and elsewhere.</summary>
    public double CreepBackMPerS { get; init; } = double.NaN;

    /// <summary>Motor current of full throttle before any limit, at stall [A]; not a number elsewhere.</summary>
    public double ProspectiveA { get; init; } = double.NaN;

    /// <summary>Root mean square motor current [A].</summary>
    public double MotorRmsA => Math.Sqrt((MotorA * MotorA) + RippleA2);
}
