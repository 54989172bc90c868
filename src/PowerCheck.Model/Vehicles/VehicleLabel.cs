namespace PowerCheck.Model.Vehicles;

/// <summary>What is known of the rig, in SI; null is what is not.</summary>
public sealed record VehicleLabel
{
    /// <summary>Mass, ready to run [kg].</summary>
    public required double MassKg { get; init; }

    /// <summary>Tire diameter [m]: loaded rolling, or as printed when <see cref="TireDiameterPrinted"/>.</summary>
    public double? TireDiameterM { get; init; }

    /// <summary>Whether the tire diameter is the printed one, unloaded.</summary>
    public bool? TireDiameterPrinted { get; init; }

    /// <summary>Loaded rolling diameter over the printed one.</summary>
    public double? LoadedTireShare { get; init; }

    /// <summary>Share of the weight on driven wheels, 0 to 1.</summary>
    public double? DrivenWeightShare { get; init; }

    /// <summary>Motors, each with a controller of its own, on one pack.</summary>
    public int? MotorCount { get; init; }

    /// <summary>The drivetrain.</summary>
    public DrivetrainLabel Drivetrain { get; init; } = new();
}

/// <summary>What is known of the drivetrain, in SI; null is what is not.</summary>
public sealed record DrivetrainLabel
{
    /// <summary>Motor turns a wheel turn, all stages.</summary>
    public double? OverallRatio { get; init; }

    /// <summary>Pinion teeth.</summary>
    public int? PinionTeeth { get; init; }

    /// <summary>Spur gear teeth.</summary>
    public int? SpurTeeth { get; init; }

    /// <summary>Ratio of the transmission behind the spur gear.</summary>
    public double? TransmissionRatio { get; init; }

    /// <summary>Ratio of the axles.</summary>
    public double? AxleRatio { get; init; }

    /// <summary>Transmission ratios of the speeds of a gearbox, in place of <see cref="TransmissionRatio"/>.</summary>
    public IReadOnlyList<double> Ratios { get; init; } = [];

    /// <summary>Efficiency motor shaft to wheel, 0 to 1.</summary>
    public double? Efficiency { get; init; }

    /// <summary>Spur gear stages, the pinion's included, where the efficiency is to be found from the stages.</summary>
    public int? SpurStages { get; init; }

    /// <summary>Kind of the axle gear, where the efficiency is to be found from the stages.</summary>
    public AxleGear? AxleGear { get; init; }

    /// <summary>Pitch of the pinion as a module [m].</summary>
    public double? PinionModuleM { get; init; }

    /// <summary>Pitch of the spur gear as a module [m].</summary>
    public double? SpurModuleM { get; init; }

    /// <summary>Smallest center distance that the motor mount allows [m].</summary>
    public double? MeshCenterMinM { get; init; }

    /// <summary>Largest center distance that the motor mount allows [m].</summary>
    public double? MeshCenterMaxM { get; init; }

    /// <summary>Free radius around the motor shaft [m].</summary>
    public double? MotorClearanceM { get; init; }

    /// <summary>Highest torque that the driveline stands, all wheels together [N·m].</summary>
    public double? MaxWheelTorqueNm { get; init; }
}

/// <summary>Kind of the axle gear.</summary>
public enum AxleGear
{
    /// <summary>Bevel, spiral bevel or hypoid.</summary>
    Bevel,

    /// <summary>Worm.</summary>
    Worm,
}
