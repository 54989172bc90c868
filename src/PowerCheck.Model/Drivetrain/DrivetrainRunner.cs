namespace PowerCheck.Model.Drivetrain;

/// <summary>Works out what the gearing makes of the motor (M4).</summary>
public static class DrivetrainRunner
{
    /// <summary>The report, each speed of a gearbox included.</summary>
    /// <param name="rig">The rig.</param>
    public static DrivetrainReport Run(Rig rig)
    {
        var reserves = rig
            .Vehicle.Gearing.Ratios.Select(ratio => TorqueReserve.Of(rig, ratio))
            .ToArray();
        var gears = rig
            .Vehicle.Gearing.Ratios.Select((ratio, n) => Gear(rig, ratio, reserves[n].Ratio))
            .ToArray();
        return new DrivetrainReport
        {
            OverallRatio = gears[0].OverallRatio,
            TopSpeedMPerS = gears[0].TopSpeedMPerS,
            TorqueReserve = gears[0].TorqueReserve,
            LimitedBy = reserves[0].LimitedBy,
            SlipSlopeRad = rig.SlipSlopeRad,
            MeshCenterM = rig.Vehicle.Gearing.Mesh.CenterM,
            Gears = gears,
        };
    }

    private static GearReport Gear(Rig rig, double ratio, double reserve)
    {
        var climb = WheelLoad.Creep(rig, ratio, rig.ClimbSlopeRad, rig.Road.CreepMPerS);
        return new(
            ratio,
            FullThrottleCases.Top(rig, ratio).RoadSpeedMPerS,
            rig.Motor.CurrentFor(climb.ShaftNm, climb.SpeedRadPerS),
            reserve
        );
    }
}
