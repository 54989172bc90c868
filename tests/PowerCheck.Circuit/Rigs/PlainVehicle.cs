namespace PowerCheck.Circuit.Rigs;

/// <summary>A vehicle as plain figures.</summary>
public sealed record PlainVehicle
{
    /// <summary>Mass, ready to run.</summary>
    public required double MassKg { get; init; }

    /// <summary>Tire diameter: printed, without load, when <see cref="TireDiameterPrinted"/>; else loaded.</summary>
    public required double TireDiameterMm { get; init; }

    /// <summary>Whether the diameter is the printed one.</summary>
    public required bool TireDiameterPrinted { get; init; }

    /// <summary>Loaded rolling diameter over the printed one.</summary>
    public required double LoadedTireShare { get; init; }

    /// <summary>Share of the weight on driven wheels.</summary>
    public required double DrivenWeightShare { get; init; }

    /// <summary>Motors, each with a controller of its own, on one pack.</summary>
    public required int MotorCount { get; init; }

    /// <summary>Pinion teeth.</summary>
    public required int PinionTeeth { get; init; }

    /// <summary>Spur gear teeth.</summary>
    public required int SpurTeeth { get; init; }

    /// <summary>Ratios of the transmission: one, or those of a gearbox.</summary>
    public required IReadOnlyList<double> TransmissionRatios { get; init; }

    /// <summary>Ratio of the axles.</summary>
    public required double AxleRatio { get; init; }

    /// <summary>Efficiency motor shaft to wheel.</summary>
    public required double Efficiency { get; init; }
}

/// <summary>The leads as plain figures.</summary>
public sealed record PlainWiring
{
    /// <summary>Gauge of the battery leads.</summary>
    public required double BatteryLeadAwg { get; init; }

    /// <summary>Length of the battery leads, one way.</summary>
    public required double BatteryLeadMm { get; init; }

    /// <summary>Gauge of the motor leads.</summary>
    public required double MotorLeadAwg { get; init; }

    /// <summary>Length of the motor leads, one way.</summary>
    public required double MotorLeadMm { get; init; }

    /// <summary>Temperature that the insulation stands.</summary>
    public required double InsulationC { get; init; }
}

/// <summary>An accessory as plain figures.</summary>
public sealed record PlainAccessory
{
    /// <summary>Whether the pack itself feeds it; else the receiver supply does.</summary>
    public required bool OnPack { get; init; }

    /// <summary>Current at rest.</summary>
    public required double IdleCurrentA { get; init; }

    /// <summary>Current at work.</summary>
    public required double WorkingCurrentA { get; init; }

    /// <summary>Current when jammed.</summary>
    public required double JammedCurrentA { get; init; }
}
