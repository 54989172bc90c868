using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Spreads;

/// <summary>What the spread of the inputs makes of every limit (M12).</summary>
/// <param name="Used">How it was carried.</param>
/// <param name="Rigs">How many rigs were computed for it.</param>
/// <param name="Inputs">The figures that may be off.</param>
/// <param name="Chances">How sure each finding is; null where nothing can be said.</param>
public sealed record Spreading(
    SpreadMethod Used,
    int Rigs,
    IReadOnlyList<Input> Inputs,
    IReadOnlyList<Chance?> Chances
)
{
    /// <summary>Spreads a rig.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="complete">The same, completed.</param>
    /// <param name="findings">What was found of it.</param>
    /// <param name="asked">How it is to be carried; linear gives way to Monte Carlo where it would mislead.</param>
    /// <param name="sides">Probabilities of which it is enough to know on which side each is; null where they are asked for themselves.</param>
    /// <param name="stop">Tells that nobody waits for it any more.</param>
    public static Spreading Of(
        RigLabel label,
        RigCompletion complete,
        IReadOnlyList<Finding> findings,
        SpreadMethod asked,
        IReadOnlyList<double>? sides = null,
        CancellationToken stop = default
    )
    {
        var filled = RigFill.Of(label, complete);
        var inputs = Input.Of(filled, complete.Ledger.Assumptions);
        if (asked == SpreadMethod.None)
        {
            return new(asked, 0, inputs, new Chance?[findings.Count]);
        }

        var reaches = new Reaches(filled, inputs, findings);
        var carried = Carrying.Of(
            reaches.At,
            [.. inputs.Select(input => input.Seed)],
            asked,
            sides,
            stop
        );
        var chances = reaches.Tracked.Select(
            (finding, n) => Chance(finding, carried.Odds[n], inputs)
        );
        var told = reaches
            .Tracked.Zip(chances)
            .ToDictionary(pair => pair.First, pair => pair.Second);
        return new(
            carried.Used,
            carried.Rigs,
            inputs,
            [.. findings.Select(finding => told.GetValueOrDefault(finding))]
        );
    }

    private static Chance Chance(Finding finding, Odds odds, IReadOnlyList<Input> inputs)
    {
        var variance = odds.Variances.Sum();
        var shares = odds
            .Variances.Select(
                (v, n) =>
                    new Share(
                        inputs[n].Figure.Path,
                        variance > 0 ? v / variance : 0,
                        inputs[n].Basis == SpreadBasis.Assumed
                    )
            )
            .OrderByDescending(share => share.Part);
        return new(
            odds.Exceedance,
            Reaches.Unscaled(finding, odds.Low),
            Reaches.Unscaled(finding, odds.High),
            Math.Sqrt(variance),
            [.. shares.Where(share => share.Part >= LeastShare)]
        );
    }

    /// <summary>Share of the variance from which on an input is worth naming, assumed.</summary>
    private const double LeastShare = 0.01;
}
