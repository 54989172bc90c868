using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>One segment of the lap as the motor and the pack feel it (M8).</summary>
/// <param name="Segment">The segment.</param>
/// <param name="Drive">What heats the motor.</param>
public sealed record SegmentLoad(Segment Segment, Drive Drive)
{
    /// <summary>The load of a segment.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="segment">The segment.</param>
    public static SegmentLoad Of(Rig rig, Segment segment) =>
        new(
            segment,
            segment.Kind switch
            {
                SegmentKind.Creep => Creep(rig, segment),
                SegmentKind.Hold => Hold(rig, Steepest(rig, segment.SlopeRad)),
                SegmentKind.Jammed => Jam(rig, segment.Throttle),
                _ => Drive.Rest,
            }
        );

    /// <summary>What holds a rig on a slope heats the motor like this; nothing where friction holds or nothing does.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="slopeRad">Slope [rad].</param>
    public static Drive Hold(Rig rig, double slopeRad)
    {
        var motor = rig.Motor;
        var torque = WheelLoad.HoldingNm(rig, slopeRad);
        if (torque <= 0 || rig.Controller.Hold == HoldMode.None)
        {
            return Drive.Rest;
        }

        return rig.Controller.Hold == HoldMode.Active
            ? Drive.Holding(torque, motor.Heat.LockedHeatFactor)
            : Drive.Holding(torque);
    }

    /// <summary>What the pack gives in this segment at a charge.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="charge">Charge, 0 to 1.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public SegmentPower At(Rig rig, double charge, double windingC, double magnetC)
    {
        var source = rig.SourceAt(charge, true);
        var current = Drive.CurrentA(rig.Motor, windingC, magnetC);
        if (Segment.Kind is SegmentKind.Hold && rig.Controller.Hold != HoldMode.Active)
        {
            // A drag brake takes nothing from the pack.
            return Idle(rig, source, current);
        }

        var point =
            Segment.Kind == SegmentKind.Jammed
                ? Held(rig, source, windingC)
                : OperatingPoint.Feeding(
                    rig,
                    source,
                    current,
                    Drive.SpeedRadPerS,
                    windingC,
                    magnetC
                );
        var standing = Segment.Kind is SegmentKind.Jammed or SegmentKind.Hold;
        var hotter = rig.Controller.HotResistanceOhm - rig.Controller.OnResistanceOhm;
        var switches =
            point.ControllerW
            + (point.MotorA * point.MotorA * hotter)
            + (point.RippleA2 * rig.Controller.HotResistanceOhm);
        return new(
            point.MotorRmsA,
            point.Bus.BatteryA,
            CaseFigures.BatteryRmsA(rig, point),
            point.Bus.BusV,
            (switches * CaseHeat.StandstillFactor(rig, standing))
                + rig.ReceiverSupply.MemoryHeatW(point.Bus.BusV)
        );
    }

    private static SegmentPower Idle(Rig rig, Source source, double motorA)
    {
        var bus = Bus.Feeding(source, rig.Auxiliary, rig.Vehicle.MotorCount, 0, 0);
        return new(
            motorA,
            bus.BatteryA,
            bus.BatteryA,
            bus.BusV,
            (motorA * motorA * rig.Controller.HotResistanceOhm)
                + rig.ReceiverSupply.MemoryHeatW(bus.BusV)
        );
    }

    private OperatingPoint Held(Rig rig, Source source, double windingC)
    {
        var point = OperatingPoint.AtDuty(rig, source, Segment.Throttle, 0, windingC);
        return point.MotorA > rig.Controller.CurrentLimitA
            ? OperatingPoint.Feeding(rig, source, rig.Controller.CurrentLimitA, 0, windingC)
            : point;
    }

    private static Drive Creep(Rig rig, Segment segment)
    {
        var load = WheelLoad.Creep(
            rig,
            rig.Vehicle.Gearing.LowestRatio,
            Steepest(rig, segment.SlopeRad),
            segment.SpeedMPerS
        );
        var point = OperatingPoint.Feeding(
            rig,
            rig.SourceAt(CaseRunner.HalfCharge, true),
            rig.Motor.CurrentFor(load.ShaftNm, load.SpeedRadPerS),
            load.SpeedRadPerS
        );
        return Drive.Torque(load.ShaftNm, load.SpeedRadPerS, point.RippleA2);
    }

    private static Drive Jam(Rig rig, double throttle)
    {
        var source = rig.SourceAt(CaseRunner.HalfCharge, true);
        var limit = rig.Controller.CurrentLimitA;
        var free = CaseHeat.ThrottleCurrent(rig, source, throttle);
        double Current(double windingC) =>
            free(windingC) is var current && current > limit ? limit : current;

        return Drive.Throttle(
            Current,
            OperatingPoint.AtDuty(rig, source, throttle, 0).RippleA2,
            rig.Motor.Heat.LockedHeatFactor
        );
    }

    private static double Steepest(Rig rig, double slopeRad) =>
        Math.Clamp(slopeRad, -rig.SlipSlopeRad, rig.SlipSlopeRad);
}

/// <summary>What pack and controller feel in a segment.</summary>
/// <param name="MotorRmsA">Root mean square motor current [A].</param>
/// <param name="BatteryA">Mean battery current [A].</param>
/// <param name="BatteryRmsA">Root mean square battery current [A].</param>
/// <param name="BusV">Bus voltage, while on where nothing smooths it [V].</param>
/// <param name="MemoryW">
/// Heat in one controller that counts for its thermal memory, switches hot, standstill weighed [W].
/// </param>
public readonly record struct SegmentPower(
    double MotorRmsA,
    double BatteryA,
    double BatteryRmsA,
    double BusV,
    double MemoryW
);
