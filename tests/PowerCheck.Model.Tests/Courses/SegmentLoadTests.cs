using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>What a piece of the course asks of motor, controller and pack (M7, M8), by hand arithmetic.</summary>
public sealed class SegmentLoadTests
{
    private static Rig Of(
        HoldMode hold = HoldMode.DragBrake,
        double? limitA = null,
        Func<RigLabel, RigLabel>? change = null
    )
    {
        var label = SampleRig.Brushless with
        {
            Controller = SampleRig.Brushless.Controller with
            {
                Hold = hold,
                CurrentLimitA = limitA,
                OnResistanceOhm = 0.002,
                QuiescentCurrentA = 0,
                ReceiverSupply = new() { Regulator = Regulator.Linear, VoltageV = 6 },
            },
            Accessories = [new() { IdleCurrentA = 2, WorkingCurrentA = 2 }],
        };
        return SampleRig.Of(change is null ? label : change(label));
    }

    private static Segment Piece(SegmentKind kind, double slopeRad = 0, double throttle = 0) =>
        new(10, kind, slopeRad, kind == SegmentKind.Creep ? 0.3 : 0, throttle);

    /// <summary>Heat that counts in the thermal memory: hot switches, more at standstill, and the linear supply.</summary>
    private static double MemoryW(SegmentPower power, double standing) =>
        (power.MotorRmsA * power.MotorRmsA * 0.002 * 1.3 * standing) + ((power.BusV - 6) * 2);

    [Theory]
    [InlineData(HoldMode.DragBrake, SegmentKind.Creep, 1)]
    [InlineData(HoldMode.Active, SegmentKind.Hold, 1 / 0.49)]
    [InlineData(HoldMode.DragBrake, SegmentKind.Hold, 1)]
    [InlineData(HoldMode.DragBrake, SegmentKind.Jammed, 1 / 0.49)]
    [InlineData(HoldMode.DragBrake, SegmentKind.Rest, 1)]
    public void The_controller_warms_by_hot_switches_more_so_at_standstill_and_by_its_supply(
        HoldMode hold,
        SegmentKind kind,
        double standing
    )
    {
        var rig = Of(hold);
        var power = SegmentLoad.Of(rig, Piece(kind, 0.6, 0.1)).At(rig, 0.5, 20, 20);

        Assert.Equal(MemoryW(power, standing), power.MemoryW, 1e-9);
        Assert.Equal(kind == SegmentKind.Rest, power.MotorRmsA == 0);
    }

    [Theory]
    [InlineData(HoldMode.None, 0.6)]
    [InlineData(HoldMode.DragBrake, 0.0)]
    [InlineData(HoldMode.Active, 0.01)]
    public void Nothing_flows_where_nothing_holds_or_friction_does(HoldMode hold, double slopeRad)
    {
        var drive = Drives.Holding(Of(hold), slopeRad);

        Assert.Equal(0, drive.CurrentA(Of().Motor, 20, 20));
    }

    [Theory]
    [InlineData(HoldMode.DragBrake, 1)]
    [InlineData(HoldMode.Active, 1.5)]
    public void A_hold_takes_the_torque_of_the_slope_less_what_friction_holds(
        HoldMode hold,
        double uneven
    )
    {
        var rig = Of(hold);
        var drive = Drives.Holding(rig, 0.6);
        // Q = m·g·(sin θ − Crr·cos θ)·d/2; q = Q·(2 − 1/0.75)/G; i = q/kt − i0(0).
        var wheelNm = 3.4 * 9.80665 * (Math.Sin(0.6) - (0.06 * Math.Cos(0.6))) * 0.118 / 2;
        var shaftNm = wheelNm * (2 - (1 / 0.75)) / (56.0 / 12 * 2.8 * 3.5);
        var kt = 60 / (2 * Math.PI * 3300);

        // A drag brake creeps back, and friction that grows with speed brakes too: kt·i + kt·s·ω = q, kt·ω = i·R.
        var slope = 1.2 / ((7.4 - (2.4 * 0.022)) / kt);
        var loop = hold == HoldMode.DragBrake ? 0.022 + rig.LoopOhm : 0;

        Assert.Equal(
            ((shaftNm / kt) - 1.2) / (1 + (slope * loop / kt)),
            drive.CurrentA(rig.Motor, 20, 20),
            1e-9
        );
        Assert.Equal(uneven, drive.Uneven);
    }

    [Fact]
    public void A_hold_is_no_steeper_than_the_tires_hold_nose_up_or_down()
    {
        var rig = Of(change: label => label with { Course = new() { FrictionCoefficient = 0.5 } });
        double Held(double slopeRad) =>
            SegmentLoad
                .Of(rig, Piece(SegmentKind.Hold, slopeRad))
                .Drive.CurrentA(rig.Motor, 20, 20);

        Assert.Equal(Held(Math.Atan(0.5)), Held(1.2), 1e-12);
        Assert.Equal(Held(Math.Atan(0.5)), Held(-1.2), 1e-12);
        Assert.True(Held(0.3) < Held(Math.Atan(0.5)));
    }

    [Fact]
    public void A_jam_is_held_to_the_controllers_limit()
    {
        var free = Of();
        var piece = Piece(SegmentKind.Jammed, throttle: 0.3);
        var taken = SegmentLoad.Of(free, piece).At(free, 0.5, 20, 20).MotorRmsA;
        var held = Of(limitA: taken - 5);
        var loose = Of(limitA: taken + 5);

        Assert.Equal(taken - 5, SegmentLoad.Of(held, piece).At(held, 0.5, 20, 20).MotorRmsA, 1e-9);
        Assert.Equal(
            taken - 5,
            SegmentLoad.Of(held, piece).Drive.CurrentA(held.Motor, 20, 20),
            1e-9
        );
        Assert.Equal(taken, SegmentLoad.Of(loose, piece).At(loose, 0.5, 20, 20).MotorRmsA, 1e-9);
        Assert.Equal(taken, SegmentLoad.Of(loose, piece).Drive.CurrentA(loose.Motor, 20, 20), 1e-9);
    }

    [Fact]
    public void A_drag_brake_leaves_the_pack_to_the_receiver_supply()
    {
        var rig = Of();
        var power = SegmentLoad.Of(rig, Piece(SegmentKind.Hold, 0.6)).At(rig, 0.5, 20, 20);

        // A linear supply passes its 2 A on.
        Assert.Equal((2, 2), (Math.Round(power.BatteryA, 9), Math.Round(power.BatteryRmsA, 9)));
        Assert.Equal(
            rig.SourceAt(0.5, true).OpenCircuitV - (2 * rig.SourceAt(0.5, true).ResistanceOhm),
            power.BusV,
            1e-9
        );
    }

    [Fact]
    public void Slow_switching_adds_its_ripple_to_the_heat_of_motor_and_switches()
    {
        var rig = Of(change: label =>
            label with
            {
                Controller = label.Controller with { PwmFrequencyHz = 4000 },
                Motor = label.Motor with { InductanceH = 20e-6 },
            }
        );
        var load = SegmentLoad.Of(rig, Piece(SegmentKind.Creep, 0.4));
        var power = load.At(rig, 0.5, 20, 20);
        var mean = load.Drive.CurrentA(rig.Motor, 20, 20);

        Assert.True(load.Drive.Ripple!(20, 20) > 1);
        Assert.Equal(
            (mean * mean) + load.Drive.Ripple!(20, 20),
            power.MotorRmsA * power.MotorRmsA,
            1e-6
        );
        Assert.Equal(MemoryW(power, 1), power.MemoryW, 1e-9);
    }
}
