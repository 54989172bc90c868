using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;

namespace PowerCheck.Model.Tests.Batteries;

/// <summary>What a pack's label says is what the pack has (M2).</summary>
public sealed class BatteryLabelTests
{
    [Fact]
    public void Rates_are_taken_as_printed_or_not_known()
    {
        var printed = BatteryDefaults.Complete(
            new()
            {
                ContinuousC = 30,
                BurstC = 60,
                BurstS = 10,
            },
            25,
            new Ledger()
        );
        var blank = BatteryDefaults.Complete(new(), 25, new Ledger());

        Assert.Equal((30, 60, 10), (printed.ContinuousC, printed.BurstC, printed.BurstS));
        Assert.True(
            double.IsNaN(blank.ContinuousC)
                && double.IsNaN(blank.BurstC)
                && double.IsNaN(blank.BurstS)
        );
    }

    [Theory]
    [InlineData(Chemistry.Lipo, 1.05)]
    [InlineData(Chemistry.Lifepo4, 1.05)]
    [InlineData(Chemistry.Nimh, 1.15)]
    public void Peukerts_exponent_may_lie_between_1_and_the_highest_of_its_chemistry(
        Chemistry chemistry,
        double high
    )
    {
        var ledger = new Ledger();

        BatteryDefaults.Complete(new() { Chemistry = chemistry }, 25, ledger);

        Assert.Equal(
            Spread.Interval(1, high),
            ledger.Assumptions.Single(a => a.Path == "battery.peukertExponent").Spread
        );
    }
}
