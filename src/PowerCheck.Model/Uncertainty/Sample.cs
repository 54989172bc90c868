namespace PowerCheck.Model.Uncertainty;

/// <summary>Drawn values of one quantity. Source: jcgm101, 7.</summary>
/// <param name="Values">The values, in the order drawn.</param>
public sealed record Sample(IReadOnlyList<double> Values)
{
    /// <summary>The figure that a share of the draws stays under.</summary>
    /// <param name="probability">The share, above 0 and under 1.</param>
    /// <returns>NaN where nothing was drawn.</returns>
    public double Quantile(double probability)
    {
        if (Values.Count == 0)
        {
            return double.NaN;
        }

        var sorted = Values.Order().ToArray();
        var at = (probability * sorted.Length) - 0.5;
        var below = Math.Clamp((int)Math.Floor(at), 0, sorted.Length - 1);
        var above = Math.Min(below + 1, sorted.Length - 1);
        var part = Math.Clamp(at - below, 0, 1);
        return part == 0 ? sorted[below] : sorted[below] + (part * (sorted[above] - sorted[below]));
    }
}
