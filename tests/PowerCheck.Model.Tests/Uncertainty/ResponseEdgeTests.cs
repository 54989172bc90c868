using MathNet.Numerics.Distributions;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Uncertainty;

/// <summary>Responses and tails at the ends of what they are asked for, against distributions in closed form.</summary>
public sealed class ResponseEdgeTests
{
    [Theory]
    // 1 − F of the chi-squared distribution is the share of its negative above −x.
    [InlineData(8, -15.5)]
    [InlineData(8, -8.0)]
    [InlineData(8, -4.0)]
    [InlineData(3, -6.0)]
    public void A_negative_sum_of_squares_is_the_chi_squared_distribution_mirrored(
        int terms,
        double limit
    ) =>
        // One more square is too small to count.
        Assert.Equal(
            ChiSquared.CDF(terms, -limit),
            new Response(
                0,
                new double[terms + 1],
                [.. Enumerable.Repeat(-1.0, terms), -1e-4]
            ).Exceedance(limit),
            6e-3
        );

    [Fact]
    public void A_sum_that_only_bends_downward_never_lies_above_its_highest() =>
        Assert.Equal(0, new Response(0, [0, 0, 0], [-1, -2, -1]).Exceedance(0.5), 1e-6);

    [Theory]
    [InlineData(0.01)]
    [InlineData(1)]
    [InlineData(1000)]
    public void A_straight_tail_is_as_exact_on_any_scale(double scale) =>
        Assert.Equal(
            1 - Normal.CDF(0, 1, 0.5),
            new Response(0, [0.6 * scale, 0.8 * scale], [0, 0]).Exceedance(0.5 * scale),
            1e-9
        );

    [Fact]
    public void A_spread_under_the_last_digits_of_a_limit_is_none()
    {
        // 10⁻⁷ beside a million: a figure at the limit is not past it.
        var response = new Response(1e6, [1e-7], [0]);

        Assert.Equal((0, 1), (response.Exceedance(1e6), response.Exceedance(1e6 - 1e-8)));
        // Beside one it counts.
        Assert.Equal(0.5, new Response(1, [1e-7], [0]).Exceedance(1), 1e-6);
    }

    [Theory]
    [InlineData(1e-4)]
    [InlineData(1)]
    [InlineData(10)]
    public void A_quantile_is_found_to_a_share_of_the_spread(double scale)
    {
        var response = new Response(3, [0.6 * scale, -0.8 * scale], [0, 0]);

        foreach (var probability in (double[])[0.025, 0.3, 0.9])
        {
            Assert.Equal(
                Normal.InvCDF(3, scale, probability),
                response.Quantile(probability),
                1e-5 * scale
            );
        }
    }

    [Fact]
    public void An_input_is_small_beside_all_others_together()
    {
        // 0.06² is 0.0036 of one of the others' variances, 0.0009 of all four.
        Assert.False(TriedBelow(z => z[0] + z[1] + z[2] + z[3] + (0.06 * z[4]), 5));
        Assert.True(TriedBelow(z => z[0] + (0.06 * z[4]), 5));
    }

    [Fact]
    public void An_input_is_small_by_what_it_changes_however_large_the_figure() =>
        Assert.False(TriedBelow(z => 1e4 + z[0] + (0.01 * z[4]), 5));

    [Fact]
    public void An_input_that_changes_nothing_among_others_that_do_not_is_not_tried_again() =>
        Assert.False(TriedBelow(_ => 3, 5));

    // Whether the last input is tried on its lower side.
    private static bool TriedBelow(Func<double[], double> quantity, int inputs)
    {
        var below = 0;
        FirstOrder.Of(
            z =>
            {
                Interlocked.Add(ref below, z[^1] < 0 ? 1 : 0);
                return [quantity(z)];
            },
            inputs
        );
        return below > 0;
    }

    [Fact]
    public void A_draw_lies_anywhere_within_its_slice()
    {
        var places = LatinSquare
            .Deviates([.. Enumerable.Range(3, 1)], 400)
            .Select(row => 400 * Normal.CDF(0, 1, row[0]) % 1)
            .ToArray();

        // Equally likely: a mean of 1/2 within four of its standard errors √(1/12/400), both ends reached.
        Assert.Equal(0.5, places.Average(), 4 * Math.Sqrt(1.0 / 12 / 400));
        Assert.True(places.Min() < 0.05 && places.Max() > 0.95);
    }

    [Fact]
    public void A_quantile_on_a_draw_is_that_draw_however_far_the_next_lies() =>
        Assert.Equal(
            2,
            new Sample([1, 2, double.PositiveInfinity, double.PositiveInfinity]).Quantile(0.375)
        );
}
