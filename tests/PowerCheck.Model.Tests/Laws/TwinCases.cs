using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>What a load case comes to when it is worked out from the parts alone.</summary>
/// <param name="Figures">Every figure by its name.</param>
/// <param name="Obstacle">What stops it.</param>
internal sealed record TwinCase(IReadOnlyDictionary<string, double> Figures, Obstacle? Obstacle);

/// <summary>The load cases of a rig from the forces on it and the <see cref="TwinBus"/>, speeds found by halving.</summary>
internal sealed class TwinCases(Rig rig)
{
    private const double Gravity = 9.80665;
    private readonly double radiusM = rig.Vehicle.TireDiameterM / 2;
    private readonly double ratio = rig.Vehicle.Gearing.Ratios[0];
    private readonly double kt = rig.Motor.TorqueConstantNmPerA;
    private readonly double weightN = rig.Vehicle.MassKg * Gravity;
    private readonly double eta = rig.Vehicle.Gearing.Efficiency;

    private double Motors => rig.Vehicle.MotorCount;

    private double CreepRadPerS => rig.Road.CreepMPerS / radiusM * ratio;

    private double SlopeRad =>
        Math.Min(rig.Road.SlopeRad, Math.Atan(rig.Road.Friction * rig.Vehicle.DrivenWeightShare));

    public TwinCase? Of(LoadCaseName name) =>
        name switch
        {
            LoadCaseName.Level => Creeping(RollNm(0), false),
            LoadCaseName.Climb => Climb(),
            LoadCaseName.Hold => Hold(),
            LoadCaseName.Slip => Creeping(SlipNm, false),
            LoadCaseName.Punch => Punch(),
            LoadCaseName.Jam => Locked(rig.Road.JamSlipFactor * SlipA),
            LoadCaseName.Stall => Locked(double.PositiveInfinity),
            _ => Top(),
        };

    private double RollNm(double slopeRad) =>
        weightN
        * (Math.Sin(slopeRad) + (rig.Road.RollingResistance * Math.Cos(slopeRad)))
        * radiusM;

    private double SlipNm =>
        weightN
        * rig.Vehicle.DrivenWeightShare
        * (rig.Road.Friction + rig.Road.RollingResistance)
        * radiusM;

    private double ShaftNm(double wheelNm) => wheelNm / (ratio * Motors * eta);

    private double FrictionA(double radPerS) =>
        rig.Motor.NoLoad.StandstillA + (rig.Motor.NoLoad.SlopeAPerRadPerS * radPerS);

    private double SlipA => (ShaftNm(SlipNm) / kt) + FrictionA(CreepRadPerS);

    private bool Blind =>
        rig.Motor.Kind == MotorKind.Brushless
        && (rig.Motor.Sensored == false || rig.Controller.SensorInput == false);

    private TwinCase? Creeping(double wheelNm, bool climbs)
    {
        var speed = CreepRadPerS;
        var current = (ShaftNm(wheelNm) / kt) + FrictionA(speed);
        var source = rig.SourceAt(0.5, true);
        if (new TwinBus(rig, source).Feed(current, Counter(current, speed)) is not { } at)
        {
            return null;
        }

        Obstacle? blind =
            Blind
            && (
                (climbs && !rig.Controller.LowSpeedStart)
                || kt * speed < rig.Controller.LowSpeedBackEmfV
            )
                ? Obstacle.NoSensor
                : null;
        return new(
            TwinFigures.Of(rig, source, at, speed, speed / ratio * radiusM, wheelNm),
            blind
                ?? Obstructed(
                    source,
                    at,
                    (current * (rig.Motor.ResistanceOhm + rig.LoopOhm)) + Counter(current, speed)
                )
        );
    }

    private TwinCase? Climb()
    {
        var climb = Creeping(RollNm(SlopeRad), true);
        return climb is { Obstacle: null } && rig.Road.SlopeRad > SlopeRad
            ? climb with
            {
                Obstacle = Obstacle.Traction,
            }
            : climb;
    }

    private Obstacle? Obstructed(Source source, TwinPoint at, double neededV)
    {
        if (at.MotorA > rig.Controller.CurrentLimitA)
        {
            return Obstacle.CurrentLimit;
        }

        var leftV = source.OpenCircuitV - (source.ResistanceOhm * rig.Auxiliary.CurrentA);
        var askedW = rig.Auxiliary.PowerW + (Motors * at.MotorA * neededV);
        return at.Reached ? (at.BusV < rig.CutoffV ? Obstacle.Cutoff : null)
            : askedW > leftV * leftV / (4 * source.ResistanceOhm) ? Obstacle.BatteryPower
            : Obstacle.Voltage;
    }

    private double Counter(double motorA, double radPerS) =>
        (kt * radPerS) + (motorA > 0 ? rig.Motor.BrushDropV : 0);

    private TwinCase? Hold()
    {
        var source = rig.SourceAt(0.5, true);
        var wheelNm =
            weightN
            * (Math.Sin(SlopeRad) - (rig.Road.RollingResistance * Math.Cos(SlopeRad)))
            * radiusM;
        var shaftNm =
            (wheelNm * Math.Max(0, 2 - (1 / eta)) / (ratio * Motors))
            - (kt * rig.Motor.NoLoad.StandstillA);
        if (shaftNm <= 0 || rig.Controller.Hold == HoldMode.None)
        {
            return Standing(source, 0, shaftNm <= 0 ? 0 : double.NaN, wheelNm);
        }

        if (rig.Controller.Hold == HoldMode.DragBrake)
        {
            // The speed at which braking current and friction together hold the torque.
            var loop = rig.Motor.ResistanceOhm + rig.LoopOhm;
            double Braking(double w) => Math.Max(0, ((kt * w) - rig.Motor.BrushDropV) / loop);
            var speed = Rising(w =>
                (kt * (Braking(w) + (rig.Motor.NoLoad.SlopeAPerRadPerS * w))) - shaftNm
            );
            return Standing(source, Braking(speed), speed, wheelNm);
        }

        var current = shaftNm / kt;
        if (new TwinBus(rig, source).Feed(current, Counter(current, 0)) is not { } at)
        {
            return null;
        }

        return new(
            TwinFigures.Of(rig, source, at, 0, 0, wheelNm),
            Blind && !rig.Controller.LowSpeedStart
                ? Obstacle.NoSensor
                : Obstructed(
                    source,
                    at,
                    (current * (rig.Motor.ResistanceOhm + rig.LoopOhm)) + Counter(current, 0)
                )
        );
    }

