using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Spreads;

/// <summary>One limit: how its distance answers to each input alone, and what joint draws made of it.</summary>
/// <param name="distance">How far the figure is past its limit, 0 at it.</param>
/// <param name="estimate">The figure, scaled.</param>
/// <param name="place">Where the pair stands among the quantities.</param>
internal sealed class Carried(Response distance, Response estimate, int place)
{
    /// <summary>How far a probability may be off before the response to each input alone misleads, assumed.</summary>
    private const double Tolerable = 0.01;

    /// <summary>How many more draws than expected may lie on one side of the limit, assumed.</summary>
    private const int TolerableDraws = 2;

    /// <summary>Standard errors beyond which nothing lies, assumed.</summary>
    private const double Sure = 4;

    private const double LowEnd = 0.025;
    private const double HighEnd = 0.975;

    private readonly double width = distance.StandardUncertainty;
    private readonly double alone = distance.Exceedance(0);
    private readonly List<(double Drawn, double Expected)> distances = [];
    private readonly List<double> estimates = [];

    /// <summary>Adds a joint draw.</summary>
    /// <param name="deviates">The deviates of the inputs.</param>
    /// <param name="at">The quantities there.</param>
    public void Add(double[] deviates, double[] at)
    {
        distances.Add((at[place], distance.At(deviates)));
        estimates.Add(at[place + 1]);
    }

    /// <summary>Whether the response to each input alone gives another probability than the draws.</summary>
    public bool Misleads =>
        Math.Abs(Over - Under) > TolerableDraws || Math.Abs(Shifted() - alone) > Tolerable;

    /// <summary>Standard error of the probability from the draws.</summary>
    public double StandardError
    {
        get
        {
            var n = distances.Count;
            var (up, down) = ((double)Over / n, (double)Under / n);
            // As if one more draw had crossed, so that none does not mean never.
            return Math.Sqrt(Math.Max(up + down - ((up - down) * (up - down)), 1.0 / (n + 2)) / n);
        }
    }

    /// <summary>Whether the probability from the draws is surely on its side of a threshold.</summary>
    /// <param name="threshold">The threshold.</param>
    public bool IsClearOf(double threshold) =>
        Math.Abs(Exceedance - threshold) > Sure * StandardError;

    /// <summary>The odds by the response to each input alone.</summary>
    public Odds ByEach() =>
        new(Shifted(), Quantile(LowEnd), Quantile(HighEnd), distance.Variances());

    /// <summary>The odds by the draws: what is known of the response, and by how much the draws differ from it.</summary>
    public Odds ByDraws()
    {
        var drawn = new Sample(estimates);
        return new(
            Exceedance,
            drawn.Quantile(LowEnd),
            drawn.Quantile(HighEnd),
            distance.Variances()
        );
    }

    private double Exceedance =>
        Math.Clamp(alone + ((double)(Over - Under) / distances.Count), 0, 1);

    private int Over => distances.Count(d => d is { Drawn: > 0, Expected: <= 0 });

    private int Under => distances.Count(d => d is { Drawn: <= 0, Expected: > 0 });

    // The probability with what the draws lie above the response on average; far from the limit that does not matter.
    private double Shifted() =>
        width > 0
            ? distance.Exceedance(-distances.Average(d => Near(d.Drawn) - Near(d.Expected)))
            : alone;

    private double Near(double value) => Math.Clamp(value, -width, width);

    private double Quantile(double probability)
    {
        var spread = estimate.StandardUncertainty;
        return !double.IsFinite(spread) ? double.NaN
            : spread == 0 ? estimate.Value
            : estimate.Quantile(probability);
    }
}
