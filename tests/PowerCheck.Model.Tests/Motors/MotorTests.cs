using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Motors;

/// <summary>The motor as a machine (M1).</summary>
public sealed class MotorTests
{
    private static readonly Motor Machine = Parts.Motor(0.004, 0.05, 1, 0.002, 0.3);

    [Fact]
    public void Voltage_balances_at_the_speed_that_is_found()
    {
        // 7.4 V against 0.04 N·m: 7.4 = i·R + ω·ke + 0.3 with i = q/kt + 1 + 0.002·ω.
        var speed = Machine.SpeedAt(7.4, 0.08, 0.04);
        var current = (0.04 / 0.004) + 1 + (0.002 * speed);
        Assert.Equal(7.4, (current * 0.08) + (speed * 0.004) + 0.3, 1e-12);
        Assert.Equal(current, Machine.CurrentFor(0.04, speed), 1e-12);
    }

    [Fact]
    public void Torque_and_current_undo_each_other() =>
        Assert.Equal(0.037, Machine.TorqueOf(Machine.CurrentFor(0.037, 500), 500), 1e-15);

    [Fact]
    public void Without_load_and_friction_a_motor_turns_at_KV_times_voltage() =>
        Assert.Equal(10 / 0.005, Parts.Motor(0.005, 0.05, 0).SpeedAt(10, 0.05, 0), 1e-9);

    [Fact]
    public void A_vanishing_resistance_makes_the_speed_independent_of_load()
    {
        var motor = Parts.Motor(0.005, 1e-12, 0);
        Assert.Equal(motor.SpeedAt(10, 1e-12, 0), motor.SpeedAt(10, 1e-12, 0.1), 1e-6);
    }

    [Fact]
    public void Brushes_take_their_drop_from_the_speed() =>
        Assert.Equal(
            0.3 / 0.004,
            Parts.Motor(0.004, 0.05, 0).SpeedAt(7, 0.05, 0)
                - Parts.Motor(0.004, 0.05, 0, brushV: 0.3).SpeedAt(7, 0.05, 0),
            1e-9
        );

    [Fact]
    public void A_torque_beyond_stall_gives_a_negative_speed() =>
        Assert.True(Machine.SpeedAt(7.4, 0.05, 0.004 * 200) < 0);

    [Fact]
    public void No_load_current_grows_from_standstill_along_its_line()
    {
        Assert.Equal(1, Machine.NoLoad.CurrentAt(0));
        Assert.Equal(1 + (0.002 * 700), Machine.NoLoad.CurrentAt(700), 1e-12);
    }

    [Fact]
    public void Standing_still_makes_no_spin_heat_and_turning_makes_friction_power()
    {
        Assert.Equal(0, Machine.SpinHeatW(0));
        Assert.Equal(0.004 * (1 + (0.002 * 700)) * 700, Machine.SpinHeatW(700), 1e-12);
    }

    [Fact]
    public void Back_EMF_and_brushes_together_are_the_counter_voltage() =>
        Assert.Equal((0.004 * 700) + 0.3, Machine.CounterVoltage(700), 1e-12);

    [Fact]
    public void At_twenty_degrees_nothing_changes() =>
        Assert.Equal((0.05, 0.004), (Machine.ResistanceAt(20), Machine.TorqueConstantAt(20)));

    [Fact]
    public void A_weaker_magnet_asks_for_more_current_in_the_inverse_proportion()
    {
        var motor = Parts.Motor(0.004, standstillA: 0, heat: Parts.Heat(beta: -0.0011));
        // 80 K warmer: 1 − 0.0011·80 = 0.912.
        Assert.Equal(10 / 0.912, motor.CurrentFor(0.04, 0, 100), 1e-9);
    }
}
