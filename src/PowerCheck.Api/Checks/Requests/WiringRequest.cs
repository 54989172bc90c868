using PowerCheck.Api.Door;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of leads, connector and fuse.</summary>
public sealed class WiringRequest
{
    /// <summary>Gauge of the battery leads.</summary>
    [Figure(nameof(Unit.Awg), 0, 36, 14)]
    public double? BatteryLeadAwg { get; set; }

    /// <summary>Length of the battery leads, one way.</summary>
    [Figure(nameof(Unit.Millimetre), 1, 10000, 150)]
    public double? BatteryLeadMm { get; set; }

    /// <summary>Gauge of the motor leads.</summary>
    [Figure(nameof(Unit.Awg), 0, 36, 14)]
    public double? MotorLeadAwg { get; set; }

    /// <summary>Length of the motor leads, one way.</summary>
    [Figure(nameof(Unit.Millimetre), 1, 10000, 150)]
    public double? MotorLeadMm { get; set; }

    /// <summary>Temperature that the leads' insulation stands.</summary>
    [Figure(nameof(Unit.Celsius), 60, 300, 180)]
    public double? InsulationC { get; set; }

    /// <summary>Continuous current of the battery connector.</summary>
    [Figure(nameof(Unit.Ampere), 0.5, 1000, 60)]
    public double? ConnectorContinuousA { get; set; }

    /// <summary>Rating of the fuse in the battery lead.</summary>
    [Figure(nameof(Unit.Ampere), 0.1, 1000, 40)]
    public double? FuseA { get; set; }
}
