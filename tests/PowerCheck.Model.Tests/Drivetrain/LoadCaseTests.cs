using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>The eight load cases (M5), limiting cases and hand arithmetic.</summary>
public sealed class LoadCaseTests
{
    private static readonly RigLabel Label = SampleRig.Brushless with { Accessories = [] };

    private static readonly Rig Sample = SampleRig.Of(Label);

    private static RigLabel Controlled(Func<ControllerLabel, ControllerLabel> change) =>
        Label with
        {
            Controller = change(Label.Controller),
        };

    [Fact]
    public void Without_slope_the_climb_is_the_level()
    {
        var rig = Sample with { Road = Sample.Road with { SlopeRad = 0 } };
        Assert.Equal(
            SteadyCases.Level(rig) with
            {
                Name = LoadCaseName.Climb,
            },
            SteadyCases.Climb(rig)
        );
    }

    [Fact]
    public void A_climb_takes_its_torque_over_kt_and_the_no_load_current()
    {
        var climb = SteadyCases.Climb(Sample);
        // 3.4·9.80665·(0.70711 + 0.06·0.70711)·0.059 / (45.7333·0.75) / kt(3300) + i0.
        var force = 3.4 * 9.80665 * Math.Sqrt(0.5) * 1.06;
        var shaft = force * 0.059 / (56.0 / 12 * 2.8 * 3.5 * 0.75);
        var kt = 60 / (2 * Math.PI * 3300);
        var speed = 0.3 / 0.059 * (56.0 / 12 * 2.8 * 3.5);
        Assert.Equal(
            (shaft / kt) + Sample.Motor.NoLoad.CurrentAt(speed),
            climb.MotorCurrentA,
            1e-9
        );
        Assert.Equal(speed, climb.MotorSpeedRadPerS, 1e-9);
        Assert.Equal(force * 0.059, climb.WheelTorqueNm, 1e-9);
    }

    [Fact]
    public void Motor_and_battery_current_differ_by_the_duty()
    {
        var climb = SteadyCases.Climb(Sample);
        var quiescent = Sample.Controller.QuiescentCurrentA;
        Assert.Equal(
            (climb.DutyRatio * climb.MotorCurrentA) + quiescent,
            climb.BatteryCurrentA,
            1e-9
        );
        Assert.True(climb.BatteryCurrentA < climb.MotorCurrentA / 3);
    }

    [Fact]
    public void Stall_is_full_voltage_over_every_resistance_in_the_loop()
    {
        var bare = Sample with { Controller = Sample.Controller with { QuiescentCurrentA = 0 } };
        var loop =
            0.022
            + bare.Controller.OnResistanceOhm
            + bare.Leads.MotorOhm
            + bare.Leads.BatteryOhm
            + bare.Battery.ShortResistanceOhm;
        Assert.Equal(12.6 / loop, LockedCases.Stall(bare).ProspectiveCurrentA, 1e-9);
    }

    [Fact]
    public void A_stall_without_resistance_anywhere_grows_without_bound()
    {
        var bare = Sample with
        {
            Motor = Sample.Motor with { ResistanceOhm = 1e-9 },
            Controller = Sample.Controller with { OnResistanceOhm = 0 },
            Leads = Sample.Leads with { BatteryLeadM = 0, MotorLeadM = 0 },
            Battery = Sample.Battery with { CellResistanceOhm = 0, ConnectorOhm = 0 },
        };
        Assert.True(LockedCases.Stall(bare).ProspectiveCurrentA > 1e9);
        Assert.Equal(120, LockedCases.Stall(bare).MotorCurrentA);
    }

    [Fact]
    public void A_stall_is_held_to_the_stated_limit_and_else_to_the_burst_rating()
    {
        Assert.Equal(120, LockedCases.Stall(Sample).MotorCurrentA);
        var limited = SampleRig.Of(Controlled(c => c with { CurrentLimitA = 70 }));
        Assert.Equal(70, LockedCases.Stall(limited).MotorCurrentA);
        Assert.Equal(Obstacle.CurrentLimit, LockedCases.Stall(limited).Obstacle);
    }

    [Fact]
    public void A_jam_is_twice_the_slip_current_if_nothing_stops_it_before()
    {
        var slip = SteadyCases.Slip(Sample).MotorCurrentA;
        Assert.Equal(2 * slip, LockedCases.Jam(Sample, slip).MotorCurrentA, 1e-12);
        Assert.Equal(0, LockedCases.Jam(Sample, slip).MotorSpeedRadPerS);
        var weak = Sample with { Motor = Sample.Motor with { ResistanceOhm = 2 } };
        Assert.Equal(
            LockedCases.Stall(weak).ProspectiveCurrentA,
            LockedCases.Jam(weak, slip).MotorCurrentA,
            1e-9
        );
        var limited = SampleRig.Of(Controlled(c => c with { CurrentLimitA = 10 }));
        Assert.Equal(10, LockedCases.Jam(limited, slip).MotorCurrentA);
    }

