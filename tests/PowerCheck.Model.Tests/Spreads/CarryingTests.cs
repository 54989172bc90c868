using MathNet.Numerics.Distributions;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>Deviates carried to limits (M12), against probabilities known in closed form.</summary>
public sealed class CarryingTests
{
    // One limit: distance and estimate.
    private static Carrying Of(
        Func<double[], double> distance,
        int inputs,
        SpreadMethod asked = SpreadMethod.Linear
    ) =>
        Carrying.Of(
            z => [distance(z), 100 + distance(z)],
            [.. Enumerable.Range(11, inputs)],
            asked
        );

    [Fact]
    public void A_straight_response_is_taken_input_by_input()
    {
        var carried = Of(z => -1 + (0.6 * z[0]) + (0.8 * z[1]), 2);

        Assert.Equal(SpreadMethod.Linear, carried.Used);
        var odds = Assert.Single(carried.Odds);
        Assert.Equal(1 - Normal.CDF(0, 1, 1), odds.Exceedance, 1e-6);
        Assert.Equal(99 - 1.95996, odds.Low, 1e-3);
        Assert.Equal(99 + 1.95996, odds.High, 1e-3);
        Assert.Equal([0.36, 0.64], odds.Variances.Select(v => Math.Round(v, 9)));
    }

    [Fact]
    public void Every_rig_that_is_computed_is_counted()
    {
        var computed = 0;
        var carried = Carrying.Of(
            z =>
            {
                Interlocked.Increment(ref computed);
                return [-1 + z[0], z[0]];
            },
            [.. Enumerable.Range(11, 1)],
            SpreadMethod.Linear
        );

        Assert.Equal(computed, carried.Rigs);
    }

    [Fact]
    public void Inputs_that_act_together_are_drawn_together()
    {
        // The product of two standard normal deviates is past 1 with 0.1052 (its density is K₀(|x|)/π).
        var carried = Of(z => (z[0] * z[1]) - 1, 2);

        Assert.Equal(SpreadMethod.Montecarlo, carried.Used);
        Assert.Equal(ProductPast(1), Assert.Single(carried.Odds).Exceedance, 0.02);
    }

    // ∫ φ(x)·(1 − Φ(1/|x|)) dx
    private static double ProductPast(double limit) =>
        MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
            x => 2 * Normal.PDF(0, 1, x) * (1 - Normal.CDF(0, 1, limit / x)),
            1e-9,
            9,
            128
        );

    [Fact]
    public void Drawing_that_is_asked_for_is_done()
    {
        var carried = Of(z => -1 + (0.6 * z[0]) + (0.8 * z[1]), 2, SpreadMethod.Montecarlo);

        Assert.Equal(SpreadMethod.Montecarlo, carried.Used);
        var odds = Assert.Single(carried.Odds);
        Assert.Equal(1 - Normal.CDF(0, 1, 1), odds.Exceedance, 1e-3);
        Assert.InRange(odds.Low, 99 - 2.3, 99 - 1.7);
        Assert.InRange(odds.High, 99 + 1.7, 99 + 2.3);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(-0.4)]
    public void A_step_is_found_by_the_draws_and_each_limit_keeps_its_own_odds(double step)
    {
        // The second is past its limit where the first input is past the step, however straight it looks nearby.
        var carried = Carrying.Of(
            z => [-2 + z[1], z[1], z[0] > step ? 1 : -1, z[0]],
            [.. Enumerable.Range(5, 2)],
            SpreadMethod.Linear
        );

        Assert.Equal(SpreadMethod.Montecarlo, carried.Used);
        Assert.Equal(
            [1 - Normal.CDF(0, 1, 2), 1 - Normal.CDF(0, 1, step)],
            carried.Odds.Select(odds => odds.Exceedance),
            (a, b) => Math.Abs(a - b) < 0.012
        );
    }

    [Fact]
    public void A_limit_has_the_odds_that_it_has_alone()
    {
        static double Straight(double[] z) => -1 + (0.6 * z[0]) + (0.01 * z[1] * z[1]) + z[2];
        static double Product(double[] z) => (z[0] * z[1]) - 1;
        static double Step(double[] z) => z[1] > 0.7 ? 1 : -1;
        static double Hard(double[] z) => Math.Abs(z[0] * z[1] * z[2]) - 0.3;
        Func<double[], double>[] limits = [Straight, Product, Step, Hard];

        var together = Carrying.Of(
            z => [.. limits.SelectMany(limit => new[] { limit(z), limit(z) })],
            [.. Enumerable.Range(11, 3)],
            SpreadMethod.Linear
        );

        var alone = limits.Select(limit => Of(limit, 3)).ToArray();
        Assert.True(alone.Select(carried => carried.Rigs).Distinct().Count() > 2);
        Assert.Equal(
            alone.Select(carried => Assert.Single(carried.Odds).Exceedance),
            together.Odds.Select(odds => odds.Exceedance)
        );
    }

    [Fact]
    public void Where_only_the_side_of_a_probability_matters_fewer_are_drawn()
    {
        static double Hard(double[] z) => Math.Abs(z[0] * z[1] * z[2]) - 0.3;
        Carrying Sided(params double[] sides) =>
            Carrying.Of(
                z => [Hard(z), Hard(z)],
                [.. Enumerable.Range(11, 3)],
                SpreadMethod.Linear,
                sides
            );
        var whole = Of(Hard, 3);
        var near = Assert.Single(whole.Odds).Exceedance;

        Assert.True(Sided(0.05).Rigs < whole.Rigs);
        Assert.True(Assert.Single(Sided(0.05).Odds).Exceedance > 0.05);
        Assert.Equal(whole.Rigs, Sided(near).Rigs);
    }

    [Fact]
    public void What_nothing_moves_is_past_its_limit_or_not_and_has_no_width()
    {
        var odds = Assert.Single(Of(_ => 0.5, 3).Odds);

        Assert.Equal((1, 100.5, 100.5), (odds.Exceedance, odds.Low, odds.High));
    }

    [Fact]
    public void An_estimate_that_is_not_known_has_no_interval()
    {
        var odds = Assert.Single(
            Carrying.Of(z => [z[0] - 1, double.NaN], [3], SpreadMethod.Linear).Odds
        );

        Assert.True(double.IsNaN(odds.Low) && double.IsNaN(odds.High));
        Assert.Equal(1 - Normal.CDF(0, 1, 1), odds.Exceedance, 1e-6);
    }

    [Fact]
    public void A_draw_without_a_figure_does_not_move_the_interval()
    {
        // Half of the draws have none: the others are a normal deviate's upper half, with quantiles Φ⁻¹(0.5 + p/2).
        var odds = Assert.Single(
            Carrying
                .Of(z => [z[0], z[0] > 0 ? z[0] : double.NaN], [4], SpreadMethod.Montecarlo)
                .Odds
        );

        Assert.Equal(Normal.InvCDF(0, 1, 0.5125), odds.Low, 0.02);
        Assert.Equal(Normal.InvCDF(0, 1, 0.9875), odds.High, 0.1);
    }
}
