using PowerCheck.Model.Findings;
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

    /// <summary>Standard error of a probability that is small enough, assumed.</summary>
    private const double EnoughError = 0.0045;

    // Where an outcome turns.
    private static readonly double[] Turns = [Thresholds.DoubtfulFrom, Thresholds.FailsFrom];

    private readonly double width = distance.StandardUncertainty;
    private readonly double alone = distance.Exceedance(0);
    private readonly List<double[]> drawn = [];
    private readonly List<(double Drawn, double Expected)> distances = [];
    private readonly List<double> estimates = [];

    /// <summary>Adds a joint draw.</summary>
    /// <param name="deviates">The deviates of the inputs.</param>
    /// <param name="at">The quantities there.</param>
    public void Add(double[] deviates, double[] at)
    {
        drawn.Add(deviates);
        distances.Add((at[place], distance.At(deviates)));
        estimates.Add(at[place + 1]);
    }

    /// <summary>Whether the response to each input alone gives another probability than the draws.</summary>
    public bool Misleads =>
        Math.Abs(Crossed.Of(distances, 0).Surplus) > TolerableDraws
        || Math.Abs(Shifted() - alone) > Tolerable;

    /// <summary>Whether the probability from the draws is known well enough.</summary>
    /// <param name="outcomesAlone">Whether it is enough that it is surely on its side of every threshold.</param>
    public bool IsKnown(bool outcomesAlone)
    {
        var (exceedance, error) = Told();
        return error <= EnoughError
            || (
                outcomesAlone
                && Array.TrueForAll(Turns, t => Math.Abs(exceedance - t) > Sure * error)
            );
    }

    /// <summary>The odds by the response to each input alone.</summary>
    public Odds ByEach() =>
        new(Shifted(), Quantile(LowEnd), Quantile(HighEnd), distance.Variances());

    /// <summary>The odds by the draws: what is known of the response, and by how much the draws differ from it.</summary>
    public Odds ByDraws()
    {
        // A draw in which the limit is not met has no figure.
        var sample = new Sample([.. estimates.Where(at => !double.IsNaN(at))]);
        return new(
            Told().Exceedance,
            sample.Quantile(LowEnd),
            sample.Quantile(HighEnd),
            distance.Variances()
        );
    }

    // From what is known of the distribution of a response, and the draws that contradict it: the fewer they are, the surer.
    // Held against the limit; or where it is past it as often as the draws; or with what the main inputs do jointly.
    private (double Exceedance, double StandardError) Told()
    {
        var limit = Known(distance, Crossed.Of(distances, 0));
        if (limit.StandardError <= EnoughError || !(width > 0 && double.IsFinite(width)))
        {
            return limit;
        }

        var matched = Known(distance, Crossed.Of(distances, Crossed.Matching(distances)));
        if (matched.StandardError <= EnoughError)
        {
            return matched;
        }

        var fitted = JointFit.Of(distance, [.. drawn.Zip(distances, (z, d) => (z, d.Drawn))]);
        var expected = distances.Zip(drawn, (d, z) => (d.Drawn, fitted.At(z))).ToArray();
        var joint = Known(fitted.AlongAxes(), Crossed.Of(expected, Crossed.Matching(expected)));
        return new[] { limit, matched, joint }.MinBy(known => known.StandardError);
    }

    private static (double Exceedance, double StandardError) Known(
        Response response,
        Crossed crossed
    ) => (Math.Clamp(response.Exceedance(crossed.At) + crossed.Share, 0, 1), crossed.StandardError);

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
