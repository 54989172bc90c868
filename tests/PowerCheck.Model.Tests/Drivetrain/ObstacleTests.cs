using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What stops a creep, a jam and a stall, and that a limit which is only just reached does not (M5).</summary>
public sealed class ObstacleTests
{
    private static readonly Rig Sample = SampleRig.Of(SampleRig.Brushed with { Accessories = [] });

    private static Rig On(Func<Road, Road> change) => Sample with { Road = change(Sample.Road) };

    private static Rig With(Func<Controller, Controller> change) =>
        Sample with
        {
            Controller = change(Sample.Controller),
        };

    [Fact]
    public void A_creep_faster_than_full_throttle_lacks_voltage()
    {
        var top = FullThrottleCases.Top(Sample, Sample.Vehicle.Gearing.LowestRatio);

        var level = SteadyCases.Level(
            On(road => road with { CreepMPerS = 1.2 * top.RoadSpeedMPerS })
        );

        Assert.Equal((false, Obstacle.Voltage), (level.Attainable, level.Obstacle));
    }

    [Fact]
    public void A_climb_of_more_power_than_the_pack_has_lacks_battery_power()
    {
        var rig = Sample with { Battery = Sample.Battery with { CellResistanceOhm = 5 } };

        var climb = SteadyCases.Climb(rig);

        // The slope alone takes m·g·sin 45°·v at the wheels; the pack has E²/(4·R) at most.
        Assert.True(
            2.6 * 9.80665 * Math.Sqrt(0.5) * rig.Road.CreepMPerS
                > rig.SourceAt(CaseRunner.HalfCharge, true).MaxPowerW
        );
        Assert.Equal((false, Obstacle.BatteryPower), (climb.Attainable, climb.Obstacle));
    }

    [Fact]
    public void A_climb_at_just_the_cut_off_or_the_controllers_limit_is_attained()
    {
        var free = SteadyCases.Climb(Sample);
        // Two cells: half of the bus voltage a cell is the bus voltage to the last bit.
        Rig Cut(double volts) => With(it => it with { CutoffVPerCell = volts / 2 });
        Rig Limited(double ampere) => With(it => it with { CurrentLimitA = ampere });

        Assert.Null(SteadyCases.Climb(Cut(free.BusVoltageV)).Obstacle);
        Assert.Equal(Obstacle.Cutoff, SteadyCases.Climb(Cut(free.BusVoltageV + 1e-6)).Obstacle);
        Assert.Null(SteadyCases.Climb(Limited(free.MotorCurrentA)).Obstacle);
        Assert.Equal(
            Obstacle.CurrentLimit,
            SteadyCases.Climb(Limited(free.MotorCurrentA - 1e-6)).Obstacle
        );
    }

    [Fact]
    public void The_slope_at_which_the_tires_let_go_is_still_climbed()
    {
        var just = SteadyCases.Climb(On(road => road with { SlopeRad = Sample.SlipSlopeRad }));

        Assert.Equal((true, null), (just.Attainable, just.Obstacle));
    }

    [Fact]
    public void A_sensorless_motor_at_just_the_least_back_emf_is_not_lost()
    {
        var speed = WheelLoad
            .Creep(Sample, Sample.Vehicle.Gearing.LowestRatio, 0, Sample.Road.CreepMPerS)
            .SpeedRadPerS;
        Rig Needing(double volts) =>
            With(it => it with { LowSpeedBackEmfV = volts, LowSpeedStart = true }) with
            {
                Motor = Sample.Motor with { Kind = MotorKind.Brushless, Sensored = false },
            };
        var backEmfV = Sample.Motor.TorqueConstantNmPerA * speed;

        Assert.Null(SteadyCases.Level(Needing(backEmfV)).Obstacle);
        Assert.Equal(Obstacle.NoSensor, SteadyCases.Level(Needing(backEmfV + 1e-6)).Obstacle);
    }

    [Fact]
    public void A_limit_above_what_a_jam_can_draw_does_not_hold_it()
    {
        // Fed twice 300 A, the stall's current is all that flows, whether or not a limit lies between.
        var stall = LockedCases.Stall(Sample).ProspectiveCurrentA;
        Assert.True(stall < 300);

        var jam = LockedCases.Jam(With(it => it with { CurrentLimitA = 1.1 * stall }), 300);

        Assert.Equal(stall, jam.MotorCurrentA, 1e-9);
        Assert.Null(jam.Obstacle);
    }

    [Fact]
    public void A_limit_of_just_the_current_of_jam_or_stall_holds_nothing_back()
    {
        var stall = LockedCases.Stall(With(it => it with { CurrentLimitA = 1e6 })).MotorCurrentA;
        var fed = 10 * Sample.Road.JamSlipFactor;

        Assert.Null(LockedCases.Stall(With(it => it with { CurrentLimitA = stall })).Obstacle);
        Assert.Null(LockedCases.Jam(With(it => it with { CurrentLimitA = fed }), 10).Obstacle);
        Assert.Equal(
            Obstacle.CurrentLimit,
            LockedCases.Jam(With(it => it with { CurrentLimitA = fed - 1e-6 }), 10).Obstacle
        );
    }

    [Fact]
    public void A_torque_reserve_of_just_the_limit_is_bound_by_voltage_and_without_resistance_by_nothing_known()
    {
        TorqueReserve Of(Rig rig) => TorqueReserve.Of(rig, rig.Vehicle.Gearing.LowestRatio);
        var free = Of(With(it => it with { CurrentLimitA = 1e6 }));
        var blind = Sample with { Motor = Sample.Motor with { ResistanceOhm = double.NaN } };

        Assert.Equal(
            Obstacle.Voltage,
            Of(With(it => it with { CurrentLimitA = free.CurrentA })).LimitedBy
        );
        Assert.Equal(
            Obstacle.CurrentLimit,
            Of(With(it => it with { CurrentLimitA = free.CurrentA - 1e-6 })).LimitedBy
        );
        Assert.Null(Of(blind).LimitedBy);
    }
}
