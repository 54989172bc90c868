using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What stops a motor at full throttle, and what it does then (M5).</summary>
public sealed class FullThrottleTests
{
    private static readonly Rig Sample = SampleRig.Of(SampleRig.Brushed with { Accessories = [] });

    private static Rig On(Func<Road, Road> change) => Sample with { Road = change(Sample.Road) };

    [Fact]
    public void A_punch_that_nothing_stops_is_attained()
    {
        var punch = FullThrottleCases.Punch(Sample, 1);

        Assert.Equal((true, null), (punch.Attainable, punch.Obstacle));
        Assert.True(punch.MotorSpeedRadPerS > 0);
        Assert.False(punch.UpperBound);
    }

    [Fact]
    public void Tires_that_grip_too_well_stop_a_punch()
    {
        var punch = FullThrottleCases.Punch(On(road => road with { Friction = 300 }), 1);

        Assert.Equal((false, Obstacle.Voltage), (punch.Attainable, punch.Obstacle));
        Assert.Equal(0, punch.MotorSpeedRadPerS);
    }

    [Fact]
    public void A_punch_that_sags_under_the_cut_off_is_stopped_by_it()
    {
        var free = FullThrottleCases.Punch(Sample, 1);
        Rig Cut(double volts) =>
            Sample with
            {
                Controller = Sample.Controller with
                {
                    CutoffVPerCell = volts / Sample.Battery.SeriesCells,
                },
            };

        var cut = FullThrottleCases.Punch(Cut(free.BusVoltageV + 0.01), 1);
        // Two cells: half of the bus voltage a cell is the bus voltage to the last bit.
        var kept = FullThrottleCases.Punch(Cut(free.BusVoltageV), 1);

        Assert.Equal((false, Obstacle.Cutoff), (cut.Attainable, cut.Obstacle));
        Assert.Equal((true, null), (kept.Attainable, kept.Obstacle));
    }

    [Fact]
    public void A_punch_at_the_controllers_limit_turns_as_fast_as_the_bus_behind_that_current_lets_it()
    {
        var free = FullThrottleCases.Punch(Sample, 1);
        var limit = 0.6 * free.MotorCurrentA;
        var rig = Sample with { Controller = Sample.Controller with { CurrentLimitA = limit } };
        var source = rig.SourceAt(1, false);

        var punch = FullThrottleCases.Punch(rig, 1);

        Assert.Equal((false, Obstacle.CurrentLimit), (punch.Attainable, punch.Obstacle));
        Assert.Equal(limit, punch.MotorCurrentA, 1e-9);
        var bus = punch.BusVoltageV;
        var (auxiliary, motor) = (rig.Auxiliary, rig.Motor);
        Assert.Equal(
            source.OpenCircuitV
                - (source.ResistanceOhm * (limit + auxiliary.CurrentA + (auxiliary.PowerW / bus))),
            bus,
            1e-9
        );
        Assert.Equal(
            bus - motor.BrushDropV - (limit * (motor.ResistanceOhm + rig.LoopOhm)),
            motor.TorqueConstantNmPerA * punch.MotorSpeedRadPerS,
            1e-9
        );
    }

    [Fact]
    public void A_limit_that_is_just_reached_stops_no_punch()
    {
        var limit = FullThrottleCases.Punch(Sample, 1).MotorCurrentA;
        var rig = Sample with { Controller = Sample.Controller with { CurrentLimitA = limit } };

        Assert.Null(FullThrottleCases.Punch(rig, 1).Obstacle);
    }

    [Fact]
    public void A_limit_near_the_stall_current_leaves_the_motor_standing()
    {
        var stall = LockedCases.Stall(Sample).ProspectiveCurrentA;
        var rig = On(road => road with { Friction = 300 }) with
        {
            Controller = Sample.Controller with { CurrentLimitA = 0.9999 * stall },
        };

        var punch = FullThrottleCases.Punch(rig, 1);

        Assert.Equal(Obstacle.CurrentLimit, punch.Obstacle);
        Assert.InRange(punch.MotorSpeedRadPerS, 0, 1);
    }