    private TwinCase? Standing(Source source, double motorA, double radPerS, double wheelNm)
    {
        if (new TwinBus(rig, source).Feed(0, 0) is not { } idle)
        {
            return null;
        }

        var figures = TwinFigures.Of(
            rig,
            source,
            idle with
            {
                MotorA = motorA,
            },
            radPerS,
            0,
            wheelNm
        );
        figures[nameof(LoadCase.MotorVoltageV)] = motorA * rig.LoopOhm;
        figures[nameof(LoadCase.CreepBackMPerS)] = radPerS / ratio * radiusM;
        return new(figures, null);
    }

    // A punch that is cut off with only the reserve left is not to be had.
    private TwinCase? Punch()
    {
        var half = Punch(0.5);
        return
            half is { Obstacle: null }
            && Punch(rig.Battery.ReserveShare)?.Obstacle == Obstacle.Cutoff
            ? half with
            {
                Obstacle = Obstacle.Cutoff,
            }
            : half;
    }

    private TwinCase? Punch(double charge)
    {
        var source = rig.SourceAt(charge, false);
        var found = FullThrottle(source, ShaftNm(SlipNm));
        if (found is not { } point)
        {
            return null;
        }

        var limit = rig.Controller.CurrentLimitA;
        var (at, speed) = point;
        var limited = at.MotorA > limit;
        if (limited)
        {
            // Faster, the back-EMF leaves less current: the speed at which just the limit flows.
            speed = Rising(w =>
                limit - (new TwinBus(rig, source).Full(Counter(1, w))?.MotorA ?? 0)
            );
            at = new TwinBus(rig, source).Full(Counter(1, speed))!.Value;
        }

        var torque = kt * (at.MotorA - FrictionA(speed));
        return new(
            TwinFigures.Of(
                rig,
                source,
                at,
                speed,
                speed / ratio * radiusM,
                torque * ratio * eta * Motors
            ),
            limited ? Obstacle.CurrentLimit
                : speed <= 0 ? Obstacle.Voltage
                : at.BusV < rig.CutoffV ? Obstacle.Cutoff
                : null
        );
    }

    private TwinCase? Top()
    {
        var source = rig.SourceAt(1, true);
        if (FullThrottle(source, ShaftNm(RollNm(0))) is not { } point)
        {
            return null;
        }

        var (at, speed) = point;
        var torque = kt * (at.MotorA - FrictionA(speed));
        return new(
            TwinFigures.Of(
                rig,
                source,
                at,
                speed,
                speed / ratio * radiusM,
                Math.Max(0, torque) * ratio * eta * Motors
            ),
            speed > rig.Motor.Ratings.MaxSpeedRadPerS ? Obstacle.SpeedLimit
                : speed <= 0 ? Obstacle.Voltage
                : null
        );
    }

    // The speed at which a motor fully on turns just this torque; 0 where it cannot.
    private (TwinPoint At, double RadPerS)? FullThrottle(Source source, double shaftNm)
    {
        var bus = new TwinBus(rig, source);
        double Spare(double w) =>
            shaftNm - (kt * ((bus.Full(Counter(1, w))?.MotorA ?? 0) - FrictionA(w)));
        var speed = Spare(0) >= 0 ? 0 : Rising(Spare);
        return bus.Full(Counter(1, speed)) is { } at ? (at, speed) : null;
    }

    private TwinCase? Locked(double fedA)
    {
        var source = rig.SourceAt(1, false);
        var bus = new TwinBus(rig, source);
        if (bus.Full(rig.Motor.BrushDropV) is not { } full)
        {
            return null;
        }

        var limit = rig.Controller.CurrentLimitA;
        var stall = double.IsInfinity(fedA);
        limit = stall && double.IsNaN(limit) ? rig.Controller.BurstCurrentA : limit;
        var asked = Math.Min(full.MotorA, fedA);
        var limited = asked > limit;
        asked = limited ? limit : asked;
        var point = asked < full.MotorA ? bus.Feed(asked, rig.Motor.BrushDropV) : full;
        if (point is not { } at)
        {
            return null;
        }

        var torque = kt * (at.MotorA - rig.Motor.NoLoad.StandstillA);
        var figures = TwinFigures.Of(rig, source, at, 0, 0, torque * ratio * eta * Motors);
        if (stall)
        {
            figures[nameof(LoadCase.ProspectiveCurrentA)] = full.MotorA;
        }

        return new(figures, limited ? Obstacle.CurrentLimit : null);
    }

    // Where a rising function passes 0, by doubling and halving.
    private static double Rising(Func<double, double> of)
    {
        double low = 0,
            high = 1;
        while (of(high) < 0 && high < 1e7)
        {
            (low, high) = (high, 2 * high);
        }

        for (var n = 0; n < 60; n++)
        {
            var middle = (low + high) / 2;
            (low, high) = of(middle) < 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
