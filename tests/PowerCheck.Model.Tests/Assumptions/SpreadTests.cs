using PowerCheck.Model.Assumptions;

namespace PowerCheck.Model.Tests.Assumptions;

/// <summary>What a 95 % interval makes of a figure (M12).</summary>
public sealed class SpreadTests
{
    private const double End = Spread.EndDeviate;

    public static TheoryData<Spread, double, double, double> Ends =>
        new()
        {
            { Spread.Relative(0.1), 20, 18, 22 },
            { Spread.Relative(0.1), -0.002, -0.0018, -0.0022 },
            { Spread.Skewed(0.30, 0.05), 60, 42, 63 },
            { Spread.Factor(1.5), 30, 20, 45 },
            { Spread.Absolute(8), 25, 17, 33 },
            { Spread.Interval(1.2, 4), 2, 1.2, 4 },
            { Spread.None, 14, 14, 14 },
        };

    [Theory]
    [MemberData(nameof(Ends))]
    public void Its_ends_are_those_of_the_interval_and_its_median_the_value(
        Spread spread,
        double value,
        double low,
        double high
    )
    {
        Assert.Equal(low, spread.At(value, -End), 1e-12);
        Assert.Equal(value, spread.At(value, 0), 1e-12);
        Assert.Equal(high, spread.At(value, End), 1e-12);
    }

    [Fact]
    public void The_ends_leave_out_a_fortieth_on_each_side() =>
        // JCGM 100:2008, table G.2: 95 % of a normal distribution lie within 1.960 standard deviations.
        Assert.Equal(1.960, End, 5e-4);

    [Theory]
    [InlineData(0.5, -6)]
    [InlineData(0.9, -3)]
    public void A_relative_spread_never_leaves_less_than_a_fiftieth(double share, double deviate) =>
        Assert.Equal(0.02 * 40, Spread.Relative(share).At(40, deviate), 1e-12);
}
