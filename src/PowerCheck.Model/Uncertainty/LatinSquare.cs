using MathNet.Numerics;
using MathNet.Numerics.Random;

namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// Deviates for Monte Carlo: of each input one from each equally likely slice, the slices shuffled (Latin square sampling),
/// which converges faster than free draws where the inputs act mostly one by one. Sources: jcgm101, latinsquare.
/// </summary>
public static class LatinSquare
{
    /// <summary>The deviates; the same seed gives the same, whatever other inputs there are.</summary>
    /// <param name="seeds">A seed an input.</param>
    /// <param name="count">How many draws.</param>
    /// <returns>A row of deviates a draw.</returns>
    public static double[][] Deviates(IReadOnlyList<int> seeds, int count)
    {
        var rows = new double[count][];
        for (var row = 0; row < count; row++)
        {
            rows[row] = new double[seeds.Count];
        }

        for (var n = 0; n < seeds.Count; n++)
        {
            var random = new MersenneTwister(seeds[n], threadSafe: false);
            var slices = Combinatorics.GeneratePermutation(count, random);
            for (var row = 0; row < count; row++)
            {
                rows[row][n] = Response.Deviate((slices[row] + Inside(random)) / count);
            }
        }

        return rows;
    }

    // Never 0 or 1, where the deviate is infinite.
    private static double Inside(MersenneTwister random) => Math.Max(1e-9, random.NextDouble());
}
