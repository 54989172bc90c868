namespace PowerCheck.Model.Spreads;

/// <summary>Draws of which the response to each input alone says otherwise than they do.</summary>
/// <param name="At">The distance past the limit from which on the response counts as past it.</param>
/// <param name="Draws">How many draws there are.</param>
/// <param name="Over">How many are past the limit though the response is not.</param>
/// <param name="Under">How many are not though the response is.</param>
public readonly record struct Crossed(double At, int Draws, int Over, int Under)
{
    /// <summary>How many more draws are past the limit than the response says.</summary>
    public int Surplus => Over - Under;

    /// <summary>The same as a share of all.</summary>
    public double Share => (double)Surplus / Draws;

    /// <summary>Standard error of that share.</summary>
    public double StandardError
    {
        get
        {
            // As if one more draw had crossed, so that none does not mean never.
            var crossed = (double)(Over + Under + 1) / Draws;
            return Math.Sqrt((crossed - (Share * Share)) / Draws);
        }
    }

    /// <summary>Holds the response of every draw against a distance past the limit.</summary>
    /// <param name="distances">Distance past the limit of each draw, as drawn and as the response says.</param>
    /// <param name="at">The distance.</param>
    public static Crossed Of(IReadOnlyList<(double Drawn, double Expected)> distances, double at)
    {
        var (over, under) = (0, 0);
        foreach (var (drawn, expected) in distances)
        {
            over += drawn > 0 && expected <= at ? 1 : 0;
            under += drawn <= 0 && expected > at ? 1 : 0;
        }

        return new(at, distances.Count, over, under);
    }

    /// <summary>The distance that the response passes as often as the draws pass the limit.</summary>
    /// <param name="distances">Distance past the limit of each draw, as drawn and as the response says.</param>
    public static double Matching(IReadOnlyList<(double Drawn, double Expected)> distances)
    {
        double[] falling = [.. distances.Select(d => d.Expected).OrderDescending()];
        var past = distances.Count(d => d.Drawn > 0);
        return past == 0 ? falling[0]
            : past == falling.Length ? Math.BitDecrement(falling[^1])
            : (falling[past - 1] + falling[past]) / 2;
    }
}
