using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>One segment of a lap: its current at any temperature, and the flow of power at any charge.</summary>
internal sealed class Stretch
{
    private readonly Plain plain;
    private readonly Bridge bridge;
    private readonly double shaftNm;
    private readonly double radPerS;

    public Stretch(Plain plain, PlainSegment segment)
    {
        this.plain = plain;
        bridge = new(plain);
        Kind = segment.Kind;
        Seconds = segment.Seconds;
        Throttle = segment.Throttle;
        var slope = segment.SlopeDegrees * Math.PI / 180;
        switch (Kind)
        {
            case PlainSegmentKind.Creep:
                shaftNm = plain.CreepNm(slope);
                radPerS = segment.SpeedMPerS / plain.RadiusM * plain.Ratio;
                break;
            case PlainSegmentKind.Hold when plain.Rig.Controller.Hold != PlainHold.None:
                shaftNm = Math.Max(0, plain.HoldNm(slope) - (plain.Kt20 * plain.StandstillA));
                break;
            default:
                shaftNm = 0;
                break;
        }
    }

    public PlainSegmentKind Kind { get; }

    public double Seconds { get; }

    private double Throttle { get; }

    /// <summary>Fed at standstill: a jam, or a controller that holds actively.</summary>
    public bool Standing =>
        Kind == PlainSegmentKind.Jammed
        || (Kind == PlainSegmentKind.Hold && plain.Rig.Controller.Hold == PlainHold.Active);

    /// <summary>Motor current and what goes with it.</summary>
    public Flow At(double charge, double windingC, double magnetC)
    {
        var ohm = plain.Ohm(windingC);
        var brushV = plain.Rig.Motor.BrushDropV;
        switch (Kind)
        {
            case PlainSegmentKind.Jammed:
                var jam = bridge.Hold(charge, Throttle, ohm, brushV);
                return plain.Rig.Controller.CurrentLimitA is { } limit && jam.MotorA > limit
                    ? bridge.Feed(charge, limit, ohm, brushV)
                    : jam;
            case PlainSegmentKind.Creep:
                var kt = plain.Kt(magnetC);
                var current = (shaftNm / kt) + plain.FrictionA(radPerS);
                var counter = (kt * radPerS) + (current > 0 ? brushV : 0);
                return bridge.Feed(charge, current, ohm, counter) with { RadPerS = radPerS };
            case PlainSegmentKind.Hold when Standing:
                return bridge.Feed(charge, shaftNm / plain.Kt(magnetC), ohm, brushV);
            default:
                return Braked(bridge.Feed(charge, 0, ohm, 0), ohm, plain.Kt(magnetC));
        }
    }

    // Shorted, the winding creeps back: kt·i = q − kt₂₀·s·ω and kt·ω = i·R + v_b. Without a torque nothing moves.
    private Flow Braked(Flow idle, double ohm, double kt)
    {
        if (!(shaftNm > 0))
        {
            return idle;
        }

        var slope = plain.Kt20 * plain.FrictionSlope;
        var loop = ohm + plain.LoopOhm;
        var brushV = plain.Rig.Motor.BrushDropV;
        var current = (shaftNm - (slope * brushV / kt)) / (kt + (slope * loop / kt));
        return current > 0
            ? idle with
            {
                MotorA = current,
                RadPerS = ((current * loop) + brushV) / kt,
            }
            : idle with
            {
                MotorA = 0,
                RadPerS = shaftNm / slope,
            };
    }
}
