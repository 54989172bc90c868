using System.Numerics;
using MathNet.Numerics.Distributions;

namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// Distribution of Σ(slope·z + curvature·z²) over independent standard normal z, by inverting its characteristic function;
/// the normal distribution where nothing is curved. Source: davies.
/// </summary>
internal sealed class QuadraticTail
{
    /// <summary>Where the sum is wrapped around, from its mean [standard deviations]: nothing lies there, assumed.</summary>
    private const double Wrapped = 30;

    /// <summary>A term of the inversion that changes no probability that is told, assumed.</summary>
    private const double Nothing = 1e-8;

    /// <summary>Terms after which the inversion ends, assumed.</summary>
    private const int Most = 20_000;

    private readonly (double Slope, double Bend)[] bent;
    private readonly double straightVariance;
    private readonly double mean;
    private readonly double width;

    public QuadraticTail(IReadOnlyList<double> slopes, IReadOnlyList<double> curvatures)
    {
        bent =
        [
            .. slopes
                .Zip(curvatures, (slope, bend) => (Slope: slope, Bend: bend))
                .Where(term => term.Bend != 0),
        ];
        var squares = slopes.Sum(slope => slope * slope);
        straightVariance = squares - bent.Sum(term => term.Slope * term.Slope);
        mean = curvatures.Sum();
        width = Math.Sqrt(squares + (2 * curvatures.Sum(bend => bend * bend)));
    }

    /// <summary>Probability that the sum is above a figure.</summary>
    public double Above(double figure)
    {
        if (bent.Length == 0)
        {
            return Normal.CDF(0, width, -figure);
        }

        if (bent is [var alone] && !(straightVariance > 1e-12 * width * width))
        {
            return Above(figure, alone.Slope, alone.Bend);
        }

        // The sum over the middles of equal steps leaves out only what is wrapped around.
        var step = Math.Tau / (Math.Abs(figure - mean) + (Wrapped * width));
        var above = 0.5;
        for (var n = 0; n < Most; n++)
        {
            var at = n + 0.5;
            var value = Characteristic(at * step);
            above +=
                (value * Complex.FromPolarCoordinates(1, -at * step * figure)).Imaginary
                / (Math.PI * at);
            if (value.Magnitude < Nothing * at)
            {
                break;
            }
        }

        return Math.Clamp(above, 0, 1);
    }

    // Of one term: between or beyond the two deviates at which it is the figure, if there are any.
    private static double Above(double figure, double slope, double bend)
    {
        var square = (slope * slope) + (4 * bend * figure);
        if (square < 0)
        {
            return bend > 0 ? 1 : 0;
        }

        var (middle, half) = (-slope / (2 * bend), Math.Sqrt(square) / Math.Abs(2 * bend));
        var beyond = Normal.CDF(0, 1, middle - half) + Normal.CDF(0, 1, -middle - half);
        return bend > 0 ? beyond : 1 - beyond;
    }

    private Complex Characteristic(double u)
    {
        var product = Complex.One;
        var power = new Complex(-0.5 * straightVariance * u * u, 0);
        foreach (var (slope, bend) in bent)
        {
            var left = new Complex(1, -2 * bend * u);
            product /= Complex.Sqrt(left);
            power -= slope * slope * u * u / (2 * left);
        }

        return product * Complex.Exp(power);
    }
}
