namespace PowerCheck.Model.Drivetrain;

/// <summary>
/// Currents, voltages, speeds and heat of one motor, its controller and the pack in one situation.
/// </summary>
/// <remarks>
/// Motor figures are of one motor; battery figures are of the whole rig. A figure that rests on something not known is
/// NaN.
/// </remarks>
public sealed record LoadCase
{
    /// <summary>Which situation.</summary>
    public required LoadCaseName Name { get; init; }

    /// <summary>Mean motor current [A].</summary>
    public required double MotorCurrentA { get; init; }

    /// <summary>Root mean square motor current, ripple included [A].</summary>
    public required double MotorRmsCurrentA { get; init; }

    /// <summary>Mean battery current [A].</summary>
    public required double BatteryCurrentA { get; init; }

    /// <summary>Root mean square battery current [A]; above the mean where the bus is unsmoothed.</summary>
    public required double BatteryRmsCurrentA { get; init; }

    /// <summary>Voltage at the controller's input [V].</summary>
    public required double BusVoltageV { get; init; }

    /// <summary>Mean voltage at the motor's terminals [V].</summary>
    public required double MotorVoltageV { get; init; }

    /// <summary>Share of the time that the bridge is on, 0 to 1.</summary>
    public required double DutyRatio { get; init; }

    /// <summary>Motor speed [rad/s].</summary>
    public required double MotorSpeedRadPerS { get; init; }

    /// <summary>Road speed [m/s].</summary>
    public required double RoadSpeedMPerS { get; init; }

    /// <summary>Torque at all wheels together [N·m].</summary>
    public required double WheelTorqueNm { get; init; }

    /// <summary>Heat in one motor, winding at 20 °C [W].</summary>
    public required double MotorHeatW { get; init; }

    /// <summary>Heat in one controller, switches cold, receiver supply included [W].</summary>
    public required double ControllerHeatW { get; init; }

    /// <summary>Heat in the pack [W].</summary>
    public required double BatteryHeatW { get; init; }

    /// <summary>Whether the rig gets there; null when what would tell is not known.</summary>
    public required bool? Attainable { get; init; }

    /// <summary>What stops it; null when nothing does.</summary>
    public Obstacle? Obstacle { get; init; }

    /// <summary>
    /// Whether the currents are the most that they can be and not what they are: the motor's resistance is not known.
    /// </summary>
    public bool UpperBound { get; init; }

    /// <summary>Speed at which a drag brake lets the rig creep back [m/s]; NaN where that does not apply.</summary>
    public double CreepBackMPerS { get; init; } = double.NaN;

    /// <summary>Motor current that full throttle would drive without any limit [A]; NaN where that does not apply.</summary>
    public double ProspectiveCurrentA { get; init; } = double.NaN;
}

/// <summary>The situations in which a rig is computed.</summary>
public enum LoadCaseName
{
    /// <summary>Steady creep on the level.</summary>
    Level,

    /// <summary>Steady creep up the slope.</summary>
    Climb,

    /// <summary>Standing on the slope.</summary>
    Hold,

    /// <summary>Creeping on the level, tires just letting go.</summary>
    Slip,

    /// <summary>Full throttle, tires slipping.</summary>
    Punch,

    /// <summary>Wheel wedged, driver feeding throttle.</summary>
    Jam,

    /// <summary>Wedged at full throttle, cold.</summary>
    Stall,

    /// <summary>Full throttle on the level, settled.</summary>
    Top,
}

/// <summary>What stops a rig from reaching a load case.</summary>
public enum Obstacle
{
    /// <summary>The pack cannot deliver the power.</summary>
    BatteryPower,

    /// <summary>The bus falls under the cut-off.</summary>
    Cutoff,

    /// <summary>The bus voltage is too low for the speed.</summary>
    Voltage,

    /// <summary>The controller limits the current.</summary>
    CurrentLimit,

    /// <summary>The tires let go.</summary>
    Traction,

    /// <summary>The rated speed is passed.</summary>
    SpeedLimit,

    /// <summary>The controller does not know where the rotor stands.</summary>
    NoSensor,
}

/// <summary>All eight load cases of a rig.</summary>
/// <param name="All">The cases in the order of <see cref="LoadCaseName"/>.</param>
/// <param name="PunchAtReserve">The punch with only the reserve left: what the cut-off is held against.</param>
public sealed record LoadCases(IReadOnlyList<LoadCase> All, LoadCase PunchAtReserve)
{
    /// <summary>The case of a name.</summary>
    /// <param name="name">The name.</param>
    public LoadCase this[LoadCaseName name] => All[(int)name];
}
