namespace PowerCheck.Model.Drivetrain;

/// <summary>Load cases of a steady creep: on the level, up the slope, with the tires just slipping (M5).</summary>
public static class SteadyCases
{
    /// <summary>Steady creep on the level.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Level(Rig rig)
    {
        var load = WheelLoad.Creep(rig, rig.Vehicle.Gearing.LowestRatio, 0, rig.Road.CreepMPerS);
        return Driven(rig, LoadCaseName.Level, load, rig.LosesRotor(load.SpeedRadPerS));
    }

    /// <summary>
    /// Steady creep up the slope; where the tires let go before the asked slope, at the slope at which they do.
    /// </summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Climb(Rig rig)
    {
        var load = WheelLoad.Creep(
            rig,
            rig.Vehicle.Gearing.LowestRatio,
            rig.ClimbSlopeRad,
            rig.Road.CreepMPerS
        );
        var blind = rig.CannotStart ?? rig.LosesRotor(load.SpeedRadPerS);
        var climb = Driven(rig, LoadCaseName.Climb, load, blind);
        return climb.Obstacle is null && rig.Road.SlopeRad > rig.SlipSlopeRad
            ? climb with
            {
                Attainable = climb.Attainable is null ? null : false,
                Obstacle = Obstacle.Traction,
            }
            : climb;
    }

    /// <summary>Creeping on the level, tires just letting go.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Slip(Rig rig)
    {
        var load = WheelLoad.Slip(rig, rig.Vehicle.Gearing.LowestRatio, rig.Road.CreepMPerS);
        return Driven(rig, LoadCaseName.Slip, load, rig.LosesRotor(load.SpeedRadPerS));
    }

    private static LoadCase Driven(Rig rig, LoadCaseName name, WheelLoad load, Obstacle? blind)
    {
        var source = rig.SourceAt(CaseRunner.HalfCharge, true);
        var current = rig.Motor.CurrentFor(load.ShaftNm, load.SpeedRadPerS);
        var point = OperatingPoint.Feeding(rig, source, current, load.SpeedRadPerS);
        var driven = CaseFigures.Of(rig, name, source, point, load.ShaftNm, load.RoadMPerS) with
        {
            WheelTorqueNm = load.WheelNm,
        };
        return CaseFigures.Obstructed(rig, driven, point, blind);
    }
}
