using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Drivetrain;

/// <summary>Runs the eight load cases of a rig (M5), winding and magnet at 20 °C, in the lowest gear.</summary>
public static class CaseRunner
{
    /// <summary>Charge at which the lasting cases are run.</summary>
    public const double HalfCharge = 0.5;

    /// <summary>All eight cases.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCases Run(Rig rig)
    {
        var slip = Slip(rig);
        return new([
            Level(rig),
            Climb(rig),
            Hold(rig),
            slip,
            Punch(rig, HalfCharge),
            Jam(rig, slip.MotorCurrentA),
            Stall(rig),
            Top(rig, rig.Vehicle.Gearing.LowestRatio),
        ]);
    }

    /// <summary>Steady creep on the level.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Level(Rig rig)
    {
        var load = WheelLoad.Creep(rig, rig.Vehicle.Gearing.LowestRatio, 0, rig.Road.CreepMPerS);
        return Driven(rig, LoadCaseName.Level, load, LosesRotor(rig, load.SpeedRadPerS));
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
        var blind = CannotStart(rig) ?? LosesRotor(rig, load.SpeedRadPerS);
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
        return Driven(rig, LoadCaseName.Slip, load, LosesRotor(rig, load.SpeedRadPerS));
    }

    /// <summary>Standing on the slope, by what the controller does at neutral.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Hold(Rig rig)
    {
        var torque = WheelLoad.HoldingNm(rig, rig.ClimbSlopeRad);
        var wheel = WheelLoad.HoldingWheelNm(rig, rig.ClimbSlopeRad);
        var motor = rig.Motor;
        var source = rig.SourceAt(HalfCharge, true);
        var current = torque / motor.TorqueConstantNmPerA;
        if (double.IsNaN(torque))
        {
            return Standing(rig, source, torque, torque, wheel, null);
        }

        if (torque <= 0)
        {
            return Standing(rig, source, 0, 0, wheel, true);
        }

        switch (rig.Controller.Hold)
        {
            case HoldMode.None:
                return Standing(rig, source, 0, double.NaN, wheel, false);
            case HoldMode.DragBrake:
                // The winding is shorted: back-EMF drives the current against resistance and brushes.
                var drop = (current * (motor.ResistanceOhm + rig.LoopOhm)) + motor.BrushDropV;
                var speed = drop / motor.TorqueConstantNmPerA;
                return Standing(rig, source, current, speed, wheel, true);
            default:
                var point = OperatingPoint.Feeding(rig, source, current, 0);
                var hold = From(rig, LoadCaseName.Hold, source, point, torque, 0) with
                {
                    WheelTorqueNm = wheel,
                };
                return Obstructed(rig, hold, point, CannotStart(rig));
        }
    }

    /// <summary>Full throttle, tires slipping.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="charge">Charge, 0 to 1.</param>
    public static LoadCase Punch(Rig rig, double charge)
    {
        var source = rig.SourceAt(charge, false);
        var load = WheelLoad.Slip(rig, rig.Vehicle.Gearing.LowestRatio, 0);
        var point = FullThrottle(rig, source, load.ShaftNm);
        var limit = rig.Controller.CurrentLimitA;
        var limited = point.MotorA > limit;
        if (limited)
        {
            point = HeldToLimit(rig, source, limit);
        }

        var stuck = point.SpeedRadPerS <= 0;
        var punch = From(
            rig,
            LoadCaseName.Punch,
            source,
            point,
            rig.Motor.TorqueOf(point.MotorA, point.SpeedRadPerS),
            Road(rig, point.SpeedRadPerS)
        );
        Obstacle? obstacle =
            limited ? Obstacle.CurrentLimit
            : stuck ? Obstacle.Voltage
            : punch.BusVoltageV < rig.CutoffV ? Obstacle.Cutoff
            : null;
        return punch with
        {
            Attainable = Known(point.MotorA, obstacle is null),
            Obstacle = obstacle,
        };
    }

    /// <summary>
    /// Wheel wedged, driver feeding throttle: the least of full-throttle stall, the controller's limit and a multiple of
    /// the slip current.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="slipA">Motor current of the slip case [A].</param>
    public static LoadCase Jam(Rig rig, double slipA)
    {
        var source = rig.SourceAt(1, false);
        var full = OperatingPoint.AtDuty(rig, source, 1, 0);
        var fed = rig.Road.JamSlipFactor * slipA;
        var limit = rig.Controller.CurrentLimitA;
        var current = double.IsNaN(full.MotorA) ? fed : Math.Min(full.MotorA, fed);
        var limited = current > limit;
        current = limited ? limit : current;
        var point =
            current < full.MotorA || double.IsNaN(full.MotorA)
                ? OperatingPoint.Feeding(rig, source, current, 0)
                : full;
        return Locked(rig, LoadCaseName.Jam, source, point) with
        {
            Attainable = Known(current, true),
            Obstacle = limited ? Obstacle.CurrentLimit : null,
        };
    }

