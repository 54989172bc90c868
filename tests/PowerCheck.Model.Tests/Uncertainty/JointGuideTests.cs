using MathNet.Numerics.LinearAlgebra;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Uncertainty;

/// <summary>Worked examples of the Joint Committee's guides, through the propagation that the check uses.</summary>
public sealed class JointGuideTests
{
    // Every figure is a mean and a standard uncertainty of a normal quantity; deviates are those of the inputs.
    private static Response Of(Func<double[], double> quantity, int inputs) =>
        Assert.Single(FirstOrder.Of(z => [quantity(z)], inputs));

    // JCGM 106:2012, table 1 (from memory; checked by arithmetic): one-sided conformance probability against z.
    [Theory]
    [InlineData(0.84, 0.80)]
    [InlineData(1.28, 0.90)]
    [InlineData(1.64, 0.95)]
    [InlineData(2.33, 0.99)]
    [InlineData(3.09, 0.999)]
    public void A_figure_so_many_uncertainties_under_its_limit_conforms_with_this_probability(
        double z,
        double conformance
    ) => Assert.Equal(conformance, 1 - Of(d => 5 + (2 * d[0]), 1).Exceedance(5 + (2 * z)), 6e-4);

    // JCGM 106:2012, 7.4 (from memory; checked by arithmetic): oil of 13.6 mm²/s, u 1.8, between 12.5 and 16.3.
    [Fact]
    public void Oil_conforms_on_both_sides_with_the_difference_of_two_tails()
    {
        var oil = Of(d => 13.6 + (1.8 * d[0]), 1);

        Assert.Equal(0.6626, oil.Exceedance(12.5) - oil.Exceedance(16.3), 5e-4);
    }

    // JCGM 106:2012, 7.3.3, examples 1 and 2 (from memory; checked by arithmetic).
    [Theory]
    [InlineData(-5.47, 0.05, -5.40, 0.9192)]
    [InlineData(-509.7, 8.6, -490, 0.9890)]
    public void Diode_and_bottle_conform_on_one_side(
        double value,
        double uncertainty,
        double limit,
        double conformance
    ) =>
        Assert.Equal(
            conformance,
            1 - Of(d => value + (uncertainty * d[0]), 1).Exceedance(limit),
            5e-5
        );

    // Suncal, test_cpk: N(10, 0.4) between 9 and 11.
    [Fact]
    public void A_process_leaves_its_limits_by_both_tails()
    {
        var process = Of(d => 10 + (0.4 * d[0]), 1);

        Assert.Equal(0.00621, process.Exceedance(11), 0.01 * 0.00621);
        Assert.Equal(0.00621, 1 - process.Exceedance(9), 0.01 * 0.00621);
    }

    // JCGM 101:2008, table 2: the sum of four standard normal quantities.
    [Fact]
    public void Four_normal_quantities_add_up_to_twice_the_uncertainty()
    {
        var sum = Of(d => d.Sum(), 4);

        Assert.Equal(2.00, sum.StandardUncertainty, 0.005);
        Assert.Equal(3.92, sum.Quantile(0.975), 0.01);
        Assert.Equal(-3.92, sum.Quantile(0.025), 0.01);
    }

    // JCGM 101:2008, table 3: four rectangular quantities of u = 1, where first order gives 3.92 and drawing 3.88.
    [Fact]
    public void Four_rectangular_quantities_lie_closer_than_first_order_says()
    {
        static double Rectangular(double deviate) =>
            Math.Sqrt(3) * ((2 * MathNet.Numerics.Distributions.Normal.CDF(0, 1, deviate)) - 1);
        Quantities sum = z => [z.Sum(Rectangular)];

        var drawn = Assert.Single(Sample.Of(sum, LatinSquare.Deviates(4, 1_000_000, 1)));

        Assert.Equal(2.00, drawn.StandardUncertainty, 0.005);
        Assert.Equal(3.88, drawn.Quantile(0.975), 0.01);
        Assert.Equal(-3.88, drawn.Quantile(0.025), 0.01);
    }