    [Fact]
    public void A_drag_brake_lets_the_rig_creep_back_by_its_winding()
    {
        var hold = HoldCase.Of(Sample);
        var torque = WheelLoad.HoldingNm(Sample, Sample.ClimbSlopeRad);
        var kt = Sample.Motor.TorqueConstantNmPerA;
        // The current meets winding, switches and motor leads; friction that grows with speed helps:
        // kt·i + kt·s·ω = q with kt·ω = i·R.
        var loop = 0.022 + Sample.LoopOhm;
        var current = torque / (kt + (Sample.Motor.NoLoad.SlopeAPerRadPerS * loop));
        var speed = current * loop / kt;
        Assert.Equal(speed, hold.MotorSpeedRadPerS, 1e-9);
        Assert.Equal(speed / (56.0 / 12 * 2.8 * 3.5) * 0.059, hold.CreepBackMPerS, 1e-9);
        Assert.Equal(current, hold.MotorCurrentA, 1e-9);
        Assert.Equal(0.05, hold.BatteryCurrentA, 1e-12);
    }

    [Fact]
    public void A_braking_motor_has_the_drop_of_switches_and_leads_at_its_terminals()
    {
        var rig = Sample with { Controller = Sample.Controller with { OnResistanceOhm = 0.005 } };
        var hold = HoldCase.Of(rig);
        Assert.True(hold.MotorCurrentA > 1 && rig.Leads.MotorOhm > 0);
        Assert.Equal(hold.MotorCurrentA * (0.005 + rig.Leads.MotorOhm), hold.MotorVoltageV, 1e-12);
        // The same from the other side: back-EMF less the drop in the winding of 0.022 Ω.
        var kt = 60 / (2 * Math.PI * 3300);
        Assert.Equal(
            (kt * hold.MotorSpeedRadPerS) - (hold.MotorCurrentA * 0.022),
            hold.MotorVoltageV,
            1e-9
        );
    }

    [Fact]
    public void A_loop_without_resistance_holds_without_creeping()
    {
        var rig = Sample with
        {
            Motor = Sample.Motor with { ResistanceOhm = 0 },
            Controller = Sample.Controller with { OnResistanceOhm = 0 },
        };
        rig = rig with { Leads = rig.Leads with { MotorLeadM = 0 } };
        Assert.Equal(0, HoldCase.Of(rig).CreepBackMPerS);
    }

    [Fact]
    public void An_active_hold_feeds_the_current_and_stands()
    {
        var rig = SampleRig.Of(Controlled(c => c with { Hold = HoldMode.Active }));
        var hold = HoldCase.Of(rig);
        Assert.Equal(0, hold.MotorSpeedRadPerS);
        Assert.Equal(
            WheelLoad.HoldingNm(rig, rig.ClimbSlopeRad) / rig.Motor.TorqueConstantNmPerA,
            hold.MotorCurrentA,
            1e-12
        );
        Assert.True(hold.BatteryCurrentA > 0.05);
    }

    [Fact]
    public void A_self_locking_drive_stands_by_itself()
    {
        var rig = Sample with
        {
            Vehicle = Sample.Vehicle with
            {
                Gearing = Sample.Vehicle.Gearing with { Efficiency = 0.5 },
            },
        };
        var hold = HoldCase.Of(rig);
        Assert.Equal((0, 0, true), (hold.MotorCurrentA, hold.MotorSpeedRadPerS, hold.Attainable));
    }

    [Fact]
    public void A_controller_that_does_nothing_lets_the_rig_roll()
    {
        var rig = SampleRig.Of(Controlled(c => c with { Hold = HoldMode.None }));
        Assert.False(HoldCase.Of(rig).Attainable);
    }

    [Fact]
    public void Top_speed_is_where_full_throttle_just_turns_the_load()
    {
        var top = FullThrottleCases.Top(Sample, Sample.Vehicle.Gearing.LowestRatio);
        Assert.Equal(1, top.DutyRatio);
        Assert.Equal(
            WheelLoad.Creep(Sample, Sample.Vehicle.Gearing.LowestRatio, 0, 0).ShaftNm,
            Sample.Motor.TorqueOf(top.MotorCurrentA, top.MotorSpeedRadPerS),
            1e-9
        );
        Assert.Equal(
            top.BusVoltageV,
            (top.MotorCurrentA * (0.022 + Sample.LoopOhm))
                + (top.MotorSpeedRadPerS * Sample.Motor.TorqueConstantNmPerA),
            1e-9
        );
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(60)]
    public void No_current_limit_is_passed_in_any_case_that_is_attained(double limit)
    {
        var cases = CaseRunner.Run(SampleRig.Of(Controlled(c => c with { CurrentLimitA = limit })));
        Assert.All(
            cases.All.Where(load =>
                load.Attainable == true || load.Name is LoadCaseName.Jam or LoadCaseName.Stall
            ),
            load =>
                Assert.True(
                    load.MotorCurrentA <= limit * (1 + 1e-9),
                    $"{load.Name}: {load.MotorCurrentA}"
                )
        );
    }

