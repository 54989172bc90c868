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
    /// <param name="outcomesAlone">Whether it is enough to know on which side of every threshold a probability is.</param>
    public static Carrying Of(
        Quantities quantities,
        IReadOnlyList<int> seeds,
        SpreadMethod asked,
        bool outcomesAlone = false
    )
    {
        var rigs = 0;
        double[] Counted(double[] deviates)
        {
            Interlocked.Increment(ref rigs);
            return quantities(deviates);
        }

        var limits = FirstOrder
            .Of(Counted, seeds.Count)
            .Chunk(2)
            .Select((pair, n) => new Carried(pair[0], pair[1], 2 * n))
            .ToArray();
        Draw(Counted, limits, LatinSquare.Deviates(seeds, Tried));
        if (asked == SpreadMethod.Linear && !limits.Any(limit => limit.Misleads))
        {
            return new(SpreadMethod.Linear, rigs, [.. limits.Select(limit => limit.ByEach())]);
        }

        for (
            var round = 1;
            round <= MostRounds && limits.Any(limit => !limit.IsKnown(outcomesAlone));
            round++
        )
        {
            Draw(
                Counted,
                limits,
                LatinSquare.Deviates([.. seeds.Select(seed => unchecked(seed + round))], Round)
            );
        }

        return new(SpreadMethod.Montecarlo, rigs, [.. limits.Select(limit => limit.ByDraws())]);
    }

    private static void Draw(Quantities quantities, Carried[] limits, double[][] draws)
    {
        foreach (var (deviates, at) in draws.Zip(quantities.AtEach(draws)))
        {
            Array.ForEach(limits, limit => limit.Add(deviates, at));
        }
    }
}
