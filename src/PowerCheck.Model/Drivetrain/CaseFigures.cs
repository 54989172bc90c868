namespace PowerCheck.Model.Drivetrain;

/// <summary>The figures of a load case from its operating point, and what stops it.</summary>
public static class CaseFigures
{
    /// <summary>The case at an operating point.</summary>
    internal static LoadCase Of(
        Rig rig,
        LoadCaseName name,
        Source source,
        OperatingPoint point,
        double shaftNm,
        double roadMPerS,
        double? ratio = null
    )
    {
        var gearing = rig.Vehicle.Gearing;
        var motor = rig.Motor;
        var batteryRms = BatteryRmsA(rig, point);
        return new LoadCase
        {
            Name = name,
            MotorCurrentA = point.MotorA,
            MotorRmsCurrentA = point.MotorRmsA,
            BatteryCurrentA = point.Bus.BatteryA,
            BatteryRmsCurrentA = batteryRms,
            BusVoltageV = point.Bus.BusV,
            MotorVoltageV = point.MotorV,
            DutyRatio = point.Bus.Duty,
            MotorSpeedRadPerS = point.SpeedRadPerS,
            RoadSpeedMPerS = roadMPerS,
            WheelTorqueNm =
                shaftNm
                * (ratio ?? gearing.LowestRatio)
                * gearing.Efficiency
                * rig.Vehicle.MotorCount,
            MotorHeatW =
                (((point.MotorA * point.MotorA) + point.RippleA2) * motor.ResistanceOhm)
                + (motor.BrushDropV * Math.Abs(point.MotorA))
                + motor.SpinHeatW(point.SpeedRadPerS),
            ControllerHeatW =
                point.ControllerW
                + (point.RippleA2 * rig.Controller.OnResistanceOhm)
                + rig.ReceiverSupply.HeatW(point.Bus.BusV, rig.ReceiverSupply.MeanOutputA),
            BatteryHeatW = batteryRms * batteryRms * (source.ResistanceOhm - rig.Leads.BatteryOhm),
            Attainable = null,
        };
    }

    /// <summary>The case with what stops it, if anything does.</summary>
    internal static LoadCase Obstructed(
        Rig rig,
        LoadCase found,
        OperatingPoint point,
        Obstacle? blind
    )
    {
        Obstacle? obstacle =
            blind is not null ? blind
            : point.MotorA > rig.Controller.CurrentLimitA ? Obstacle.CurrentLimit
            : double.IsNaN(point.Bus.BusV) ? null
            : point.Bus.PowerExceeded ? Obstacle.BatteryPower
            : !point.Bus.Reached ? Obstacle.Voltage
            : point.Bus.BusV < rig.CutoffV ? Obstacle.Cutoff
            : null;
        return found with
        {
            Attainable = obstacle is not null ? false : Known(point.Bus.BusV, true),
            Obstacle = obstacle,
        };
    }

    /// <summary>
    /// Root mean square battery current [A]: the mean on a smoothed bus; below 4 kHz the pack sees the motor current, ripple
    /// included, for a share D of the time.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="point">The operating point.</param>
    public static double BatteryRmsA(Rig rig, OperatingPoint point)
    {
        var duty = point.Bus.Duty;
        if (!Bridge.Of(rig.Controller).Unsmoothed || duty is <= 0 or >= 1)
        {
            return point.Bus.BatteryA;
        }

        // The mean while on is more than the mean: the ripple rises towards the end of that time.
        var others = point.Bus.AuxiliaryA;
        var on = ((point.Bus.BatteryA - others) / duty) + others;
        var ripple = rig.Vehicle.MotorCount * rig.Vehicle.MotorCount * point.RippleA2;
        return Math.Sqrt((duty * ((on * on) + ripple)) + ((1 - duty) * others * others));
    }

    /// <summary>Road speed of a motor speed in the lowest gear [m/s].</summary>
    internal static double RoadMPerS(Rig rig, double motorRadPerS) =>
        motorRadPerS / rig.Vehicle.Gearing.LowestRatio * rig.Vehicle.RadiusM;

    /// <summary>A word that is only known when the figure is.</summary>
    internal static bool? Known(double figure, bool value) => double.IsNaN(figure) ? null : value;
}
