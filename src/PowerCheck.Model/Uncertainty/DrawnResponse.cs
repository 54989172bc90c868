namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// What draws make of the response to each input: on average over all the others, where they answer otherwise together than
/// each alone.
/// </summary>
public static class DrawnResponse
{
    /// <summary>Standard errors from which on a difference is more than the luck of the draws, assumed.</summary>
    private const double Telling = 3;

    /// <summary>
    /// The response with the slope and the curvature of every input as draws have them: the projection of the quantity on z and
    /// z² − 1, whose squares add up to what the input alone brings to the variance.
    /// Source: jcgm101, 5 (draws); the projection is common practice, no source.
    /// </summary>
    /// <param name="each">The response to each input alone.</param>
    /// <param name="draws">The deviates of the inputs of each draw, and the quantity.</param>
    public static Response Of(Response each, IReadOnlyList<(double[] Deviates, double At)> draws)
    {
        double[] differs = [.. draws.Select(draw => draw.At - each.At(draw.Deviates))];
        var mean = differs.Average();
        var spread = Math.Sqrt(differs.Average(d => (d - mean) * (d - mean)));
        var telling = Telling * spread / Math.Sqrt(draws.Count);
        return each with
        {
            Slopes = [.. each.Slopes.Select((slope, n) => slope + Part(n, z => z))],
            // z² − 1 has a variance of 2.
            Curvatures =
            [
                .. each.Curvatures.Select(
                    (bend, n) => bend + (Part(n, z => ((z * z) - 1) / Math.Sqrt(2)) / Math.Sqrt(2))
                ),
            ],
        };

        double Part(int input, Func<double, double> term)
        {
            var sum = 0.0;
            for (var draw = 0; draw < differs.Length; draw++)
            {
                sum += (differs[draw] - mean) * term(draws[draw].Deviates[input]);
            }

            var part = sum / differs.Length;
            return Math.Abs(part) > telling ? part : 0;
        }
    }
}
