using System.Collections.Concurrent;
using MathNet.Numerics.Statistics;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>How many rounds of draws there are and what they start from (M12), by drawing them again.</summary>
public sealed class CarryingRoundsTests
{
    private const int Seed = 11;
    private const int Tried = 320;
    private const int Round = 256;

    private static Carrying Drawn(Func<double, double> distance) =>
        Carrying.Of(z => [distance(z[0]), 100 + z[0]], [Seed], SpreadMethod.Montecarlo);

    // Past its limit beyond a deviate on one side and short of it on the other, where the response says otherwise.
    private static double Crossing(double z, double over, double under) =>
        z < -over ? 1
        : z > under ? -1
        : z;

    [Theory]
    [InlineData(9, 9)]
    [InlineData(2.2, 9)]
    [InlineData(1.7, 9)]
    [InlineData(1.57, 9)]
    [InlineData(1.9, 2.2)]
    [InlineData(2.2, 1.9)]
    [InlineData(1.73, 2.22)]
    [InlineData(1.6, 1.6)]
    public void Rounds_of_draws_follow_until_a_probability_is_known_to_0_0045_or_24_are_done(
        double over,
        double under
    )
    {
        double[] crossed = [.. LatinSquare.Deviates([Seed], Tried).Select(z => Sign(z[0]))];
        var rounds = 0;
        while (rounds < 24 && Error(crossed) > 0.0045)
        {
            rounds++;
            crossed =
            [
                .. crossed,
                .. LatinSquare.Deviates([Seed + rounds], Round).Select(z => Sign(z[0])),
            ];
        }

        var carried = Drawn(z => Crossing(z, over, under));

        // The best estimate, the input on both sides of it, and the draws.
        Assert.Equal(3 + crossed.Length, carried.Rigs);
        Assert.Equal(0.5 + crossed.Average(), Assert.Single(carried.Odds).Exceedance, 1e-9);

        double Sign(double z) =>
            z < -over ? 1
            : z > under ? -1
            : 0;

        // Of the mean of what was crossed, as if one more had.
        static double Error(double[] crossed) =>
            Math.Sqrt((crossed.PopulationVariance() + (1.0 / crossed.Length)) / crossed.Length);
    }

    [Fact]
    public void Each_round_is_drawn_from_the_next_seed()
    {
        // They come from several threads, in no order.
        var drawn = new ConcurrentBag<double>();
        var rigs = Drawn(z =>
        {
            drawn.Add(z);
            return Crossing(z, 1.7, 9);
        }).Rigs;
        var rounds = (rigs - 3 - Tried) / Round;

        Assert.True(rounds >= 2);
        double[] expected =
        [
            0,
            1.4,
            -1.4,
            .. LatinSquare.Deviates([Seed], Tried).Select(z => z[0]),
            .. Enumerable
                .Range(1, rounds)
                .SelectMany(round => LatinSquare.Deviates([Seed + round], Round))
                .Select(z => z[0]),
        ];
        Assert.Equal(expected.Order(), drawn.Order());
    }
}
