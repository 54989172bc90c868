using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Drivetrain;

/// <summary>What one motor has to turn, reflected through the gearing (M4).</summary>
/// <param name="ShaftNm">Shaft torque of one motor [N·m]; negative when the motor brakes.</param>
/// <param name="SpeedRadPerS">Motor speed [rad/s], 0 or more.</param>
/// <param name="WheelNm">Torque at all wheels together [N·m].</param>
/// <param name="RoadMPerS">Road speed [m/s].</param>
public readonly record struct WheelLoad(
    double ShaftNm,
    double SpeedRadPerS,
    double WheelNm,
    double RoadMPerS
)
{
    /// <summary>Creeping at a speed on a slope, down too: losses help then.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="ratio">Motor turns a wheel turn.</param>
    /// <param name="slopeRad">Slope [rad], negative downhill.</param>
    /// <param name="speedMPerS">Speed [m/s].</param>
    public static WheelLoad Creep(Rig rig, double ratio, double slopeRad, double speedMPerS)
    {
        var force =
            Road.GradeForceN(rig.Vehicle.MassKg, slopeRad)
            + Road.RollingForceN(rig.Vehicle.MassKg, slopeRad, rig.Road.RollingResistance);
        return Of(rig, ratio, force * rig.Vehicle.RadiusM, speedMPerS);
    }

    /// <summary>Creeping on the level while the tires just let go: (µ + Crr)·m·g.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="ratio">Motor turns a wheel turn.</param>
    /// <param name="speedMPerS">Speed of the tread [m/s].</param>
    public static WheelLoad Slip(Rig rig, double ratio, double speedMPerS)
    {
        var force =
            (rig.Road.Friction + rig.Road.RollingResistance)
            * rig.Vehicle.MassKg
            * rig.Vehicle.DrivenWeightShare
            * Road.GravityMPerS2;
        return Of(rig, ratio, force * rig.Vehicle.RadiusM, speedMPerS);
    }

    /// <summary>
    /// Shaft torque that one motor must hold so that the rig stands on a slope [N·m]; 0 or less when friction alone holds
    /// it: m·g·(sin θ − Crr·cos θ)·(d/2)·η_b/G − kt·i0(0).
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="slopeRad">Slope [rad].</param>
    public static double HoldingNm(Rig rig, double slopeRad)
    {
        var gearing = rig.Vehicle.Gearing;
        return (
                HoldingWheelNm(rig, slopeRad)
                * gearing.BackDrivingEfficiency
                / (gearing.LowestRatio * rig.Vehicle.MotorCount)
            ) - (rig.Motor.TorqueConstantNmPerA * rig.Motor.NoLoad.StandstillA);
    }

    /// <summary>
    /// Torque at all wheels together that keeps the rig on a slope, nose up or down [N·m]: m·g·(|sin θ| − Crr·cos θ)·d/2.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="slopeRad">Slope [rad].</param>
    public static double HoldingWheelNm(Rig rig, double slopeRad) =>
        (
            Road.GradeForceN(rig.Vehicle.MassKg, Math.Abs(slopeRad))
            - Road.RollingForceN(rig.Vehicle.MassKg, slopeRad, rig.Road.RollingResistance)
        ) * rig.Vehicle.RadiusM;

    private static WheelLoad Of(Rig rig, double ratio, double wheelNm, double speedMPerS)
    {
        var gearing = rig.Vehicle.Gearing;
        var efficiency = wheelNm >= 0 ? 1 / gearing.Efficiency : gearing.BackDrivingEfficiency;
        return new(
            wheelNm * efficiency / (ratio * rig.Vehicle.MotorCount),
            speedMPerS / rig.Vehicle.RadiusM * ratio,
            wheelNm,
            speedMPerS
        );
    }
}
