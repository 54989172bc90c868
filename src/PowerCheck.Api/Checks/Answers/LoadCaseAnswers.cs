using PowerCheck.Api.Door;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>The load cases by name.</summary>
public sealed class LoadCasesAnswer
{
    /// <summary>Steady creep on the level.</summary>
    public required LoadCaseAnswer Level { get; init; }

    /// <summary>Steady creep up the slope.</summary>
    public required LoadCaseAnswer Climb { get; init; }

    /// <summary>Standing on the slope.</summary>
    public required LoadCaseAnswer Hold { get; init; }

    /// <summary>Creeping on the level, tires just letting go.</summary>
    public required LoadCaseAnswer Slip { get; init; }

    /// <summary>Full throttle, tires slipping.</summary>
    public required LoadCaseAnswer Punch { get; init; }

    /// <summary>Wheel wedged, driver feeding throttle.</summary>
    public required LoadCaseAnswer Jam { get; init; }

    /// <summary>Wedged at full throttle, cold.</summary>
    public required LoadCaseAnswer Stall { get; init; }

    /// <summary>Full throttle on the level, settled.</summary>
    public required LoadCaseAnswer Top { get; init; }
}

/// <summary>
/// Currents, voltages, speeds and heat in one situation. Motor current and battery current are different figures. Motor
/// and controller figures are of one motor, battery figures of the whole rig.
/// </summary>
public sealed class LoadCaseAnswer
{
    /// <summary>Mean motor current.</summary>
    [Figure(nameof(Unit.Ampere), -1e12, 1e12, 18.4)]
    public double? MotorCurrentA { get; init; }

    /// <summary>Root mean square motor current, ripple included.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 18.4)]
    public double? MotorRmsCurrentA { get; init; }

    /// <summary>Mean battery current.</summary>
    [Figure(nameof(Unit.Ampere), -1e12, 1e12, 3.1)]
    public double? BatteryCurrentA { get; init; }

    /// <summary>Root mean square battery current.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 3.1)]
    public double? BatteryRmsCurrentA { get; init; }

    /// <summary>Voltage at the controller's input.</summary>
    [Figure(nameof(Unit.Volt), -1e12, 1e12, 11.2)]
    public double? BusVoltageV { get; init; }

    /// <summary>Mean voltage at the motor's terminals.</summary>
    [Figure(nameof(Unit.Volt), -1e12, 1e12, 1.7)]
    public double? MotorVoltageV { get; init; }

    /// <summary>Share of the time that the bridge is on.</summary>
    [Figure(nameof(Unit.One), 0, 1, 0.16)]
    public double? DutyRatio { get; init; }

    /// <summary>Motor speed.</summary>
    [Figure(nameof(Unit.Rpm), -1e12, 1e12, 2040)]
    public double? MotorSpeedRpm { get; init; }

    /// <summary>Road speed.</summary>
    [Figure(nameof(Unit.MetrePerSecond), -1e12, 1e12, 0.3)]
    public double? RoadSpeedMPerS { get; init; }

    /// <summary>Torque at all wheels together.</summary>
    [Figure(nameof(Unit.NewtonMetre), -1e12, 1e12, 1.4)]
    public double? WheelTorqueNm { get; init; }

    /// <summary>Heat in one motor, winding at 20 °C.</summary>
    [Figure(nameof(Unit.Watt), 0, 1e12, 8.6)]
    public double? MotorHeatW { get; init; }

    /// <summary>Heat in one controller, receiver supply included.</summary>
    [Figure(nameof(Unit.Watt), 0, 1e12, 0.9)]
    public double? ControllerHeatW { get; init; }

    /// <summary>Heat in the pack.</summary>
    [Figure(nameof(Unit.Watt), 0, 1e12, 0.2)]
    public double? BatteryHeatW { get; init; }

    /// <summary>Whether the rig gets there; absent when that cannot be told.</summary>
    [Flag(true)]
    public bool? Attainable { get; init; }

    /// <summary>What stops it: battery-power, cutoff, voltage, current-limit, traction, speed-limit or no-sensor. Absent when nothing does; more may come.</summary>
    [Text(30, "current-limit")]
    public string? Obstacle { get; init; }

    /// <summary>Speed at which a drag brake lets the rig creep back; in hold only.</summary>
    [Figure(nameof(Unit.MetrePerSecond), 0, 1e12, 0.012)]
    public double? CreepBackMPerS { get; init; }

    /// <summary>Motor current that full throttle would drive if nothing limited it; in stall only.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 310)]
    public double? ProspectiveMotorCurrentA { get; init; }
}
