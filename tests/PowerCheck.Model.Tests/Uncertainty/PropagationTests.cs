using System.Collections.Concurrent;
using MathNet.Numerics.Distributions;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Uncertainty;

/// <summary>Responses, samples and Latin squares against figures worked out by hand and closed forms.</summary>
public sealed class PropagationTests
{
    private static readonly Response Bent = new(10, [3, -4], [0.5, -2]);

    [Fact]
    public void Mean_and_variance_of_a_bent_response_are_those_of_normal_squares()
    {
        // E[s·z + c·z²] = c; Var = s² + 2c²: 9 + 0.5 and 16 + 8.
        Assert.Equal(8.5, Bent.Mean, 1e-12);
        Assert.Equal([9.5, 24], Bent.Variances());
        Assert.Equal(Math.Sqrt(33.5), Bent.StandardUncertainty, 1e-12);
        // 10 + 3·2 + 0.5·4 − 4·(−3) − 2·9
        Assert.Equal(12, Bent.At([2, -3]), 1e-12);
    }

    // a + s·z + c·z² > x lies between or outside the two roots.
    [Theory]
    [InlineData(0, 1, 0.1, 1.5)]
    [InlineData(0, 1, 0.1, -1.2)]
    [InlineData(2, 0.5, 0.3, 3.1)]
    [InlineData(2, 0.5, -0.3, 1.4)]
    [InlineData(-1, -2, 0.2, 0.5)]
    [InlineData(-1, -2, -0.2, -3.5)]
    [InlineData(0, 1, 0.02, 0.02)]
    [InlineData(0, 1, -0.02, -0.0195)]
    public void The_tail_of_one_bent_input_is_that_between_its_roots(
        double value,
        double slope,
        double bend,
        double limit
    )
    {
        var root = Math.Sqrt((slope * slope) - (4 * bend * (value - limit)));
        var (a, b) = ((-slope - root) / (2 * bend), (-slope + root) / (2 * bend));
        var within = Normal.CDF(0, 1, Math.Max(a, b)) - Normal.CDF(0, 1, Math.Min(a, b));

        Assert.Equal(
            bend > 0 ? 1 - within : within,
            new Response(value, [slope], [bend]).Exceedance(limit),
            1e-9
        );
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(0)]
    [InlineData(0.001)]
    public void At_the_mean_the_skewed_tail_has_no_step(double beside)
    {
        // Gram-Charlier: 1/2 − skew/(6·√(2π)) at the mean of three equal bent inputs.
        var response = new Response(0, [1, 1, 1], [0.05, 0.05, 0.05]);
        var variance = 3 * (1 + (2 * 0.05 * 0.05));
        var skew = 3 * ((8 * Math.Pow(0.05, 3)) + (6 * 0.05)) / Math.Pow(variance, 1.5);
        var expected = 0.5 - (skew / (6 * Math.Sqrt(Math.Tau)));

        Assert.Equal(
            expected - (beside / Math.Sqrt(Math.Tau * variance)),
            response.Exceedance(0.15 + beside),
            1e-4
        );
    }

    [Theory]
    [InlineData(1e3, 0)]
    [InlineData(-1e3, 1)]
    public void Far_beyond_all_that_can_be_a_limit_is_passed_or_not(
        double limit,
        double expected
    ) => Assert.Equal(expected, Bent.Exceedance(limit));

    [Fact]
    public void Quantiles_of_a_straight_response_are_those_of_the_normal_distribution()
    {
        var straight = new Response(100, [3, 4], [0, 0]);

        Assert.Equal(Normal.InvCDF(100, 5, 0.975), straight.Quantile(0.975), 1e-4);
        Assert.Equal(Normal.InvCDF(100, 5, 0.025), straight.Quantile(0.025), 1e-4);
    }

    [Fact]
    public void Each_input_by_itself_finds_slope_and_bend()
    {
        var found = FirstOrder.Of(
            z => [7 + (2 * z[0]) - (0.3 * z[0] * z[0]) + (5 * z[1]), z[2] * z[2]],
            3
        );

        Assert.Equal([7, 0], found.Select(response => response.Value));
        Assert.Equal([2, 5, 0], found[0].Slopes.Select(s => Math.Round(s, 12)));
        Assert.Equal([-0.3, 0, 0], found[0].Curvatures.Select(c => Math.Round(c, 12)));
        Assert.Equal([0, 0, 0], found[1].Slopes.Select(s => Math.Round(s, 12)));
        Assert.Equal([0, 0, 1], found[1].Curvatures.Select(c => Math.Round(c, 12)));
    }

    [Fact]
    public void An_input_that_moves_next_to_nothing_is_tried_on_one_side_only()
    {
        var tried = new ConcurrentBag<double>();
        var found = FirstOrder.Of(
            z =>
            {
                tried.Add(z[1]);
                return [(10 * z[0]) + (0.3 * z[1]) + (0.1 * z[1] * z[1])];
            },
            2
        );

        // 0.616²/(14² + 0.616²) is under the share that counts.
        Assert.DoesNotContain(tried, z => z < 0);
        Assert.Equal(0, found[0].Curvatures[1]);
        Assert.Equal(0.3 + (0.1 * 1.4), found[0].Slopes[1], 1e-12);
    }

    [Fact]
    public void An_input_that_counts_in_one_quantity_is_tried_on_both_sides()
    {
        var tried = new ConcurrentBag<double>();
        FirstOrder.Of(
            z =>
            {
                tried.Add(z[1]);
                return [(1000 * z[0]) + z[1], (0.001 * z[0]) + z[1]];
            },
            2
        );

        Assert.Contains(tried, z => z < 0);
    }

    [Theory]
    [InlineData(0.125, 1)]
    [InlineData(0.375, 2)]
    [InlineData(0.5, 2.5)]
    [InlineData(0.6, 2.9)]
    [InlineData(0.001, 1)]
    [InlineData(0.999, 4)]
    public void A_quantile_of_a_sample_lies_between_its_order_statistics(
        double probability,
        double expected
    ) => Assert.Equal(expected, new Sample([3, 1, 4, 2]).Quantile(probability), 1e-12);

    [Fact]
    public void A_sample_of_nothing_has_no_quantile() =>
        Assert.True(double.IsNaN(new Sample([]).Quantile(0.5)));

    [Fact]
    public void A_Latin_square_has_one_deviate_in_each_equally_likely_slice()
    {
        var draws = LatinSquare.Deviates([.. Enumerable.Range(7, 3)], 50);

        for (var n = 0; n < 3; n++)
        {
            Assert.Equal(
                Enumerable.Range(0, 50),
                draws.Select(row => (int)Math.Floor(50 * Normal.CDF(0, 1, row[n]))).Order()
            );
        }

        Assert.NotEqual(draws[0][0], draws[0][1]);
        // An input is drawn alike whatever others there are.
        Assert.Equal(
            draws.Select(row => row[2]),
            LatinSquare.Deviates([9], 50).Select(row => row[0])
        );
        Assert.Equal(draws[4], LatinSquare.Deviates([.. Enumerable.Range(7, 3)], 50)[4]);
        Assert.NotEqual(draws[4], LatinSquare.Deviates([.. Enumerable.Range(8, 3)], 50)[4]);
    }
}