    // Sandia's course on uncertainty, quoted by Suncal: y = x1/x2·ys.
    [Fact]
    public void A_ratio_times_a_standard_carries_three_relative_uncertainties()
    {
        var y = Of(
            d => (0.1820 + (93e-5 * d[0])) / (0.1823 + (58e-5 * d[1])) * (0.6978 + (26e-4 * d[2])),
            3
        );

        Assert.Equal(0.6967, y.Value, 5e-5);
        Assert.Equal(0.00494, y.StandardUncertainty, 1e-5);
    }

    // JCGM 100:2008, H.2: resistance, reactance, impedance from correlated voltage, current and phase.
    [Fact]
    public void Correlated_inputs_are_carried_through_the_root_of_their_covariance()
    {
        // Five simultaneous observations, table H.2: V, mA, rad.
        var observed = Matrix<double>.Build.DenseOfArray(
            new[,]
            {
                { 5.007, 19.663, 1.0456 },
                { 4.994, 19.639, 1.0438 },
                { 5.005, 19.640, 1.0468 },
                { 4.990, 19.685, 1.0428 },
                { 4.999, 19.678, 1.0433 },
            }
        );
        var means = observed.ColumnSums() / 5;
        var centred = Matrix<double>.Build.Dense(5, 3, (row, n) => observed[row, n] - means[n]);
        var root = (centred.TransposeThisAndMultiply(centred) / 20).Cholesky().Factor;
        Quantities impedance = z =>
        {
            var moved = means + (root * Vector<double>.Build.Dense(z));
            var ohm = moved[0] / (moved[1] * 1e-3);
            return [ohm * Math.Cos(moved[2]), ohm * Math.Sin(moved[2]), ohm];
        };

        var found = FirstOrder.Of(impedance, 3);

        double[] values = [127.732, 219.847, 254.260];
        double[] expected = [0.071, 0.295, 0.236];
        for (var n = 0; n < 3; n++)
        {
            Assert.Equal(values[n], found[n].Value, 1e-3);
            Assert.Equal(expected[n], found[n].StandardUncertainty, 1e-3);
        }
    }

    // Derived: 112 °C, u 8 K, against 125 °C; guarded by 1.645·u it is accepted up to 111.84 °C.
    [Fact]
    public void A_temperature_is_accepted_under_a_guarded_limit()
    {
        Assert.Equal(0.948, 1 - Of(d => 112 + (8 * d[0]), 1).Exceedance(125), 1e-3);
        Assert.Equal(0.95, 1 - Of(d => 111.84 + (8 * d[0]), 1).Exceedance(125), 1e-3);
    }

    // Derived: stall current V/R of 12.6(0.1) V and 0.050(0.005) Ω by first order, which small steps alone give.
    [Fact]
    public void A_stall_current_is_as_uncertain_as_its_resistance()
    {
        // A hundredth of the uncertainties, and the result times a hundred: the second order falls away.
        var stall = Of(d => (12.6 + (0.001 * d[0])) / (0.050 + (0.00005 * d[1])), 2);

        Assert.Equal(252.0, stall.Value, 1e-9);
        Assert.Equal(25.28, 100 * stall.StandardUncertainty, 0.025);
    }

    // Suncal, quoting Deaver: a process of σ 4 within ± 8, tested with σ 1.
    [Fact]
    public void A_test_accepts_and_rejects_falsely_as_often_as_the_joint_distribution_says()
    {
        var draws = LatinSquare.Deviates(2, 400_000, 1);
        var pairs = draws.Select(z => (True: 4 * z[0], Seen: (4 * z[0]) + z[1])).ToArray();

        static bool Inside(double x) => Math.Abs(x) <= 8;
        var accepted = pairs.Count(p => !Inside(p.True) && Inside(p.Seen)) / 400_000.0;
        var rejected = pairs.Count(p => Inside(p.True) && !Inside(p.Seen)) / 400_000.0;

        Assert.Equal(0.008, accepted, 5e-4);
        Assert.Equal(0.015, rejected, 6e-4);
    }
}
