using MathNet.Numerics.LinearAlgebra;

namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// Least squares of what draws differ by from the response to each input alone, near 0: where it matters on which side of 0
/// a quantity is.
/// </summary>
public static class JointFit
{
    /// <summary>How many inputs are taken jointly, assumed enough.</summary>
    private const int Most = 6;

    /// <summary>Distance from 0 from which on a draw counts for less [standard uncertainties], assumed.</summary>
    private const double Near = 0.7;

    /// <summary>Distance from 0 beyond which nothing differs [standard uncertainties], assumed.</summary>
    private const double Far = 1.5;

    /// <summary>Part of a draw that holds every term near nothing until draws say otherwise, assumed.</summary>
    private const double Holding = 1e-3;

    /// <summary>The response that fits draws best.</summary>
    /// <param name="each">The response to each input alone.</param>
    /// <param name="draws">The deviates of the inputs of each draw, and the quantity.</param>
    public static JointResponse Of(
        Response each,
        IReadOnlyList<(double[] Deviates, double At)> draws
    ) => Of(each, [.. draws.Select(draw => (draw.Deviates, draw.At, each.At(draw.Deviates)))]);

    /// <summary>The response that fits draws best.</summary>
    /// <param name="each">The response to each input alone.</param>
    /// <param name="draws">The deviates of the inputs of each draw, the quantity, and what the response says that it is.</param>
    public static JointResponse Of(
        Response each,
        IReadOnlyList<(double[] Deviates, double At, double Expected)> draws
    )
    {
        var variances = each.Variances();
        int[] main =
        [
            .. Enumerable
                .Range(0, variances.Length)
                .Where(n => variances[n] > 0)
                .OrderByDescending(n => variances[n])
                .Take(Most),
        ];
        var found = Solved(each, main, draws);
        return new(
            each,
            main,
            found[0],
            found.SubVector(1, main.Length),
            Bends(found, main.Length)
        );
    }

    private static Vector<double> Solved(
        Response each,
        int[] main,
        IReadOnlyList<(double[] Deviates, double At, double Expected)> draws
    )
    {
        var width = each.StandardUncertainty;
        var count = 1 + main.Length + (main.Length * (main.Length + 1) / 2);
        // A symmetric matrix: what lies over its diagonal is left out, for solving does not look at it.
        var squares = new double[count][];
        for (var i = 0; i < count; i++)
        {
            squares[i] = new double[count];
        }

        var products = new double[count];
        foreach (var (deviates, at, expected) in draws)
        {
            var terms = Terms(main, deviates, count);
            var weight = 1 / (1 + Math.Pow(expected / (Near * width), 4));
            var differs = Bounded(at) - Bounded(expected);
            for (var i = 0; i < count; i++)
            {
                var (row, part) = (squares[i], weight * terms[i]);
                products[i] += part * differs;
                for (var j = 0; j <= i; j++)
                {
                    row[j] += part * terms[j];
                }
            }
        }

        return (
            Matrix<double>.Build.DenseOfRowArrays(squares)
            + Matrix<double>.Build.DenseDiagonal(count, count, Holding * draws.Count)
        )
            .Cholesky()
            .Solve(Vector<double>.Build.Dense(products));

        double Bounded(double value) => Math.Clamp(value, -Far * width, Far * width);
    }

    // One, each main input, and the product of each two.
    private static double[] Terms(int[] main, double[] deviates, int count)
    {
        var terms = new double[count];
        terms[0] = 1;
        var term = 1;
        foreach (var n in main)
        {
            terms[term++] = deviates[n];
        }

        for (var i = 0; i < main.Length; i++)
        {
            for (var j = i; j < main.Length; j++)
            {
                terms[term++] = deviates[main[i]] * deviates[main[j]];
            }
        }

        return terms;
    }

    private static Matrix<double> Bends(Vector<double> found, int main)
    {
        var bends = Matrix<double>.Build.Dense(main, main);
        var term = 1 + main;
        for (var i = 0; i < main; i++)
        {
            for (var j = i; j < main; j++, term++)
            {
                bends[i, j] += found[term] / 2;
                bends[j, i] += found[term] / 2;
            }
        }

        return bends;
    }
}
