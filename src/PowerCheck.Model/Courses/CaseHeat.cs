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
            LoadCaseName.Hold => SegmentLoad.Hold(rig, rig.ClimbSlopeRad),
            _ => Drive.Torque(
                rig.Motor.TorqueOf(load.MotorCurrentA, load.MotorSpeedRadPerS),
                load.MotorSpeedRadPerS,
                Ripple(load)
            ),
        };

    /// <summary>The locked winding of a case: jam, stall, active hold.</summary>
    /// <remarks>
    /// Where the controller limits the current or holds actively, the current stays; else the throttle does, and the
    /// current falls as the winding warms.
    /// </remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The case.</param>
    /// <param name="warmth">The motor in its air.</param>
    public static LockedWinding Locked(Rig rig, LoadCase load, MotorWarmth warmth)
    {
        var uneven = rig.Motor.Heat.LockedHeatFactor;
        if (load.Obstacle == Obstacle.CurrentLimit || load.Name == LoadCaseName.Hold)
        {
            return new(warmth, Drive.Current(load.MotorCurrentA, 0, Ripple(load), uneven));
        }

        return new(
            warmth,
            Drive.Throttle(
                ThrottleCurrent(rig, rig.SourceAt(1, false), load.DutyRatio),
                Ripple(load),
                uneven
            )
        );
    }

    /// <summary>Current of a locked motor at a set throttle, from its winding's temperature [A from °C].</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="throttle">Duty, above 0 to 1.</param>
    public static Func<double, double> ThrottleCurrent(Rig rig, Source source, double throttle) =>
        windingC => OperatingPoint.AtDuty(rig, source, throttle, 0, windingC).MotorA;

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

    private static double Ripple(LoadCase load) =>
        Math.Max(
            0,
            (load.MotorRmsCurrentA * load.MotorRmsCurrentA)
                - (load.MotorCurrentA * load.MotorCurrentA)
        );
}
