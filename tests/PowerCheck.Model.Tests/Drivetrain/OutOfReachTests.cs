using PowerCheck.Model.Accessories;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>A bus from which more is asked than there is (M3), by hand arithmetic.</summary>
public sealed class OutOfReachTests
{
    // 8 V behind 0.1 Ω and 1 A: 7.9 V are left, of which half, 3.95 V at 39.5 A, is the most power: 156 W.
    private static readonly Source Weak = new(8, 0.1);

    private static readonly AuxiliaryLoad Hungry = new(1, 300);

    private static void Near(double expected, double found) => Assert.Equal(expected, found, 1e-9);

    [Theory]
    [InlineData(-5, -0.5)]
    [InlineData(-5, 3)]
    [InlineData(5, -0.5)]
    [InlineData(5, 0)]
    [InlineData(0, 3)]
    public void Auxiliaries_that_ask_for_too_much_get_all_where_no_motor_drives(
        double motorA,
        double neededV
    )
    {
        var bus = Bus.Feeding(Weak, Hungry, 2, motorA, neededV);

        Assert.Equal((false, true, 0), (bus.Reached, bus.PowerExceeded, bus.Duty));
        Near(3.95, bus.BusV);
        Near(40.5, bus.BatteryA);
        Near(40.5, bus.AuxiliaryA);
    }

    [Fact]
    public void Auxiliaries_that_ask_for_too_much_get_what_fed_motors_leave()
    {
        var bus = Bus.Feeding(Weak, Hungry, 2, 10, 5);

        Assert.Equal((false, true, 1), (bus.Reached, bus.PowerExceeded, bus.Duty));
        Near(3.95, bus.BusV);
        Near(40.5, bus.BatteryA);
        Near(20.5, bus.AuxiliaryA);
    }

    [Fact]
    public void Auxiliaries_that_ask_for_too_much_get_what_motors_at_a_duty_leave()
    {
        var (bus, motorA) = Bus.AtDuty(Weak, Hungry, 2, 0.5, 0.05, 0);

        // Each motor 10·V, both draw as much on average: V = 7.9 − 0.1·(10·V + others), most power at 7.9/4.
        Near(7.9 / 4, bus.BusV);
        Near(10 * bus.BusV, motorA);
        Near((8 - bus.BusV) / 0.1, bus.BatteryA);
        Near(bus.BatteryA - motorA, bus.AuxiliaryA);
    }

    [Fact]
    public void Auxiliaries_get_what_they_ask_for_where_losses_are_drawn_besides()
    {
        var bus = Bus.AtDuty(
            new(25, 0.5),
            new(1, 10),
            1,
            0.5,
            2,
            0,
            default,
            new(0, 0, 0, 3, 0)
        ).Bus;

        Near(1 + (10 / bus.BusV), bus.AuxiliaryA);
        Near((25 - bus.BusV) / 0.5, bus.BatteryA);
    }

    [Fact]
    public void A_fed_bus_says_what_the_auxiliaries_draw_of_it()
    {
        var bus = Bus.Feeding(new(11, 0.1), new(2, 10), 1, 5, 3);

        // V = 11 − 0.1·(2 + 25 W/V).
        Near((10.8 + Math.Sqrt((10.8 * 10.8) - 10)) / 2, bus.BusV);
        Near(2 + (10 / bus.BusV), bus.AuxiliaryA);
    }

    [Theory]
    [InlineData(5, 3)]
    [InlineData(-5, -1)]
    public void A_current_past_the_short_circuit_leaves_no_voltage(double motorA, double neededV)
    {
        var bus = Bus.Feeding(new(10, 0.2), new(100, 0), 1, motorA, neededV);
        var (held, heldA) = Bus.AtDuty(new(10, 0.2), new(100, 0), 1, 1, 0.1, 0);

        Assert.False(bus.Reached);
        Assert.Equal((0, 50), (bus.BusV, bus.BatteryA));
        Assert.Equal((0, 50, 0), (held.BusV, held.BatteryA, heldA));
    }

    [Fact]
    public void Power_is_exceeded_by_motors_and_auxiliaries_together_but_not_by_the_most_there_is()
    {
        // 100 W each of 160 W.
        Assert.True(Bus.Feeding(Weak, new(0, 100), 2, 10, 5).PowerExceeded);
        Assert.False(Bus.Feeding(Weak, new(0, 50), 2, 10, 5).PowerExceeded);
        // 4 W of 4²/(4·1) W, but at 4 V, where 2 V are left.
        var most = Bus.Feeding(new(4, 1), Parts.Nothing, 1, 1, 4);
        Assert.Equal((false, false), (most.Reached, most.PowerExceeded));
        Assert.True(Bus.Feeding(new(4, 1), Parts.Nothing, 1, 1.001, 4).PowerExceeded);
    }

    [Fact]
    public void The_open_circuit_itself_is_reached_where_nothing_sags()
    {
        var bus = Bus.Feeding(new(11.1, 0), Parts.Nothing, 1, 5, 11.1);

        Assert.Equal((true, 1, 11.1), (bus.Reached, bus.Duty, bus.BusV));
    }
}
