using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>How each load case heats motor, controller and pack (M6, M7, M11).</summary>
public static class CaseHeat
{
    /// <summary>For how long a case is judged [s]: infinity for settled, NaN when it is not judged.</summary>
    /// <param name="name">The case.</param>
    /// <param name="judging">The times.</param>
    public static double JudgedS(LoadCaseName name, Judging judging) =>
        name switch
        {
            LoadCaseName.Level => double.PositiveInfinity,
            LoadCaseName.Climb => judging.ClimbS,
            LoadCaseName.Hold => judging.HoldS,
            LoadCaseName.Slip => judging.SlipS,
            LoadCaseName.Punch => judging.PunchS,
            LoadCaseName.Jam => judging.JamS,
            _ => double.NaN,
        };

    /// <summary>What heats the motor in a case in which it turns, or stands on a drag brake; null when it is locked.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The case.</param>
    public static Drive? Turning(Rig rig, LoadCase load) =>
        load.Name switch
        {
            LoadCaseName.Jam or LoadCaseName.Stall => null,
            LoadCaseName.Hold when rig.Controller.Hold == HoldMode.Active => null,
            LoadCaseName.Hold => Drives.Holding(rig, rig.ClimbSlopeRad),
            LoadCaseName.Punch or LoadCaseName.Top => Drive.Torque(
                rig.Motor.TorqueOf(load.MotorCurrentA, load.MotorSpeedRadPerS),
                load.MotorSpeedRadPerS
            ),
            _ => Drives.Turning(
                rig,
                rig.Motor.TorqueOf(load.MotorCurrentA, load.MotorSpeedRadPerS),
                load.MotorSpeedRadPerS
            ),
        };

    /// <summary>The locked winding of a case: jam, stall, active hold.</summary>
    /// <remarks>
    /// An active hold keeps its current. Else the throttle stays, and the current falls as the winding warms; where the
    /// controller limits it, it stays at the limit until full throttle drives less.
    /// </remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The case.</param>
    /// <param name="warmth">The motor in its air.</param>
    public static LockedWinding Locked(Rig rig, LoadCase load, MotorWarmth warmth)
    {
        var uneven = rig.Motor.Heat.LockedHeatFactor;
        var hold = load.Name == LoadCaseName.Hold;
        var source = hold ? rig.SourceAt(CaseRunner.HalfCharge, true) : rig.SourceAt(1, false);
        OperatingPoint Fed(double windingC) =>
            OperatingPoint.Feeding(rig, source, load.MotorCurrentA, 0, windingC);
        if (hold)
        {
            var ripple = Drives.Ripple(rig, (windingC, _) => Fed(windingC));
            return new(warmth, Drive.Current(load.MotorCurrentA, 0, ripple, uneven));
        }

        // A limit is a ceiling: a winding may warm until full throttle drives less.
        var limited = load.Obstacle == Obstacle.CurrentLimit;
        var throttle = limited ? 1 : load.DutyRatio;
        OperatingPoint Wedged(double windingC) =>
            OperatingPoint.AtDuty(rig, source, throttle, 0, windingC) is var point
            && limited
            && point.MotorA > load.MotorCurrentA
                ? Fed(windingC)
                : point;
        return new(warmth, Drive.Throttle(windingC => Wedged(windingC).Current, uneven));
    }

    /// <summary>Loss of a case over the controller's rated loss; at standstill with a brushless motor the rating is less.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The case.</param>
    public static double ControllerLoad(Rig rig, LoadCase load)
    {
        var controller = rig.Controller;
        var supply = rig.ReceiverSupply;
        var hotter = controller.HotResistanceOhm - controller.OnResistanceOhm;
        var switches =
            load.ControllerHeatW
            + (load.MotorRmsCurrentA * load.MotorRmsCurrentA * hotter)
            - supply.HeatW(load.BusVoltageV, supply.MeanOutputA);
        var standing =
            load.Name is LoadCaseName.Jam or LoadCaseName.Stall
            || (load.Name == LoadCaseName.Hold && controller.Hold == HoldMode.Active);
        return ((switches * StandstillFactor(rig, standing)) + supply.MemoryHeatW(load.BusVoltageV))
            / controller.RatedHeatW;
    }

    /// <summary>Factor on the loss when one phase pair carries all: the rating's share squared and inverted.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="standing">Whether the motor stands under current.</param>
    public static double StandstillFactor(Rig rig, bool standing)
    {
        var share = rig.Controller.StandstillRatingShare;
        return standing && rig.Motor.Kind == MotorKind.Brushless ? 1 / (share * share) : 1;
    }
}
