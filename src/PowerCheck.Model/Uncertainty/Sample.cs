namespace PowerCheck.Model.Uncertainty;

/// <summary>Drawn values of one quantity. Source: jcgm101, 7.</summary>
/// <param name="Values">The values, in the order drawn.</param>
public sealed record Sample(IReadOnlyList<double> Values)
{
    /// <summary>Draws the quantities.</summary>
    /// <param name="quantities">The quantities.</param>
    /// <param name="draws">Deviates of the inputs, a row a draw.</param>
    /// <returns>A sample a quantity.</returns>
    public static Sample[] Of(Quantities quantities, double[][] draws)
    {
        var drawn = draws.Select(deviates => quantities(deviates)).ToArray();
        return
        [
            .. Enumerable
                .Range(0, drawn[0].Length)
                .Select(at => new Sample([.. drawn.Select(values => values[at])])),
        ];
    }

    /// <summary>Share of the draws above a limit, 0 to 1.</summary>
    /// <param name="limit">The limit.</param>
    public double Exceedance(double limit) => (double)Values.Count(v => v > limit) / Values.Count;

    /// <summary>The figure that a share of the draws stays under.</summary>
    /// <param name="probability">The share, above 0 and under 1.</param>
    public double Quantile(double probability)
    {
        var sorted = Values.Order().ToArray();
        var at = (probability * sorted.Length) - 0.5;
        var below = Math.Clamp((int)Math.Floor(at), 0, sorted.Length - 1);
        var above = Math.Min(below + 1, sorted.Length - 1);
        var part = Math.Clamp(at - below, 0, 1);
        return part == 0 ? sorted[below] : sorted[below] + (part * (sorted[above] - sorted[below]));
    }

    /// <summary>Standard deviation of the draws.</summary>
    public double StandardUncertainty =>
        MathNet.Numerics.Statistics.Statistics.StandardDeviation(Values);
}
