using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Spreads;

/// <summary>How the deviates of the inputs were carried to the limits.</summary>
/// <param name="Used">By which method.</param>
/// <param name="Rigs">How many times the quantities were computed.</param>
/// <param name="Odds">The odds of each limit.</param>
public sealed record Carrying(SpreadMethod Used, int Rigs, IReadOnlyList<Odds> Odds)
{
    /// <summary>Joint draws against which the response to each input alone is tried, assumed.</summary>
    private const int Tried = 320;

    /// <summary>Draws of one round of Monte Carlo, assumed.</summary>
    private const int Round = 256;

    /// <summary>Most rounds of Monte Carlo, assumed.</summary>
    private const int MostRounds = 24;

    /// <summary>
    /// Carries the deviates of the inputs to pairs of quantities (distance past a limit, estimate): by each input alone,
    /// tried against joint draws, and by Monte Carlo where asked for or where the draws say that this would mislead.
    /// Source: jcgm101, 8.
    /// </summary>
    /// <param name="quantities">The pairs, one after the other.</param>
    /// <param name="seeds">What the draws of each input start from.</param>
    /// <param name="asked">The method asked for.</param>
    /// <param name="sides">Probabilities of which it is enough to know on which side each is; null where they are asked for themselves.</param>
    /// <param name="stop">Tells that nobody waits for it any more.</param>
    public static Carrying Of(
        Quantities quantities,
        IReadOnlyList<int> seeds,
        SpreadMethod asked,
        IReadOnlyList<double>? sides = null,
        CancellationToken stop = default
    )
    {
        var rigs = 0;
        double[] Counted(double[] deviates)
        {
            Interlocked.Increment(ref rigs);
            return quantities(deviates);
        }

        var limits = FirstOrder
            .Of(Counted, seeds.Count, stop)
            .Chunk(2)
            .Select((pair, n) => new Carried(pair[0], pair[1], 2 * n))
            .ToArray();
        Draw(Counted, limits, LatinSquare.Deviates(seeds, Tried), stop);
        // Each limit is drawn for until it is known, so that its probability does not hang on what else is looked at.
        Carried[] drawn =
            asked == SpreadMethod.Linear ? [.. limits.Where(limit => limit.Misleads)] : limits;
        var open = Open(drawn);
        for (var round = 1; round <= MostRounds && open.Length > 0; round++)
        {
            Draw(
                Counted,
                open,
                LatinSquare.Deviates([.. seeds.Select(seed => unchecked(seed + round))], Round),
                stop
            );
            open = Open(open);
        }

        return new(
            drawn.Length > 0 ? SpreadMethod.Montecarlo : SpreadMethod.Linear,
            rigs,
            [.. limits.Select(limit => drawn.Contains(limit) ? limit.ByDraws() : limit.ByEach())]
        );

        Carried[] Open(Carried[] some) => [.. some.Where(limit => !limit.IsKnown(sides))];
    }

    private static void Draw(
        Quantities quantities,
        Carried[] limits,
        double[][] draws,
        CancellationToken stop
    )
    {
        foreach (var (deviates, at) in draws.Zip(quantities.AtEach(draws, stop)))
        {
            Array.ForEach(limits, limit => limit.Add(deviates, at));
        }
    }
}
