using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// Distribution of Σ(slope·z + curvature·z²) over independent standard normal z, by the saddlepoint formula; exact where
/// nothing is curved, within about 0.002 elsewhere. Source: saddlepoint.
/// </summary>
internal sealed class QuadraticTail
{
    private readonly (double Slope, double Bend)[] terms;
    private readonly double lowest;
    private readonly double highest;

    public QuadraticTail(IReadOnlyList<double> slopes, IReadOnlyList<double> curvatures)
    {
        terms =
        [
            .. slopes
                .Zip(curvatures, (slope, bend) => (slope, bend))
                .Where(term => term is not (0, 0)),
        ];
        // The generating function is finite between the poles 1/(2·curvature) on either side of 0.
        var far = 40 / Math.Sqrt(terms.Sum(t => (t.Slope * t.Slope) + (2 * t.Bend * t.Bend)));
        var up = terms.Max(term => term.Bend);
        var down = terms.Min(term => term.Bend);
        highest = up > 0 ? Math.Min(far, (1 - 1e-9) / (2 * up)) : far;
        lowest = down < 0 ? Math.Max(-far, (1 - 1e-9) / (2 * down)) : -far;
    }

    /// <summary>Probability that the sum is above a figure.</summary>
    public double Above(double figure)
    {
        if (!Brent.TryFindRoot(t => Slope(t) - figure, lowest, highest, 1e-10, 100, out var t))
        {
            return Slope(highest) < figure ? 0 : 1;
        }

        var width = Math.Sqrt(Curve(0));
        if (Math.Abs(t) * width < 1e-3)
        {
            return 0.5
                - (Skew() / (6 * Math.Sqrt(Math.Tau) * width * width * width))
                - (t * width / Math.Sqrt(Math.Tau));
        }

        var w = Math.Sign(t) * Math.Sqrt(2 * ((t * figure) - Generator(t)));
        var u = t * Math.Sqrt(Curve(t));
        var above = 1 - Normal.CDF(0, 1, w) + (Normal.PDF(0, 1, w) * ((1 / u) - (1 / w)));
        return Math.Clamp(above, 0, 1);
    }

    // The cumulant generating function and its derivatives.
    private double Generator(double t)
    {
        var sum = 0.0;
        foreach (var (slope, bend) in terms)
        {
            var left = 1 - (2 * bend * t);
            sum += (-0.5 * Math.Log(left)) + (slope * slope * t * t / (2 * left));
        }

        return sum;
    }

    private double Slope(double t)
    {
        var sum = 0.0;
        foreach (var (slope, bend) in terms)
        {
            var left = 1 - (2 * bend * t);
            sum += (bend / left) + (slope * slope * t * (1 - (bend * t)) / (left * left));
        }

        return sum;
    }

    private double Curve(double t)
    {
        var sum = 0.0;
        foreach (var (slope, bend) in terms)
        {
            var left = 1 - (2 * bend * t);
            sum += (2 * bend * bend / (left * left)) + (slope * slope / (left * left * left));
        }

        return sum;
    }

    private double Skew()
    {
        var sum = 0.0;
        foreach (var (slope, bend) in terms)
        {
            sum += (8 * bend * bend * bend) + (6 * slope * slope * bend);
        }

        return sum;
    }
}
