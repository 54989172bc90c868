using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Accessories;

/// <summary>What is filled in for a receiver supply, by kind (M9).</summary>
public sealed class SupplyLabelTests
{
    private static (ReceiverSupply Supply, string[] Listed) Complete(ReceiverSupplyLabel label)
    {
        var ledger = new Ledger();
        var supply = AccessoryDefaults.Complete(label, [], null, ledger);
        return (supply, [.. ledger.Assumptions.Select(a => a.Path.Split('.')[^1])]);
    }

    [Fact]
    public void A_linear_supply_has_a_heat_limit_and_a_switching_one_an_efficiency()
    {
        var (linear, ofLinear) = Complete(new() { Regulator = Regulator.Linear });
        var (switching, ofSwitching) = Complete(new() { Regulator = Regulator.Switching });

        // 3 A from 8.4 V to 6 V.
        Assert.Equal(7.2, linear.MaxHeatW, 1e-9);
        Assert.Equal(1, linear.Efficiency);
        Assert.True(double.IsNaN(switching.MaxHeatW));
        Assert.Equal(0.85, switching.Efficiency);
        Assert.Equal(["maxHeatW"], ofLinear.Except(ofSwitching, StringComparer.Ordinal));
        Assert.Equal(["efficiency"], ofSwitching.Except(ofLinear, StringComparer.Ordinal));
    }

    [Fact]
    public void A_peak_is_half_more_than_the_continuous_current() =>
        Assert.Equal(3, Complete(new() { ContinuousCurrentA = 2 }).Supply.PeakCurrentA);

    [Fact]
    public void A_linear_supply_and_what_hangs_on_the_pack_both_draw_their_current()
    {
        var supply = AccessoryDefaults.Complete(
            new() { Regulator = Regulator.Linear },
            [
                new() { IdleCurrentA = 1, WorkingCurrentA = 1 },
                new()
                {
                    Supply = AccessorySupply.Battery,
                    IdleCurrentA = 0.5,
                    WorkingCurrentA = 0.5,
                },
            ],
            null,
            new Ledger()
        );

        Assert.Equal(new AuxiliaryLoad(1.5, 0), supply.Load);
    }

    [Theory]
    [InlineData(0.004)]
    [InlineData(0.02)]
    public void The_lowest_bus_is_that_of_punch_at_the_reserve_jam_or_climb(double cellOhm)
    {
        var it = SampleRig.Inspect(
            SampleRig.Brushless with
            {
                Battery = SampleRig.Brushless.Battery with { CellResistanceOhm = cellOhm },
            }
        );
        double[] buses =
        [
            it.Cases.PunchAtReserve.BusVoltageV,
            it.Cases[LoadCaseName.Jam].BusVoltageV,
            it.Cases[LoadCaseName.Climb].BusVoltageV,
        ];

        Assert.Equal(buses.Min(), it.ReceiverSupply.LowestBusV);
        Assert.True(buses.Max() > buses.Min() + 0.1);
    }
}
