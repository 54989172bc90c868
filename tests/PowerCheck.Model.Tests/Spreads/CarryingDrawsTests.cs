using MathNet.Numerics.Distributions;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>
/// When draws take over from the response to each input alone (M12), of one input whose draws lie one
/// in each of equally likely slices.
/// </summary>
public sealed class CarryingDrawsTests
{
    private const int Seed = 11;
    private const int Tried = 320;

    private static Carrying Of(Func<double, double> distance, SpreadMethod asked) =>
        Carrying.Of(z => [distance(z[0]), 100 + z[0]], [Seed], asked);

    private static Odds Only(Carrying carried) => Assert.Single(carried.Odds);

    // Deviate above which the highest of the slices lie.
    private static double Above(int slices) => Normal.InvCDF(0, 1, 1 - ((double)slices / Tried));

    [Theory]
    [InlineData(1, SpreadMethod.Linear)]
    [InlineData(2, SpreadMethod.Montecarlo)]
    public void One_draw_more_than_expected_may_be_past_a_limit(int past, SpreadMethod used) =>
        // A straight line that meets its limit at 4 deviates, but the highest draws are past it.
        Assert.Equal(used, Of(z => z > Above(past) ? 0.01 : z - 4, SpreadMethod.Linear).Used);

    [Theory]
    [InlineData(1, SpreadMethod.Linear)]
    [InlineData(2, SpreadMethod.Montecarlo)]
    public void One_draw_less_than_expected_may_be_past_a_limit(int short_, SpreadMethod used) =>
        Assert.Equal(used, Of(z => z > Above(short_) ? -0.01 : z + 4, SpreadMethod.Linear).Used);

    [Fact]
    public void Draws_past_a_limit_and_draws_short_of_it_do_not_outweigh_each_other()
    {
        // About eight draws on either side of the limit change places.
        var carried = Of(z => Math.Abs(z) < 0.06 ? -z : z, SpreadMethod.Linear);

        Assert.Equal(SpreadMethod.Montecarlo, carried.Used);
        Assert.Equal(0.5, Only(carried).Exceedance, 5e-3);
    }

    [Fact]
    public void A_draw_on_the_other_side_counts_as_its_share_of_the_draws()
    {
        // A straight line that is past its limit from one deviate on, but for the highest of the draws.
        var carried = Of(z => z > Above(1) ? -0.01 : z - 1, SpreadMethod.Linear);

        Assert.Equal(SpreadMethod.Linear, carried.Used);
        Assert.Equal(Normal.CDF(0, 1, -1) - (1.0 / Tried), Only(carried).Exceedance, 1e-6);
    }

    [Fact]
    public void A_figure_just_at_its_limit_is_not_past_it()
    {
        // 0 by each input alone, and 1 of it beyond two deviates.
        var step = Only(Of(z => Math.Abs(z) > 2 ? 1 : 0, SpreadMethod.Montecarlo));
        Assert.Equal(2 * Normal.CDF(0, 1, -2), step.Exceedance, 2e-3);
        // A third of the half that a straight line has past the limit lies just at it.
        var flat = Only(Of(z => z is > 0.1 and < 0.6 ? 0 : z, SpreadMethod.Montecarlo));
        Assert.Equal(0.5 - (Normal.CDF(0, 1, 0.6) - Normal.CDF(0, 1, 0.1)), flat.Exceedance, 3e-3);
    }
}
