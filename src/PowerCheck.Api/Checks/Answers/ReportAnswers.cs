using PowerCheck.Api.Door;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>How long the pack lasts on the course.</summary>
public sealed class EnduranceAnswer
{
    /// <summary>Run time until the reserve or the cut-off.</summary>
    [Figure(nameof(Unit.Minute), 0, 1e12, 41)]
    public double? Minutes { get; init; }

    /// <summary>What ends the run: reserve or cutoff.</summary>
    [Text(20, "reserve")]
    public string? EndsBy { get; init; }

    /// <summary>Mean battery current over a lap.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 2.6)]
    public double? MeanBatteryCurrentA { get; init; }

    /// <summary>Root mean square battery current over a lap.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 3.4)]
    public double? RmsBatteryCurrentA { get; init; }

    /// <summary>Root mean square motor current over a lap.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 11)]
    public double? RmsMotorCurrentA { get; init; }

    /// <summary>Energy taken from the pack over the run.</summary>
    [Figure(nameof(Unit.WattHour), 0, 1e12, 19)]
    public double? EnergyWh { get; init; }
}

/// <summary>What the receiver supply has to give, and what is left of it.</summary>
public sealed class ReceiverSupplyAnswer
{
    /// <summary>Everything on it at rest.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 0.2)]
    public double? IdleCurrentA { get; init; }

    /// <summary>Everything on it at work.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 1.1)]
    public double? WorkingCurrentA { get; init; }

    /// <summary>Everything on it jammed.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 3.2)]
    public double? JammedCurrentA { get; init; }

    /// <summary>What it gives continuously.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 3)]
    public double? ContinuousCurrentA { get; init; }

    /// <summary>What it gives for moments.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 6)]
    public double? PeakCurrentA { get; init; }

    /// <summary>Heat at work: what a linear one burns, what a switching one loses.</summary>
    [Figure(nameof(Unit.Watt), 0, 1e12, 1.2)]
    public double? HeatW { get; init; }

    /// <summary>Heat that a linear one can shed.</summary>
    [Figure(nameof(Unit.Watt), 0, 1e12, 7)]
    public double? MaxHeatW { get; init; }

    /// <summary>Lowest bus voltage of punch, jam and climb.</summary>
    [Figure(nameof(Unit.Volt), -1e12, 1e12, 9.4)]
    public double? LowestBusV { get; init; }

    /// <summary>Output left at that bus voltage.</summary>
    [Figure(nameof(Unit.Volt), -1e12, 1e12, 6)]
    public double? LowestOutputV { get; init; }
}

/// <summary>What the gearing makes of the motor.</summary>
public sealed class DrivetrainAnswer
{
    /// <summary>Motor turns a wheel turn in the lowest gear, which decides the climb.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 41.8)]
    public double? OverallRatio { get; init; }

    /// <summary>Settled speed at full throttle on the level, lowest gear.</summary>
    [Figure(nameof(Unit.MetrePerSecond), 0, 1e12, 4.6)]
    public double? TopSpeedMPerS { get; init; }

    /// <summary>Wheel torque available at creep speed over what the climb needs; winding hot, pack nearly empty.</summary>
    [Figure(nameof(Unit.One), -1e12, 1e12, 3.1)]
    public double? TorqueReserve { get; init; }

    /// <summary>What bounds the available torque, in the words of a load case's obstacle.</summary>
    [Text(30, "current-limit")]
    public string? LimitedBy { get; init; }

    /// <summary>Slope at which the tires let go.</summary>
    [Figure(nameof(Unit.Degree), 0, 90, 50.2)]
    public double? SlipSlopeDegrees { get; init; }

    /// <summary>Center distance of pinion and spur gear.</summary>
    [Figure(nameof(Unit.Millimetre), 0, 1e12, 27)]
    public double? MeshCenterMm { get; init; }

    /// <summary>Each speed of the gearbox, lowest gear first; one when there is no gearbox.</summary>
    [Items(8)]
    public required IReadOnlyList<GearAnswer> Gears { get; init; }
}

/// <summary>One speed of the gearbox.</summary>
public sealed class GearAnswer
{
    /// <summary>Motor turns a wheel turn.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 41.8)]
    public double? OverallRatio { get; init; }

    /// <summary>Settled speed at full throttle on the level.</summary>
    [Figure(nameof(Unit.MetrePerSecond), 0, 1e12, 4.6)]
    public double? TopSpeedMPerS { get; init; }

    /// <summary>Motor current of the climb.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 18.4)]
    public double? ClimbCurrentA { get; init; }

    /// <summary>Wheel torque available over what the climb needs.</summary>
    [Figure(nameof(Unit.One), -1e12, 1e12, 3.1)]
    public double? TorqueReserve { get; init; }
}

/// <summary>What the leads add and what they stand.</summary>
public sealed class WiringAnswer
{
    /// <summary>Resistance of both battery leads together.</summary>
    [Figure(nameof(Unit.Milliohm), 0, 1e12, 2.5)]
    public double? BatteryLeadMilliohm { get; init; }

    /// <summary>Resistance of two motor leads together.</summary>
    [Figure(nameof(Unit.Milliohm), 0, 1e12, 2.5)]
    public double? MotorLeadMilliohm { get; init; }

    /// <summary>Lasting current of a battery lead in free air.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 55)]
    public double? BatteryLeadLimitA { get; init; }

    /// <summary>Lasting current of a motor lead in free air.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 55)]
    public double? MotorLeadLimitA { get; init; }

    /// <summary>Current that brings a battery lead to its insulation's limit in five seconds.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 210)]
    public double? LeadDamageCurrentA { get; init; }

    /// <summary>Lasting current that melts a battery lead in free air.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 330)]
    public double? LeadMeltingCurrentA { get; init; }

    /// <summary>Current of a short at the controller's input with a full pack.</summary>
    [Figure(nameof(Unit.Ampere), 0, 1e12, 640)]
    public double? FaultCurrentA { get; init; }
}
