using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>What a load case does to motor and controller (M6, M7), by hand arithmetic.</summary>
public sealed class CaseHeatTests
{
    private static RigLabel Label(
        HoldMode hold = HoldMode.DragBrake,
        double? limitA = null,
        Regulator regulator = Regulator.Switching
    ) =>
        SampleRig.Brushless with
        {
            Controller = SampleRig.Brushless.Controller with
            {
                Hold = hold,
                CurrentLimitA = limitA,
                BurstCurrentA = null,
                OnResistanceOhm = 0.002,
                QuiescentCurrentA = 0,
                ReceiverSupply = new() { Regulator = regulator, VoltageV = 6 },
            },
            // 2 A all the time.
            Accessories = [new() { IdleCurrentA = 2, WorkingCurrentA = 2 }],
        };

    [Theory]
    [InlineData(HoldMode.DragBrake, LoadCaseName.Hold, true)]
    [InlineData(HoldMode.Active, LoadCaseName.Hold, false)]
    [InlineData(HoldMode.Active, LoadCaseName.Climb, true)]
    [InlineData(HoldMode.DragBrake, LoadCaseName.Jam, false)]
    [InlineData(HoldMode.DragBrake, LoadCaseName.Stall, false)]
    public void A_motor_stands_locked_when_wedged_or_fed_to_hold(
        HoldMode hold,
        LoadCaseName name,
        bool turning
    )
    {
        var rig = SampleRig.Of(Label(hold));

        Assert.Equal(turning, CaseHeat.Turning(rig, CaseRunner.Run(rig)[name]) is not null);
    }

    [Fact]
    public void A_turning_case_follows_its_torque_and_a_drag_brake_what_it_holds()
    {
        var rig = SampleRig.Of(Label());
        var cases = CaseRunner.Run(rig);
        var climb = CaseHeat.Turning(rig, cases[LoadCaseName.Climb])!;
        var hold = CaseHeat.Turning(rig, cases[LoadCaseName.Hold])!;

        Assert.Equal(
            cases[LoadCaseName.Climb].MotorCurrentA,
            climb.CurrentA(rig.Motor, 20, 20),
            1e-9
        );
        Assert.Equal(cases[LoadCaseName.Climb].MotorSpeedRadPerS, climb.SpeedRadPerS);
        Assert.Equal(
            cases[LoadCaseName.Hold].MotorCurrentA,
            hold.CurrentA(rig.Motor, 20, 20),
            1e-9
        );
        Assert.Null(climb.Ripple);
        Assert.Equal(cases[LoadCaseName.Hold].MotorSpeedRadPerS, hold.SpeedRadPerS);
    }

    [Theory]
    [InlineData(LoadCaseName.Level)]
    [InlineData(LoadCaseName.Climb)]
    public void Ripple_is_what_the_rms_current_has_over_the_mean_and_follows_the_temperatures(
        LoadCaseName name
    )
    {
        var label = Label();
        var rig = SampleRig.Of(
            label with
            {
                Controller = label.Controller with { PwmFrequencyHz = 4000 },
                Motor = label.Motor with { InductanceH = 20e-6 },
            }
        );
        var load = CaseRunner.Run(rig)[name];
        var ripple = CaseHeat.Turning(rig, load)!.Ripple!;

        Assert.Equal(
            (load.MotorRmsCurrentA * load.MotorRmsCurrentA)
                - (load.MotorCurrentA * load.MotorCurrentA),
            ripple(20, 20),
            1e-6
        );
        // A warm winding needs more duty, and under half a duty more of it ripples more.
        Assert.True(load.DutyRatio < 0.4 && ripple(120, 20) > ripple(20, 20));
    }

    [Fact]
    public void A_wedged_motor_at_full_throttle_takes_less_as_it_warms()
    {
        var rig = SampleRig.Of(Label() with { Accessories = [] });
        var stall = CaseRunner.Run(rig)[LoadCaseName.Stall];
        var locked = CaseHeat.Locked(rig, stall, new MotorWarmth(rig.Motor, 25)).Drive;
        var source = rig.SourceAt(1, false);

        // E = i·(R(T) + switches and leads + cells, connector and battery leads).
        Assert.All(
            [20.0, 120.0],
            warm =>
                Assert.Equal(
                    source.OpenCircuitV,
                    locked.CurrentA(rig.Motor, warm, 20)
                        * (
                            (0.022 * (1 + (0.00393 * (warm - 20))))
                            + rig.LoopOhm
                            + source.ResistanceOhm
                        ),
                    1e-6
                )
        );
        Assert.Equal(1.5, locked.Uneven);
    }

    [Fact]
    public void A_wedged_motor_held_at_the_controllers_limit_takes_that_however_warm()
    {
        var rig = SampleRig.Of(Label(limitA: 30));
        var jam = CaseRunner.Run(rig)[LoadCaseName.Jam];
        var locked = CaseHeat.Locked(rig, jam, new MotorWarmth(rig.Motor, 25)).Drive;

        Assert.Equal(Obstacle.CurrentLimit, jam.Obstacle);
        Assert.Equal(30, locked.CurrentA(rig.Motor, 20, 20));
        Assert.Equal(30, locked.CurrentA(rig.Motor, 150, 20));
    }

    [Fact]
    public void A_fed_hold_takes_what_the_slope_asks_for_however_warm()
    {
        var rig = SampleRig.Of(Label(HoldMode.Active));
        var hold = CaseRunner.Run(rig)[LoadCaseName.Hold];
        var locked = CaseHeat.Locked(rig, hold, new MotorWarmth(rig.Motor, 25)).Drive;

        Assert.Equal(hold.MotorCurrentA, locked.CurrentA(rig.Motor, 150, 20));
    }

    [Theory]
    [InlineData(HoldMode.DragBrake, LoadCaseName.Climb, 1)]
    [InlineData(HoldMode.DragBrake, LoadCaseName.Hold, 1)]
    [InlineData(HoldMode.Active, LoadCaseName.Climb, 1)]
    [InlineData(HoldMode.Active, LoadCaseName.Hold, 1 / 0.49)]
    [InlineData(HoldMode.DragBrake, LoadCaseName.Jam, 1 / 0.49)]
    public void Hot_switches_and_a_linear_supply_load_the_controller(
        HoldMode hold,
        LoadCaseName name,
        double standing
    )
    {
        var rig = SampleRig.Of(Label(hold, regulator: Regulator.Linear));
        var load = CaseRunner.Run(rig)[name] with
        {
            MotorCurrentA = 20,
            MotorRmsCurrentA = 20,
            BusVoltageV = 11,
            // Cold: 20²·0.002 W in the switches, (11 − 6)·2 W in the supply.
            ControllerHeatW = 0.8 + 10,
        };

        // Hot: 1.3 times as much; rated for 40²·0.002·1.3 W. One phase pair carries all at standstill: over 0.7².
        Assert.Equal(
            ((0.8 * 1.3 * standing) + 10) / (1600 * 0.002 * 1.3),
            CaseHeat.ControllerLoad(rig, load),
            1e-9
        );
    }
}
