using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Uncertainty;

/// <summary>What inputs do jointly, against integrals over one of them, in which the other is normal.</summary>
public sealed class JointResponseTests
{
    private const double Value = -0.3;

    // value + 0.5·a − 0.4·b + 0.3·a·b, a and b standard normal, with an idle input between them.
    private static double Product(double a, double b) =>
        Value + (0.5 * a) - (0.4 * b) + (0.3 * a * b);

    private static double Above(double limit) =>
        GaussLegendreRule.Integrate(
            a =>
                Normal.PDF(0, 1, a)
                * Normal.CDF(0, 1, (Value - limit + (0.5 * a)) / Math.Abs(-0.4 + (0.3 * a))),
            -8,
            8,
            400
        );

    private static readonly Response Each = new(Value, [0.5, 0, -0.4], [0, 0, 0]);

    private static readonly JointResponse Exact = new(
        Each,
        [0, 2],
        0,
        Vector<double>.Build.Dense(2),
        Matrix<double>.Build.DenseOfArray(
            new[,]
            {
                { 0, 0.15 },
                { 0.15, 0 },
            }
        )
    );

    [Theory]
    [InlineData(0.3, -1.2)]
    [InlineData(-2, 0.5)]
    public void It_is_the_response_alone_and_a_quadratic_on_top(double a, double b)
    {
        Assert.Equal(Product(a, b), Exact.At([a, 3, b]), 1e-12);
        var moved = Exact with
        {
            Shift = 0.1,
            Slopes = Vector<double>.Build.Dense([0.2, -0.3]),
            Bends = Matrix<double>.Build.DenseDiagonal(2, 2, 0.05),
        };
        Assert.Equal(
            Each.At([a, 3, b]) + 0.1 + (0.2 * a) - (0.3 * b) + (0.05 * ((a * a) + (b * b))),
            moved.At([a, 3, b]),
            1e-12
        );
    }

    [Theory]
    [InlineData(-1.2)]
    [InlineData(0)]
    [InlineData(0.8)]
    public void Along_its_axes_it_has_the_distribution_of_a_product(double limit) =>
        Assert.Equal(Above(limit), Exact.AlongAxes().Exceedance(limit), 1e-6);

    [Fact]
    public void Along_its_axes_mean_and_variance_stay()
    {
        var bent = Exact with
        {
            Each = Each with { Curvatures = [0.1, 0.07, -0.05] },
            Shift = 0.02,
        };
        var along = bent.AlongAxes();

        // Of Σ slope·z + Σ bend·z² + 0.3·a·b: Σ bend; Σ slope² + 2·Σ bend² + 0.3².
        Assert.Equal(Value + 0.02 + 0.1 + 0.07 - 0.05, along.Mean, 1e-12);
        Assert.Equal(
            0.25 + 0.16 + 0.09 + (2 * (0.01 + 0.0049 + 0.0025)),
            along.Variances().Sum(),
            1e-12
        );
    }

    [Theory]
    [InlineData(60)]
    [InlineData(400)]
    public void Draws_tell_what_two_inputs_do_jointly(int draws)
    {
        var fitted = JointFit.Of(
            Each,
            [
                .. LatinSquare
                    .Deviates([.. Enumerable.Range(5, 3)], draws)
                    .Select(z => (z, Product(z[0], z[2]))),
            ]
        );

        // The idle input has no variance and is left out.
        Assert.Equal([0, 2], fitted.Main.Order());
        Assert.Equal(Above(0), fitted.AlongAxes().Exceedance(0), 0.015);
        foreach (
            var z in LatinSquare
                .Deviates([.. Enumerable.Range(6, 3)], 50)
                .Where(z => Math.Abs(Product(z[0], z[2])) < 0.3)
        )
        {
            Assert.InRange(
                Math.Abs(fitted.At(z) - Product(z[0], z[2])),
                0,
                Math.Max(0.08, 0.5 * Math.Abs(Each.At(z) - Product(z[0], z[2])))
            );
        }
    }

    [Fact]
    public void At_most_six_inputs_are_taken_jointly_those_with_the_largest_variance()
    {
        var each = new Response(0, [0.1, 0.8, 0.2, 0.7, 0.3, 0.6, 0.4, 0.5], new double[8]);
        var fitted = JointFit.Of(
            each,
            [.. LatinSquare.Deviates([.. Enumerable.Range(1, 8)], 100).Select(z => (z, each.At(z)))]
        );

        Assert.Equal([1, 3, 5, 7, 6, 4], fitted.Main);
        Assert.Equal(0, fitted.Bends.L2Norm(), 1e-12);
    }
}
