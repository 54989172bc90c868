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
        double[] crossed =
        [
            .. LatinSquare.Deviates([.. Enumerable.Range(Seed, 1)], Tried).Select(z => Sign(z[0])),
        ];
        var rounds = 0;
        while (rounds < 24 && Error(crossed) > 0.0045)
        {
            rounds++;
            crossed =
            [
                .. crossed,
                .. LatinSquare
                    .Deviates([.. Enumerable.Range(Seed + rounds, 1)], Round)
                    .Select(z => Sign(z[0])),
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

        // Of the mean of what was crossed; as if one more had where none has.
        static double Error(double[] crossed) =>
            Math.Sqrt(
                Math.Max(crossed.PopulationVariance(), 1.0 / (crossed.Length + 2)) / crossed.Length
            );
    }

    [Fact]
    public void Each_round_is_drawn_from_the_next_seed()
    {
        var drawn = new List<double>();
        Drawn(z =>
        {
            drawn.Add(z);
            return Crossing(z, 1.7, 9);
        });

        Assert.Equal(
            LatinSquare.Deviates([.. Enumerable.Range(Seed, 1)], Tried).Select(z => z[0]),
            drawn.Skip(3).Take(Tried)
        );
        for (var round = 1; round <= 2; round++)
        {
            Assert.Equal(
                LatinSquare
                    .Deviates([.. Enumerable.Range(Seed + round, 1)], Round)
                    .Select(z => z[0]),
                drawn.Skip(3 + Tried + ((round - 1) * Round)).Take(Round)
            );
        }
    }
}
