namespace PowerCheck.Model.Uncertainty;

/// <summary>Propagation of each input by itself. Source: jcgm100, 5.1.</summary>
public static class FirstOrder
{
    /// <summary>
    /// Distance from the best estimate at which the inputs are tried [standard deviations]: far enough out to see a limit
    /// where it matters, near enough to be likely; assumed.
    /// </summary>
    private const double Step = 1.4;

    /// <summary>Share of a quantity's variance under which an input's curvature is left out, assumed.</summary>
    private const double Small = 0.002;

    /// <summary>How the quantities answer to each input.</summary>
    /// <param name="quantities">The quantities.</param>
    /// <param name="inputs">How many inputs there are.</param>
    /// <param name="stop">Tells that nobody waits for them any more.</param>
    /// <returns>A response a quantity.</returns>
    public static Response[] Of(Quantities quantities, int inputs, CancellationToken stop = default)
    {
        var best = quantities(new double[inputs]);
        var up = quantities.AtEach(
            [.. Enumerable.Range(0, inputs).Select(n => Moved(n, Step))],
            stop
        );
        int[] counted = [.. Enumerable.Range(0, inputs).Where(n => Counts(best, up, n))];
        var down = new double[]?[inputs];
        var moved = quantities.AtEach([.. counted.Select(n => Moved(n, -Step))], stop);
        foreach (var (n, at) in counted.Zip(moved))
        {
            down[n] = at;
        }

        return [.. best.Select((value, at) => Response(value, at, up, down))];

        double[] Moved(int n, double deviate)
        {
            var deviates = new double[inputs];
            deviates[n] = deviate;
            return deviates;
        }
    }

    // Whether an input has a part worth following in any quantity.
    private static bool Counts(double[] best, double[][] up, int n)
    {
        for (var at = 0; at < best.Length; at++)
        {
            var all = up.Sum(moved => Squared(moved[at] - best[at]));
            if (Squared(up[n][at] - best[at]) > Small * all)
            {
                return true;
            }
        }

        return false;
    }

    private static Response Response(double value, int at, double[][] up, double[]?[] down)
    {
        var slopes = new double[up.Length];
        var bends = new double[up.Length];
        var all = up.Sum(moved => Squared(moved[at] - value));
        for (var n = 0; n < up.Length; n++)
        {
            var above = up[n][at] - value;
            // By what it brings to this quantity alone, whatever the others are.
            var below =
                down[n] is { } moved && Squared(above) > Small * all ? moved[at] - value : -above;
            slopes[n] = (above - below) / (2 * Step);
            bends[n] = (above + below) / (2 * Step * Step);
        }

        return new(value, slopes, bends);
    }

    private static double Squared(double x) => x * x;
}