    /// <summary>
    /// Wedged at full throttle, cold: what would flow, and what does, held to the controller's limit or, without one, to
    /// its burst rating.
    /// </summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Stall(Rig rig)
    {
        var source = rig.SourceAt(1, false);
        var full = OperatingPoint.AtDuty(rig, source, 1, 0);
        var ceiling = rig.Controller.CeilingA;
        var point = full.MotorA > ceiling ? OperatingPoint.Feeding(rig, source, ceiling, 0) : full;
        return Locked(rig, LoadCaseName.Stall, source, point) with
        {
            Attainable = Known(full.MotorA, true),
            Obstacle = full.MotorA > ceiling ? Obstacle.CurrentLimit : null,
            ProspectiveCurrentA = full.MotorA,
        };
    }

    /// <summary>Full throttle on the level, settled.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="ratio">Motor turns a wheel turn.</param>
    public static LoadCase Top(Rig rig, double ratio)
    {
        var source = rig.SourceAt(1, true);
        var load = WheelLoad.Creep(rig, ratio, 0, 0);
        var point = FullThrottle(rig, source, load.ShaftNm);
        var top = From(
            rig,
            LoadCaseName.Top,
            source,
            point,
            load.ShaftNm,
            point.SpeedRadPerS / ratio * rig.Vehicle.RadiusM,
            ratio
        );
        Obstacle? obstacle =
            point.SpeedRadPerS > rig.Motor.Ratings.MaxSpeedRadPerS ? Obstacle.SpeedLimit
            : point.SpeedRadPerS <= 0 ? Obstacle.Voltage
            : null;
        return top with
        {
            Attainable = Known(point.SpeedRadPerS, obstacle is null),
            Obstacle = obstacle,
        };
    }

    /// <summary>The point at which a motor turns a torque with the bridge fully on; at standstill when it cannot.</summary>
    /// <remarks>Where the motor's resistance is not known, speed is not either, but the current of a torque is.</remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="torqueNm">Shaft torque of one motor [N·m].</param>
    public static OperatingPoint FullThrottle(Rig rig, Source source, double torqueNm)
    {
        if (double.IsNaN(rig.Motor.ResistanceOhm))
        {
            return Blind(rig, source, torqueNm);
        }

        // With n motors on one source each sees n times its resistance; auxiliaries shift the open-circuit voltage.
        var loop = rig.Motor.ResistanceOhm + rig.LoopOhm;
        var n = rig.Vehicle.MotorCount;
        var bus = source.OpenCircuitV;
        var speed = 0.0;
        for (var tries = 0; tries < 40; tries++)
        {
            var auxiliary = rig.Auxiliary.CurrentA + (rig.Auxiliary.PowerW / bus);
            speed = Math.Max(
                0,
                rig.Motor.SpeedAt(
                    source.OpenCircuitV - (source.ResistanceOhm * auxiliary),
                    loop + (n * source.ResistanceOhm),
                    torqueNm
                )
            );
            var point = OperatingPoint.AtDuty(rig, source, 1, speed);
            if (Math.Abs(point.Bus.BusV - bus) < 1e-12 * bus)
            {
                return point;
            }

            bus = point.Bus.BusV;
        }

        return OperatingPoint.AtDuty(rig, source, 1, speed);
    }

    // Fully on at the controller's limit: the torque that leaves the speed at which just that current flows.
    private static OperatingPoint HeldToLimit(Rig rig, Source source, double limitA)
    {
        var point = FullThrottle(rig, source, rig.Motor.TorqueOf(limitA, 0));
        for (
            var tries = 0;
            Math.Abs(point.MotorA - limitA) > 1e-12 * limitA
                && point.SpeedRadPerS > 0
                && tries < 100;
            tries++
        )
        {
            point = FullThrottle(rig, source, rig.Motor.TorqueOf(limitA, point.SpeedRadPerS));
        }

        return point;
    }

    // Without a resistance the current that a torque needs is known all the same, friction at the highest speed included.
    private static OperatingPoint Blind(Rig rig, Source source, double torqueNm)
    {
        var fastest = rig.Motor.SpeedAt(source.OpenCircuitV, rig.LoopOhm, torqueNm);
        var current = rig.Motor.CurrentFor(torqueNm, Math.Max(0, fastest));
        var battery = (rig.Vehicle.MotorCount * current) + rig.Auxiliary.CurrentA;
        battery += rig.Auxiliary.PowerW / source.OpenCircuitV;
        var bus = source.OpenCircuitV - (source.ResistanceOhm * battery);
        return new(
            current,
            0,
            double.NaN,
            double.NaN,
            new(bus, 1, battery, true, false),
            current * current * rig.Controller.OnResistanceOhm
        );
    }

