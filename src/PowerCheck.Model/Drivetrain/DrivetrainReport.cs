namespace PowerCheck.Model.Drivetrain;

/// <summary>What the gearing makes of the motor.</summary>
public sealed record DrivetrainReport
{
    /// <summary>Motor turns a wheel turn in the lowest gear, which decides the climb.</summary>
    public required double OverallRatio { get; init; }

    /// <summary>Settled speed at full throttle on the level, lowest gear [m/s].</summary>
    public required double TopSpeedMPerS { get; init; }

    /// <summary>Wheel torque available at creep speed over the climb's; hot winding, reserve charge.</summary>
    public required double TorqueReserve { get; init; }

    /// <summary>What bounds the available torque; null when not known.</summary>
    public required Obstacle? LimitedBy { get; init; }

    /// <summary>Slope at which the tires let go [rad].</summary>
    public required double SlipSlopeRad { get; init; }

    /// <summary>Center distance of pinion and spur gear [m]; NaN without teeth and pitch.</summary>
    public required double MeshCenterM { get; init; }

    /// <summary>Each speed of the gearbox, lowest gear first; one when there is no gearbox.</summary>
    public required IReadOnlyList<GearReport> Gears { get; init; }
}

/// <summary>One speed of the gearbox.</summary>
/// <param name="OverallRatio">Motor turns a wheel turn.</param>
/// <param name="TopSpeedMPerS">Settled speed at full throttle on the level [m/s].</param>
/// <param name="ClimbCurrentA">Motor current of the climb [A].</param>
/// <param name="TorqueReserve">Wheel torque available over the climb's.</param>
public sealed record GearReport(
    double OverallRatio,
    double TopSpeedMPerS,
    double ClimbCurrentA,
    double TorqueReserve
);
