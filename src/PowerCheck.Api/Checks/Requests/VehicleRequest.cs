using PowerCheck.Api.Door;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of the vehicle.</summary>
public sealed class VehicleRequest
{
    /// <summary>What the caller calls it. Not used.</summary>
    [Text(120, "trail rig")]
    public string? Name { get; set; }

    /// <summary>Mass, ready to run, pack included.</summary>
    [Must]
    [Figure(nameof(Unit.Kilogram), 0.05, 50, 3.2)]
    public double? MassKg { get; set; }

    /// <summary>Diameter of the tires: loaded and rolling, or as printed when so marked.</summary>
    [Figure(nameof(Unit.Millimetre), 10, 1000, 118)]
    public double? TireDiameterMm { get; set; }

    /// <summary>Whether the tire diameter is the printed one, which is larger than the rolling one.</summary>
    [Flag(false)]
    public bool? TireDiameterPrinted { get; set; }

    /// <summary>Loaded rolling diameter over the printed one, where the printed one is given.</summary>
    [Figure(nameof(Unit.One), 0.7, 1, 0.95)]
    public double? LoadedTireShare { get; set; }

    /// <summary>Share of the weight that rests on driven wheels.</summary>
    [Figure(nameof(Unit.One), 0.1, 1, 1)]
    public double? DrivenWeightShare { get; set; }

    /// <summary>Motors, each with a controller of its own, on one pack.</summary>
    [Figure(nameof(Unit.One), 1, 4, 1)]
    public int? MotorCount { get; set; }

    /// <summary>The drivetrain.</summary>
    public DrivetrainRequest? Drivetrain { get; set; }
}

/// <summary>What is known of the drivetrain. The ratio is given whole: overall, or by pinion, spur, transmission and axle.</summary>
public sealed class DrivetrainRequest
{
    /// <summary>Motor turns a wheel turn, all stages together.</summary>
    [Figure(nameof(Unit.One), 1, 1000, 42)]
    public double? OverallRatio { get; set; }

    /// <summary>Teeth of the pinion on the motor shaft.</summary>
    [Figure(nameof(Unit.Teeth), 4, 200, 12)]
    public int? PinionTeeth { get; set; }

    /// <summary>Teeth of the spur gear that the pinion drives.</summary>
    [Figure(nameof(Unit.Teeth), 8, 500, 56)]
    public int? SpurTeeth { get; set; }

    /// <summary>Ratio of the transmission behind the spur gear.</summary>
    [Figure(nameof(Unit.One), 0.1, 200, 2.8)]
    public double? TransmissionRatio { get; set; }

    /// <summary>Ratio of the axles.</summary>
    [Figure(nameof(Unit.One), 0.2, 100, 3.2)]
    public double? AxleRatio { get; set; }

    /// <summary>Transmission ratios of a gearbox's speeds, in place of transmissionRatio. The lowest gear decides the climb.</summary>
    [Items(8)]
    [Figure(nameof(Unit.One), 0.1, 200, 2.8)]
    public IReadOnlyList<double>? Ratios { get; set; }

    /// <summary>Efficiency from motor shaft to wheel; it wins over what the stages would give.</summary>
    [Figure(nameof(Unit.One), 0.05, 1, 0.75)]
    public double? Efficiency { get; set; }

    /// <summary>Spur gear stages, the pinion's included, when the efficiency is to be found from the stages.</summary>
    [Figure(nameof(Unit.One), 1, 8, 3)]
    public int? SpurStages { get; set; }

    /// <summary>Kind of the axle gear, when the efficiency is to be found from the stages.</summary>
    [Word<AxleGear>("bevel")]
    public string? AxleGear { get; set; }

    /// <summary>Pitch of the pinion's teeth.</summary>
    public PitchRequest? PinionPitch { get; set; }

    /// <summary>Pitch of the spur gear's teeth.</summary>
    public PitchRequest? SpurPitch { get; set; }

    /// <summary>Smallest center distance that the motor mount allows.</summary>
    [Figure(nameof(Unit.Millimetre), 1, 500, 24)]
    public double? MeshCenterMinMm { get; set; }

    /// <summary>Largest center distance that the motor mount allows.</summary>
    [Figure(nameof(Unit.Millimetre), 1, 500, 31)]
    public double? MeshCenterMaxMm { get; set; }

    /// <summary>Free radius around the motor shaft.</summary>
    [Figure(nameof(Unit.Millimetre), 1, 500, 20)]
    public double? MotorClearanceMm { get; set; }

    /// <summary>Highest torque that the driveline stands, all wheels together.</summary>
    [Figure(nameof(Unit.NewtonMetre), 0.01, 1000, 15)]
    public double? MaxWheelTorqueNm { get; set; }
}

/// <summary>Pitch of a gear's teeth, given in one of the two ways.</summary>
public sealed class PitchRequest
{
    /// <summary>Diametral pitch: teeth an inch of pitch diameter.</summary>
    [Figure(nameof(Unit.One), 5, 200, 32)]
    public double? Diametral { get; set; }

    /// <summary>Module: pitch diameter a tooth.</summary>
    [Figure(nameof(Unit.Millimetre), 0.1, 5, 0.8)]
    public double? ModuleMm { get; set; }
}