    private static LoadCase Driven(Rig rig, LoadCaseName name, WheelLoad load, Obstacle? blind)
    {
        var source = rig.SourceAt(HalfCharge, true);
        var current = rig.Motor.CurrentFor(load.ShaftNm, load.SpeedRadPerS);
        var point = OperatingPoint.Feeding(rig, source, current, load.SpeedRadPerS);
        var driven = From(rig, name, source, point, load.ShaftNm, load.RoadMPerS) with
        {
            WheelTorqueNm = load.WheelNm,
        };
        return Obstructed(rig, driven, point, blind);
    }

    private static LoadCase Obstructed(
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

    private static LoadCase Standing(
        Rig rig,
        Source source,
        double motorA,
        double speedRadPerS,
        double wheelNm,
        bool? attainable
    )
    {
        var motor = rig.Motor;
        var bus = Bus.Feeding(source, rig.Auxiliary, rig.Vehicle.MotorCount, 0, 0);
        return new LoadCase
        {
            Name = LoadCaseName.Hold,
            MotorCurrentA = motorA,
            MotorRmsCurrentA = motorA,
            BatteryCurrentA = bus.BatteryA,
            BatteryRmsCurrentA = bus.BatteryA,
            BusVoltageV = bus.BusV,
            MotorVoltageV = motorA * rig.Controller.OnResistanceOhm,
            DutyRatio = 0,
            MotorSpeedRadPerS = speedRadPerS,
            RoadSpeedMPerS = 0,
            WheelTorqueNm = wheelNm,
            MotorHeatW =
                (motorA * motorA * motor.ResistanceOhm)
                + (motor.BrushDropV * motorA)
                + (speedRadPerS > 0 ? motor.SpinHeatW(speedRadPerS) : 0 * speedRadPerS),
            ControllerHeatW =
                (motorA * motorA * rig.Controller.OnResistanceOhm)
                + rig.ReceiverSupply.HeatW(bus.BusV, rig.ReceiverSupply.MeanOutputA),
            BatteryHeatW = bus.BatteryA * bus.BatteryA * rig.Battery.LastingResistanceOhm,
            Attainable = attainable,
            CreepBackMPerS = Road(rig, speedRadPerS),
        };
    }

    private static LoadCase Locked(
        Rig rig,
        LoadCaseName name,
        Source source,
        OperatingPoint point
    ) => From(rig, name, source, point, rig.Motor.TorqueOf(point.MotorA, 0), 0);

    private static LoadCase From(
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

    /// <summary>
    /// Root mean square battery current [A]: the mean on a smoothed bus; below 4 kHz the pack sees the motor current, ripple
    /// included, for a share D of the time.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="point">The operating point.</param>
    public static double BatteryRmsA(Rig rig, OperatingPoint point)
    {
        var duty = point.Bus.Duty;
        if (OperatingPoint.Smoothed(rig.Controller) || duty is <= 0 or >= 1)
        {
            return point.Bus.BatteryA;
        }

        var others = point.Bus.BatteryA - (rig.Vehicle.MotorCount * duty * point.MotorA);
        var on = (rig.Vehicle.MotorCount * point.MotorA) + others;
        var ripple = rig.Vehicle.MotorCount * rig.Vehicle.MotorCount * point.RippleA2;
        return Math.Sqrt((duty * ((on * on) + ripple)) + ((1 - duty) * others * others));
    }

    private static double Road(Rig rig, double motorRadPerS) =>
        motorRadPerS / rig.Vehicle.Gearing.LowestRatio * rig.Vehicle.RadiusM;

    // A sensorless motor cannot be started or held under control on a slope.
    private static Obstacle? CannotStart(Rig rig) =>
        rig.Sensorless == true && !rig.Controller.LowSpeedStart ? Obstacle.NoSensor : null;

    // At too little back-EMF a sensorless controller no longer knows where the rotor stands.
    private static Obstacle? LosesRotor(Rig rig, double speedRadPerS) =>
        rig.Sensorless == true
        && rig.Motor.TorqueConstantNmPerA * speedRadPerS < rig.Controller.LowSpeedBackEmfV
            ? Obstacle.NoSensor
            : null;

    private static bool? Known(double figure, bool value) => double.IsNaN(figure) ? null : value;
}
