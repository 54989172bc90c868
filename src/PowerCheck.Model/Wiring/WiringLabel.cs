namespace PowerCheck.Model.Wiring;

/// <summary>What is known of the leads, in SI; null is what is not.</summary>
public sealed record WiringLabel
{
    /// <summary>Gauge of the battery leads (ASTM B258).</summary>
    public double? BatteryLeadAwg { get; init; }

    /// <summary>Length of the battery leads, one way [m].</summary>
    public double? BatteryLeadM { get; init; }

    /// <summary>Gauge of the motor leads (ASTM B258).</summary>
    public double? MotorLeadAwg { get; init; }

    /// <summary>Length of the motor leads, one way [m].</summary>
    public double? MotorLeadM { get; init; }

    /// <summary>Temperature that the leads' insulation stands [°C].</summary>
    public double? InsulationC { get; init; }

    /// <summary>Continuous current of the battery connector [A].</summary>
    public double? ConnectorContinuousA { get; init; }

    /// <summary>Rating of the fuse in the battery lead [A]; null when there is none.</summary>
    public double? FuseA { get; init; }
}
