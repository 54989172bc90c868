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
                SegmentKind.Hold => Drives.Holding(rig, Steepest(rig, segment.SlopeRad)),
                SegmentKind.Jammed => Drives.Jammed(rig, segment.Throttle),
                _ => Drive.Rest,
            }
        );

    /// <summary>What the pack gives in this segment at a charge.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="charge">Charge, 0 to 1.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public SegmentPower At(Rig rig, double charge, double windingC, double magnetC) =>
        At(rig, rig.SourceAt(charge, true), windingC, magnetC);

    /// <summary>What the pack gives in this segment.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public SegmentPower At(Rig rig, Source source, double windingC, double magnetC)
    {
        if (Segment.Kind is SegmentKind.Hold && rig.Controller.Hold != HoldMode.Active)
        {
            // A drag brake takes nothing from the pack.
            return Idle(rig, source, Drive.CurrentA(rig.Motor, windingC, magnetC));
        }

        var point =
            Segment.Kind == SegmentKind.Jammed
                ? Drives.Wedged(rig, source, Segment.Throttle, windingC)
                : OperatingPoint.Feeding(
                    rig,
                    source,
                    Drive.CurrentA(rig.Motor, windingC, magnetC),
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

    private static Drive Creep(Rig rig, Segment segment)
    {
        var load = WheelLoad.Creep(
            rig,
            rig.Vehicle.Gearing.LowestRatio,
            Steepest(rig, segment.SlopeRad),
            segment.SpeedMPerS
        );
        return Drives.Turning(rig, load.ShaftNm, load.SpeedRadPerS);
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
