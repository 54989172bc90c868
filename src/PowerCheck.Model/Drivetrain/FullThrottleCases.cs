namespace PowerCheck.Model.Drivetrain;

/// <summary>Load cases with the bridge fully on: punch and top speed (M5).</summary>
public static class FullThrottleCases
{
    /// <summary>Full throttle, tires slipping.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="charge">Charge, 0 to 1.</param>
    public static LoadCase Punch(Rig rig, double charge)
    {
        var source = rig.SourceAt(charge, false);
        var load = WheelLoad.Slip(rig, rig.Vehicle.Gearing.LowestRatio, 0);
        var point = Point(rig, source, load.ShaftNm);
        var limit = rig.Controller.CurrentLimitA;
        var limited = point.MotorA > limit;
        if (limited)
        {
            point = HeldToLimit(rig, source, limit);
        }

        var stuck = point.SpeedRadPerS <= 0;
        var punch = CaseFigures.Of(
            rig,
            LoadCaseName.Punch,
            source,
            point,
            rig.Motor.TorqueOf(point.MotorA, point.SpeedRadPerS),
            CaseFigures.RoadMPerS(rig, point.SpeedRadPerS)
        );
        Obstacle? obstacle =
            limited ? Obstacle.CurrentLimit
            : stuck ? Obstacle.Voltage
            : punch.BusVoltageV < rig.CutoffV ? Obstacle.Cutoff
            : null;
        return punch with
        {
            Attainable = CaseFigures.Known(point.MotorA, obstacle is null),
            Obstacle = obstacle,
            UpperBound = double.IsNaN(rig.Motor.ResistanceOhm),
        };
    }

    /// <summary>Full throttle on the level, settled.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="ratio">Motor turns a wheel turn.</param>
    public static LoadCase Top(Rig rig, double ratio)
    {
        var source = rig.SourceAt(1, true);
        var load = WheelLoad.Creep(rig, ratio, 0, 0);
        var point = Point(rig, source, load.ShaftNm);
        var top = CaseFigures.Of(
            rig,
            LoadCaseName.Top,
            source,
            point,
            // Standing, it makes no more than its current does.
            point.SpeedRadPerS <= 0
                ? Math.Max(0, rig.Motor.TorqueOf(point.MotorA, 0))
                : load.ShaftNm,
            point.SpeedRadPerS / ratio * rig.Vehicle.RadiusM,
            ratio
        );
        Obstacle? obstacle =
            point.SpeedRadPerS > rig.Motor.Ratings.MaxSpeedRadPerS ? Obstacle.SpeedLimit
            : point.SpeedRadPerS <= 0 ? Obstacle.Voltage
            : null;
        return top with
        {
            Attainable = CaseFigures.Known(point.SpeedRadPerS, obstacle is null),
            Obstacle = obstacle,
            UpperBound = double.IsNaN(rig.Motor.ResistanceOhm),
        };
    }

    /// <summary>The point at which a motor turns a torque with the bridge fully on; at standstill when it cannot.</summary>
    /// <remarks>Where the motor's resistance is not known, speed is not either, but the current of a torque is.</remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="torqueNm">Shaft torque of one motor [N·m].</param>
    public static OperatingPoint Point(Rig rig, Source source, double torqueNm)
    {
        if (double.IsNaN(rig.Motor.ResistanceOhm))
        {
            return Blind(rig, source, torqueNm);
        }

        var speed = Speed(rig, source, torqueNm);
        return OperatingPoint.AtDuty(rig, source, 1, speed);
    }

    // The current of a torque grows with speed, and speed with the bus: i = α + β·V. Put into
    // V = E − Rs·(n·i + I_aux + P_aux/V), that is a quadratic; without a root, or too low, the motor stands.
    private static double Speed(Rig rig, Source source, double torqueNm)
    {
        var motor = rig.Motor;
        var loop = motor.ResistanceOhm + rig.LoopOhm;
        var standing = (torqueNm / motor.TorqueConstantNmPerA) + motor.NoLoad.StandstillA;
        var rise = motor.TorqueConstantNmPerA + (motor.NoLoad.SlopeAPerRadPerS * loop);
        var beta = motor.NoLoad.SlopeAPerRadPerS / rise;
        var alpha = standing - (beta * (motor.BrushDropV + (standing * loop)));
        var motorsOhm = rig.Vehicle.MotorCount * source.ResistanceOhm;
        var a = 1 + (motorsOhm * beta);
        var b =
            source.OpenCircuitV
            - (source.ResistanceOhm * rig.Auxiliary.CurrentA)
            - (motorsOhm * alpha);
        var root = (b * b) - (4 * a * source.ResistanceOhm * rig.Auxiliary.PowerW);
        if (root < 0 || b < 0)
        {
            return 0;
        }

        var bus = (b + Math.Sqrt(root)) / (2 * a);
        return Math.Max(0, motor.SpeedAt(bus, loop, torqueNm));
    }

    // Fully on at the controller's limit: the bus behind just that current leaves the speed; without one the motor stands.
    private static OperatingPoint HeldToLimit(Rig rig, Source source, double limitA)
    {
        var motor = rig.Motor;
        var auxiliary = rig.Auxiliary;
        var left = source.Behind(auxiliary.CurrentA + (rig.Vehicle.MotorCount * limitA));
        var bus = Bus.VoltageUnderPower(left, auxiliary.PowerW);
        var dropV = (limitA * (motor.ResistanceOhm + rig.LoopOhm)) + motor.BrushDropV;
        var speed = (bus - dropV) / motor.TorqueConstantNmPerA;
        return OperatingPoint.AtDuty(rig, source, 1, double.MaxNumber(0, speed));
    }

    // Without a resistance the current that a torque needs is known all the same, friction at the highest speed included.
    private static OperatingPoint Blind(Rig rig, Source source, double torqueNm)
    {
        var fastest = rig.Motor.SpeedAt(source.OpenCircuitV, rig.LoopOhm, torqueNm);
        var asked = rig.Motor.CurrentFor(torqueNm, Math.Max(0, fastest));
        var limit = rig.Controller.CurrentLimitA;
        var current = double.MinNumber(asked, limit);
        var battery = (rig.Vehicle.MotorCount * current) + rig.Auxiliary.CurrentA;
        battery += rig.Auxiliary.PowerW / source.OpenCircuitV;
        var bus = source.OpenCircuitV - (source.ResistanceOhm * battery);
        return new(
            current,
            0,
            double.NaN,
            double.NaN,
            new(bus, 1, battery, double.NaN, true, false),
            current * current * rig.Controller.OnResistanceOhm
        );
    }
}
