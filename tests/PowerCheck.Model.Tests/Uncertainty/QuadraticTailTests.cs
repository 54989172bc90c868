using MathNet.Numerics.Distributions;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Uncertainty;

/// <summary>Tails of Σ(slope·z + curvature·z²) against distributions that are known in closed form.</summary>
public sealed class QuadraticTailTests
{
    [Theory]
    [InlineData(-3)]
    [InlineData(-0.2)]
    [InlineData(0)]
    [InlineData(1.7)]
    [InlineData(4)]
    public void Without_curvature_it_is_the_normal_distribution(double limit) =>
        Assert.Equal(
            1 - Normal.CDF(1, 5, limit),
            new Response(1, [3, 0, 4], [0, 0, 0]).Exceedance(limit),
            1e-9
        );

    [Theory]
    [InlineData(8, 4.0)]
    [InlineData(8, 8.0)]
    [InlineData(8, 15.5)]
    [InlineData(3, 6.0)]
    [InlineData(2, 0.3)]
    [InlineData(2, 14.0)]
    public void A_sum_of_squares_is_the_chi_squared_distribution(int terms, double limit) =>
        Assert.Equal(
            1 - ChiSquared.CDF(terms, limit),
            new Response(0, new double[terms], [.. Enumerable.Repeat(1.0, terms)]).Exceedance(
                limit
            ),
            3e-6
        );

    [Theory]
    [InlineData(0.3, 0.1)]
    [InlineData(-0.4, 0.05)]
    public void Slopes_and_curvatures_of_both_signs_are_what_drawing_gives(
        double limit,
        double third
    )
    {
        var response = new Response(-0.1, [0.3, -0.2, 0.1, 0.15], [0.04, -0.06, third, 0]);
        var draws = LatinSquare.Deviates([.. Enumerable.Range(1, 4)], 200_000);

        var drawn = draws.Count(z => response.At(z) > limit) / 200_000.0;

        Assert.Equal(drawn, response.Exceedance(limit), 3e-3);
    }

    [Theory]
    [InlineData(0.025)]
    [InlineData(0.5)]
    [InlineData(0.975)]
    public void A_quantile_is_exceeded_by_the_rest(double probability)
    {
        var response = new Response(2, [0.3, -0.2], [0.04, 0.02]);

        Assert.Equal(1 - probability, response.Exceedance(response.Quantile(probability)), 1e-4);
    }

    [Fact]
    public void What_nothing_moves_is_past_a_limit_or_not()
    {
        var fixedFigure = new Response(3, [0, 0], [0, 0]);

        Assert.Equal((1, 0), (fixedFigure.Exceedance(2.9), fixedFigure.Exceedance(3)));
    }

    [Fact]
    public void A_sum_that_only_bends_upward_never_lies_under_its_lowest()
    {
        var upward = new Response(0, [0, 0, 0], [1, 2, 1]);

        Assert.Equal(1, upward.Exceedance(-0.5), 1e-6);
    }
}
