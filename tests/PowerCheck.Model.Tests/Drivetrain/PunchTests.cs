using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What stops a punch, and what the motor does then (M5).</summary>
public sealed class PunchTests
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
}