    [Fact]
    public void Without_a_sensor_or_a_controlled_start_a_slope_cannot_be_climbed()
    {
        var rig = SampleRig.Of(Label with { Motor = Label.Motor with { Sensored = false } });
        Assert.Equal(Obstacle.NoSensor, SteadyCases.Climb(rig).Obstacle);
        Assert.False(SteadyCases.Climb(rig).Attainable);
        var helped = rig with { Controller = rig.Controller with { LowSpeedStart = true } };
        Assert.True(SteadyCases.Climb(helped).Attainable);
        var blind = helped with { Road = helped.Road with { CreepMPerS = 0.05 } };
        Assert.Equal(Obstacle.NoSensor, SteadyCases.Climb(blind).Obstacle);
    }

    [Fact]
    public void An_unknown_resistance_leaves_currents_of_torque_and_takes_voltages()
    {
        var rig = Sample with { Motor = Sample.Motor with { ResistanceOhm = double.NaN } };
        var climb = SteadyCases.Climb(rig);
        Assert.Equal(SteadyCases.Climb(Sample).MotorCurrentA, climb.MotorCurrentA, 1e-12);
        Assert.True(double.IsNaN(climb.BatteryCurrentA) && double.IsNaN(climb.BusVoltageV));
        Assert.Null(climb.Attainable);
    }

    [Fact]
    public void Torque_reserve_is_full_throttle_on_a_tired_pack_with_a_hot_winding()
    {
        var rig = Sample with { Controller = Sample.Controller with { QuiescentCurrentA = 0 } };
        var reserve = TorqueReserve.Of(rig, rig.Vehicle.Gearing.LowestRatio);
        Assert.Equal(Obstacle.CurrentLimit, reserve.LimitedBy);
        Assert.Equal(120, reserve.CurrentA);
        var free = rig with { Controller = rig.Controller with { BurstCurrentA = double.NaN } };
        var load = WheelLoad.Creep(rig, rig.Vehicle.Gearing.LowestRatio, Math.PI / 4, 0.3);
        // Winding at 120 °C is 1.393 times as resistive, switches hot 1.3 times; 20 % charge, lasting resistance.
        var loop =
            (0.022 * 1.393)
            + (0.09 / 40 * 1.3)
            + rig.Leads.MotorOhm
            + rig.Leads.BatteryOhm
            + rig.Battery.LastingResistanceOhm;
        var current = ((3 * 3.693) - (load.SpeedRadPerS * rig.Motor.TorqueConstantNmPerA)) / loop;
        var found = TorqueReserve.Of(free, rig.Vehicle.Gearing.LowestRatio);
        Assert.Equal(Obstacle.Voltage, found.LimitedBy);
        Assert.Equal(current, found.CurrentA, 1e-6);
        Assert.Equal(
            rig.Motor.TorqueOf(current, load.SpeedRadPerS) / load.ShaftNm,
            found.Ratio,
            1e-6
        );
    }

    [Fact]
    public void Below_four_kilohertz_the_pack_sees_the_motor_current_in_pulses()
    {
        var rig = SampleRig.Of(Controlled(c => c with { PwmFrequencyHz = 2000 }));
        var climb = SteadyCases.Climb(rig);
        var i = climb.MotorCurrentA;
        var others = rig.Auxiliary.CurrentA + (rig.Auxiliary.PowerW / climb.BusVoltageV);
        // While on, a rippling current is more than its mean.
        var on = others + ((climb.BatteryCurrentA - others) / climb.DutyRatio);
        Assert.True(on > i + others);
        var ripple = (climb.MotorRmsCurrentA * climb.MotorRmsCurrentA) - (i * i);
        Assert.Equal(
            Math.Sqrt(
                (climb.DutyRatio * ((on * on) + ripple)) + ((1 - climb.DutyRatio) * others * others)
            ),
            climb.BatteryRmsCurrentA,
            1e-9
        );
        Assert.True(climb.MotorRmsCurrentA > climb.MotorCurrentA);
    }

    [Fact]
    public void From_eight_kilohertz_on_only_a_given_inductance_ripples()
    {
        Assert.Equal(
            SteadyCases.Climb(Sample).MotorCurrentA,
            SteadyCases.Climb(Sample).MotorRmsCurrentA
        );
        var just = SampleRig.Of(Controlled(c => c with { PwmFrequencyHz = 7999 }));
        Assert.True(
            SteadyCases.Climb(just).MotorRmsCurrentA > SteadyCases.Climb(just).MotorCurrentA
        );
        var given = Sample with { Motor = Sample.Motor with { InductanceH = 20e-6 } };
        Assert.True(
            SteadyCases.Climb(given).MotorRmsCurrentA > SteadyCases.Climb(given).MotorCurrentA
        );
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void A_punch_takes_no_more_than_the_controllers_own_limit(double limit)
    {
        var rig = SampleRig.Of(Controlled(c => c with { CurrentLimitA = limit }));
        var punch = FullThrottleCases.Punch(rig, CaseRunner.HalfCharge);
        Assert.Equal(Obstacle.CurrentLimit, punch.Obstacle);
        Assert.Equal(limit, punch.MotorCurrentA, 1e-6 * limit);
    }
}
