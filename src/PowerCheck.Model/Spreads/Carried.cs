using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Spreads;

/// <summary>One limit: how its distance answers to each input alone, and what joint draws made of it.</summary>
/// <param name="distance">How far the figure is past its limit, 0 at it.</param>
/// <param name="estimate">The figure, scaled.</param>
/// <param name="place">Where the pair stands among the quantities.</param>
internal sealed class Carried(Response distance, Response estimate, int place)
{
    /// <summary>Standard errors beyond which nothing lies, assumed.</summary>
    private const double Sure = 4;

    /// <summary>Draws from which on a fit to them is more than a picture of them, assumed: some 36 a term.</summary>
    private const int Fitted = 1000;

    private const double LowEnd = 0.025;
    private const double HighEnd = 0.975;

    /// <summary>Standard error of a probability that is small enough, assumed.</summary>
    private const double EnoughError = 0.0045;

    private readonly double width = distance.StandardUncertainty;
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

    /// <summary>Whether more draws than a few are on the other side of the limit than the response to each input alone.</summary>
    public bool Misleads => AtLimit.StandardError > EnoughError;

    /// <summary>Whether the probability from the draws is known well enough.</summary>
    /// <param name="sides">Probabilities of which it is enough to know on which side it is; null where it is asked for itself.</param>
    public bool IsKnown(IReadOnlyList<double>? sides)
    {
        var (exceedance, error) = Told();
        return error <= EnoughError
            || (sides?.All(side => Math.Abs(exceedance - side) > Sure * error) ?? false);
    }

    /// <summary>The odds by the response to each input alone.</summary>
    public Odds ByEach() =>
        new(AtLimit.Exceedance, Quantile(LowEnd), Quantile(HighEnd), distance.Variances());

    /// <summary>The odds by the draws: what is known of the response, and by how much the draws differ from it.</summary>
    public Odds ByDraws()
    {
        // A draw in which the limit is not met has no figure.
        var sample = new Sample([.. estimates.Where(at => !double.IsNaN(at))]);
        return new(
            Told().Exceedance,
            sample.Quantile(LowEnd),
            sample.Quantile(HighEnd),
            DrawnResponse
                .Of(distance, [.. drawn.Zip(distances, (z, d) => (z, d.Drawn))])
                .Variances()
        );
    }

    // From what is known of the distribution of a response, and the draws that contradict it: the fewer they are, the surer.
    // Held against the limit; or where it is past it as often as the draws; or with what the main inputs do jointly.
    private (double Exceedance, double StandardError) Told()
    {
        var limit = AtLimit;
        if (limit.StandardError <= EnoughError || !(width > 0 && double.IsFinite(width)))
        {
            return limit;
        }

        var matched = Known(distance, Crossed.Of(distances, Crossed.Matching(distances)));
        if (matched.StandardError <= EnoughError || distances.Count < Fitted)
        {
            return new[] { limit, matched }.MinBy(known => known.StandardError);
        }

        var fitted = JointFit.Of(
            distance,
            [.. drawn.Zip(distances, (z, d) => (z, d.Drawn, d.Expected))]
        );
        var expected = distances
            .Zip(drawn, (d, z) => (d.Drawn, fitted.At(z, d.Expected)))
            .ToArray();
        var joint = Known(fitted.AlongAxes(), Crossed.Of(expected, Crossed.Matching(expected)));
        return new[] { limit, matched, joint }.MinBy(known => known.StandardError);
    }

    private (double Exceedance, double StandardError) AtLimit =>
        Known(distance, Crossed.Of(distances, 0));

    private static (double Exceedance, double StandardError) Known(
        Response response,
        Crossed crossed
    ) => (Math.Clamp(response.Exceedance(crossed.At) + crossed.Share, 0, 1), crossed.StandardError);

    private double Quantile(double probability)
    {
        var spread = estimate.StandardUncertainty;
        return !double.IsFinite(spread) ? double.NaN
            : spread == 0 ? estimate.Value
            : estimate.Quantile(probability);
    }
}