    [Fact]
    public void A_pack_that_cannot_even_feed_the_receiver_leaves_a_limited_motor_standing()
    {
        var supply = Sample.ReceiverSupply with { FromReceiver = new(40, 40, 40) };
        // 6 V · 40 A / 0.88 or so from 8 V behind 0.1 Ω, which give 160 W at most.
        var rig = Sample with
        {
            ReceiverSupply = supply,
            Battery = Sample.Battery with { CellResistanceOhm = 0.05 },
            Controller = Sample.Controller with { CurrentLimitA = 3 },
        };
        Assert.True(rig.Auxiliary.PowerW > rig.SourceAt(1, false).MaxPowerW);

        var punch = FullThrottleCases.Punch(rig, 1);

        Assert.Equal((0, Obstacle.CurrentLimit), (punch.MotorSpeedRadPerS, punch.Obstacle));
    }

    [Fact]
    public void A_motor_faster_than_it_may_be_does_not_reach_its_top_speed()
    {
        var ratio = Sample.Vehicle.Gearing.LowestRatio;
        var free = FullThrottleCases.Top(Sample, ratio);
        Rig Rated(double radPerS) =>
            Sample with
            {
                Motor = Sample.Motor with
                {
                    Ratings = Sample.Motor.Ratings with { MaxSpeedRadPerS = radPerS },
                },
            };

        var over = FullThrottleCases.Top(Rated(0.99 * free.MotorSpeedRadPerS), ratio);
        var just = FullThrottleCases.Top(Rated(free.MotorSpeedRadPerS), ratio);

        Assert.Equal((false, Obstacle.SpeedLimit), (over.Attainable, over.Obstacle));
        Assert.Equal((true, null), (just.Attainable, just.Obstacle));
    }

    [Fact]
    public void A_rig_too_hard_to_roll_stands_at_full_throttle_with_the_torque_of_its_stall()
    {
        var rig = On(road => road with { RollingResistance = 300 });
        var gearing = rig.Vehicle.Gearing;

        var top = FullThrottleCases.Top(rig, gearing.LowestRatio);

        Assert.Equal((false, Obstacle.Voltage), (top.Attainable, top.Obstacle));
        Assert.Equal(0, top.RoadSpeedMPerS);
        var shaft =
            rig.Motor.TorqueConstantNmPerA * (top.MotorCurrentA - rig.Motor.NoLoad.StandstillA);
        Assert.True(shaft > 0);
        Assert.Equal((top.BusVoltageV - 0.3) / (0.09 + rig.LoopOhm), top.MotorCurrentA, 1e-9);
        Assert.Equal(
            shaft * gearing.LowestRatio * gearing.Efficiency,
            top.WheelTorqueNm,
            1e-9 * top.WheelTorqueNm
        );
    }

    [Fact]
    public void Friction_that_a_stall_does_not_overcome_leaves_the_wheels_no_torque()
    {
        var stuck = Sample with { Motor = Sample.Motor with { NoLoad = new(1e4, 0) } };

        var top = FullThrottleCases.Top(stuck, Sample.Vehicle.Gearing.LowestRatio);

        Assert.Equal((0, Obstacle.Voltage), (top.WheelTorqueNm, top.Obstacle));
    }

    [Fact]
    public void Top_speed_of_another_gear_turns_the_wheels_against_the_same_rolling()
    {
        // 2.6 kg · 9.80665 m/s² · 0.06 · 59 mm, in any gear.
        var wheel = 2.6 * 9.80665 * Sample.Road.RollingResistance * 0.118 / 2;
        var ratio = Sample.Vehicle.Gearing.LowestRatio / 2;

        var top = FullThrottleCases.Top(Sample, ratio);

        Assert.Equal(wheel, top.WheelTorqueNm, 1e-9);
        Assert.Equal(top.MotorSpeedRadPerS / ratio * 0.118 / 2, top.RoadSpeedMPerS, 1e-9);
    }
}
