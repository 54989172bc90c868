using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Statistics;
using PowerCheck.Model.Uncertainty;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about uncertainty: propagation, intervals, and the probability of being past a limit.</summary>
internal static class UncertaintyRows
{
    private const double LowEnd = 0.025;
    private const double HighEnd = 0.975;

    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Response.Quantile"] = check =>
                Of(("quantile", Told(check).Quantile(check.Si("probability")))),
            ["Response.Quantile/guard"] = Guard,
            ["Response.Exceedance"] = Conformance,
            ["Response.Exceedance/test"] = FalseDecisions,
            ["FirstOrder.Of/sum"] = Sum,
            ["FirstOrder.Of/ratio"] = Ratio,
            ["FirstOrder.Of/impedance"] = Impedance,
            ["Sample.Quantile/rectangular"] = Rectangular,
        };

    // A quantity of the model from a function of standard normal deviates.
    private static Response Quantity(Func<double[], double> quantity, int inputs) =>
        FirstOrder.Of(deviates => [quantity(deviates)], inputs).Single();

    private static Response Normally(double value, double uncertainty) =>
        Quantity(z => value + (uncertainty * z[0]), 1);

    private static Response Told(PublishedCheck check) =>
        Normally(check.Si("value"), check.Si("uncertainty"));

    private static (double Lower, double Upper) Limits(PublishedCheck check) =>
        (check.Si("lower", double.NegativeInfinity), check.Si("upper", double.PositiveInfinity));

    private static IReadOnlyDictionary<string, double> Conformance(PublishedCheck check)
    {
        var told = Told(check);
        var (lower, upper) = Limits(check);
        var (below, above) = (1 - told.Exceedance(lower), told.Exceedance(upper));
        var nearest = Math.Min(upper - told.Mean, told.Mean - lower) / told.StandardUncertainty;
        return Of(
            ("conformance", 1 - below - above),
            ("outside", below + above),
            ("below", below),
            ("above", above),
            ("z", nearest),
            ("capability", nearest / 3)
        );
    }

    private static IReadOnlyDictionary<string, double> Guard(PublishedCheck check)
    {
        var about = Normally(0, check.Si("uncertainty"));
        return Of(("accepted", check.Si("upper") - about.Quantile(check.Si("probability"))));
    }

    // Integrated over what is true, the model saying how likely the test shows it within the limits.
    private static IReadOnlyDictionary<string, double> FalseDecisions(PublishedCheck check)
    {
        var (process, test) = (check.Si("process"), check.Si("test"));
        var (lower, upper) = Limits(check);
        var far = 10 * test;
        double Accepted(double truly)
        {
            var shown = Normally(truly, test);
            return shown.Exceedance(lower) - shown.Exceedance(upper);
        }

        double Over(Func<double, double> share, double from, double to) =>
            GaussLegendreRule.Integrate(
                truly => share(truly) * Normal.PDF(0, process, truly),
                from,
                to,
                64
            );
        return Of(
            (
                "falseAccept",
                Over(Accepted, lower - far, lower) + Over(Accepted, upper, upper + far)
            ),
            ("falseReject", Over(truly => 1 - Accepted(truly), lower, upper))
        );
    }

    private static IReadOnlyDictionary<string, double> Sum(PublishedCheck check)
    {
        var uncertainty = check.Si("uncertainty");
        var sum = Quantity(z => uncertainty * z.Sum(), (int)check.Si("count"));
        return Of(
            ("uncertainty", sum.StandardUncertainty),
            ("low", sum.Quantile(LowEnd)),
            ("high", sum.Quantile(HighEnd))
        );
    }

    // A rectangular distribution is √12 uncertainties wide.
    private static IReadOnlyDictionary<string, double> Rectangular(PublishedCheck check)
    {
        var width = Math.Sqrt(12) * check.Si("uncertainty");
        var draws = LatinSquare.Deviates(
            [.. Enumerable.Range(1, (int)check.Si("count"))],
            1_000_000
        );
        var drawn = new Sample([
            .. draws.Select(row => row.Sum(z => width * (Normal.CDF(0, 1, z) - 0.5))),
        ]);
        return Of(
            ("uncertainty", drawn.Values.StandardDeviation()),
            ("low", drawn.Quantile(LowEnd)),
            ("high", drawn.Quantile(HighEnd))
        );
    }

    private static IReadOnlyDictionary<string, double> Ratio(PublishedCheck check)
    {
        double Moved(string name, double deviate) =>
            check.Si(name, 1) + (check.Si($"{name}Uncertainty", 0) * deviate);
        var ratio = Quantity(
            z => Moved("numerator", z[0]) / Moved("denominator", z[1]) * Moved("standard", z[2]),
            3
        );
        return Of(("value", ratio.Value), ("uncertainty", ratio.StandardUncertainty));
    }

    // Means of observations made together, moved by the root of their covariance.
    private static IReadOnlyDictionary<string, double> Impedance(PublishedCheck check)
    {
        var observed = Matrix<double>.Build.DenseOfColumnArrays(
            check.List("voltage"),
            check.List("current"),
            check.List("phase")
        );
        var count = observed.RowCount;
        var means = observed.ColumnSums() / count;
        var off = Matrix<double>.Build.Dense(count, 3, (row, n) => observed[row, n] - means[n]);
        var root = (off.TransposeThisAndMultiply(off) / (count * (count - 1))).Cholesky().Factor;
        var found = FirstOrder.Of(
            z =>
            {
                var at = means + (root * Vector<double>.Build.Dense(z));
                var ohm = at[0] / at[1];
                return [ohm * Math.Cos(at[2]), ohm * Math.Sin(at[2]), ohm];
            },
            3
        );
        string[] names = ["resistance", "reactance", "impedance"];
        return Of([
            .. names.Select((name, n) => (name, found[n].Value)),
            .. names.Select((name, n) => ($"{name}Uncertainty", found[n].StandardUncertainty)),
        ]);
    }
}
