using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Controllers;

/// <summary>What is filled in for a controller (M3, M7), against hand arithmetic.</summary>
public sealed class ControllerTests
{
    [Fact]
    public void Switches_drop_a_tenth_of_a_volt_or_so_at_the_rating()
    {
        var controller = Parts.Controller(new() { ContinuousCurrentA = 45 });
        Assert.Equal(0.09 / 45, controller.OnResistanceOhm, 1e-15);
        Assert.Equal(0.09 / 45 * 1.3, controller.HotResistanceOhm, 1e-15);
        Assert.Equal(45 * 0.09 * 1.3, controller.RatedHeatW, 1e-12);
    }

    [Theory]
    [InlineData(true, 16_000)]
    [InlineData(false, 8_000)]
    public void Unsaid_switching_frequency_goes_by_the_motor(bool brushless, double hertz) =>
        Assert.Equal(
            hertz,
            Parts.Controller(new() { ContinuousCurrentA = 45 }, brushless).PwmFrequencyHz
        );

    [Theory]
    [InlineData(40, 120, 3)]
    [InlineData(60, 80, 30)]
    [InlineData(25, 25.5, 10)]
    public void A_burst_from_cold_ends_just_at_the_limit(
        double continuous,
        double burst,
        double seconds
    )
    {
        var tau = Controller.TimeConstantS(continuous, burst, seconds);
        var k = Math.Pow(burst / continuous, 2);
        // θ = k·(1 − e^(−t/τ)) = 1 after the printed seconds.
        Assert.Equal(1, k * (1 - Math.Exp(-seconds / tau)), 1e-9);
        Assert.Equal(seconds, new ThermalMemory(tau, 1).TimeToLimit(0, k), 1e-9);
    }

    [Fact]
    public void A_burst_without_seconds_leaves_the_assumed_time_constant() =>
        Assert.Equal(
            30,
            Parts
                .Controller(new() { ContinuousCurrentA = 40, BurstCurrentA = 120 })
                .ThermalTimeConstantS
        );

    [Fact]
    public void A_burst_not_above_the_rating_leaves_the_assumed_time_constant() =>
        Assert.Equal(
            30,
            Parts
                .Controller(
                    new()
                    {
                        ContinuousCurrentA = 40,
                        BurstCurrentA = 40,
                        BurstS = 5,
                    }
                )
                .ThermalTimeConstantS
        );

    [Fact]
    public void A_stated_limit_is_the_ceiling_else_the_burst_is()
    {
        var label = new ControllerLabel { ContinuousCurrentA = 40, BurstCurrentA = 120 };
        Assert.Equal(120, Parts.Controller(label).CeilingA);
        Assert.Equal(70, Parts.Controller(label with { CurrentLimitA = 70 }).CeilingA);
        Assert.True(double.IsNaN(Parts.Controller(label with { BurstCurrentA = null }).CeilingA));
    }

    [Fact]
    public void Lithium_counts_are_read_by_voltage_for_nickel_cells()
    {
        var supply = Parts
            .Controller(
                new()
                {
                    ContinuousCurrentA = 40,
                    MinCells = 2,
                    MaxCells = 3,
                }
            )
            .Supply;
        Assert.Equal((2.0, 3.0), supply.CellsFor(Chemistry.Lipo));
        // Three lithium cells are 12.6 V full, nine nickel cells of 1.4 V likewise.
        Assert.Equal(9, supply.CellsFor(Chemistry.Nimh).Max);
    }

    [Fact]
    public void A_count_printed_for_the_chemistry_itself_wins()
    {
        var supply = Parts
            .Controller(
                new()
                {
                    ContinuousCurrentA = 40,
                    MaxCells = 3,
                    CellLimits = [new(Chemistry.Nimh, 5, 7)],
                }
            )
            .Supply;
        Assert.Equal((5.0, 7.0), supply.CellsFor(Chemistry.Nimh));
    }

    [Fact]
    public void A_brushed_motor_needs_no_standstill_derating()
    {
        Assert.Equal(1, Parts.Controller(new(), brushless: false).StandstillRatingShare);
        Assert.Equal(0.7, Parts.Controller(new()).StandstillRatingShare);
    }
}
