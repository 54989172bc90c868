using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// How one quantity answers to its inputs, each taken by itself: value + Σ(slope·z + curvature·z²), z standard normal and
/// independent. Source: jcgm100, with the second-order term of each input (its note to 5.1.2).
/// </summary>
/// <param name="Value">The quantity at the best estimate.</param>
/// <param name="Slopes">Change a standard deviation of each input.</param>
/// <param name="Curvatures">Second-order change a squared standard deviation of each input.</param>
public sealed record Response(
    double Value,
    IReadOnlyList<double> Slopes,
    IReadOnlyList<double> Curvatures
)
{
    private const double Widest = 12;

    /// <summary>Mean of the quantity.</summary>
    public double Mean => Value + Curvatures.Sum();

    /// <summary>Standard uncertainty of the quantity: the root of its variance Σ(slope² + 2·curvature²).</summary>
    public double StandardUncertainty => Math.Sqrt(Variances().Sum());

    /// <summary>The variance that each input brings.</summary>
    public double[] Variances() =>
        [.. Slopes.Zip(Curvatures, (slope, bend) => (slope * slope) + (2 * bend * bend))];

    /// <summary>The quantity where the inputs lie at these deviates.</summary>
    /// <param name="deviates">A deviate an input.</param>
    public double At(double[] deviates)
    {
        var sum = Value;
        for (var n = 0; n < deviates.Length; n++)
        {
            sum += (Slopes[n] + (Curvatures[n] * deviates[n])) * deviates[n];
        }

        return sum;
    }

    /// <summary>Probability that the quantity is above a limit, 0 to 1. Source: jcgm106, 7.</summary>
    /// <param name="limit">The limit.</param>
    public double Exceedance(double limit)
    {
        var spread = StandardUncertainty;
        return spread <= 1e-12 * Math.Max(1, Math.Abs(limit)) ? (Value > limit ? 1 : 0)
            : Math.Abs(limit - Mean) > Widest * spread ? (Mean > limit ? 1 : 0)
            : new QuadraticTail(Slopes, Curvatures).Above(limit - Value);
    }

    /// <summary>The figure that the quantity stays under with a probability.</summary>
    /// <param name="probability">Probability, above 0 and under 1.</param>
    public double Quantile(double probability)
    {
        var spread = StandardUncertainty;
        var deviate = FindRoots.OfFunction(
            x => 1 - Exceedance(Mean + (x * spread)) - probability,
            -Widest,
            Widest,
            1e-6
        );
        return Mean + (deviate * spread);
    }

    /// <summary>Deviate under which a standard normal lies with a probability.</summary>
    /// <param name="probability">Probability, above 0 and under 1.</param>
    public static double Deviate(double probability) => Normal.InvCDF(0, 1, probability);
}
