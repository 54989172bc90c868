using PowerCheck.Model.Findings;

namespace PowerCheck.Model.Shortlists;

/// <summary>The values of one figure at which every limit holds that it can make hold.</summary>
internal sealed class Window
{
    /// <summary>Limits by which two values do not differ, assumed.</summary>
    private const double Alike = 0.02;

    private readonly Tried tried;
    private readonly Inspect inspect;

    /// <summary>Looks for the values.</summary>
    /// <param name="tried">The rig with the figure.</param>
    /// <param name="inspect">How a rig is inspected.</param>
    public Window(Tried tried, Inspect inspect)
    {
        (this.tried, this.inspect) = (tried, inspect);
        var values = tried.Values;
        var found = values.Select(Findings).ToArray();
        var best = BestOf(found);
        Held = Held.Of(found[best]);
        Best = values[best];
        var holds = found.Select(at => Held.Broken(at) is null).ToArray();
        var low = best;
        var high = best;
        while (low > 0 && holds[low - 1])
        {
            low--;
        }

        while (high < values.Count - 1 && holds[high + 1])
        {
            high++;
        }

        // Of what is the better the more, too much is no bound to buy by; and the other way about.
        Least =
            low > 0 && tried.Sought.Wanted != Wanted.AtMost
                ? Edge(values[low - 1], values[low])
                : double.NaN;
        Most =
            high < values.Count - 1 && tried.Sought.Wanted != Wanted.AtLeast
                ? Edge(values[high + 1], values[high])
                : double.NaN;
    }

    /// <summary>The limits that hold within it.</summary>
    public Held Held { get; }

    /// <summary>A value within it: the best by what is good, or the middle one.</summary>
    public double Best { get; }

    /// <summary>The least value at which they hold; NaN where every lower one will do.</summary>
    public double Least { get; }

    /// <summary>The most; NaN where every higher one will do.</summary>
    public double Most { get; }

    /// <summary>The bounds, each with the limit that sets it.</summary>
    public IEnumerable<Requirement> Requirements =>
        new[] { (Edge: Least, Up: false), (Edge: Most, Up: true) }
            .Where(bound => !double.IsNaN(bound.Edge))
            .SelectMany(bound =>
                Held.Broken(Findings(tried.Beyond(bound.Edge, bound.Up))) is { } sets
                    ? [tried.Required(bound.Edge, bound.Up, sets)]
                    : Array.Empty<Requirement>()
            );

    // The value at which the most limits hold: of alike ones the best by what is good; of a window the one at which those that do
    // not hold are nearest to it, of alike ones the middle one.
    private int BestOf(IReadOnlyList<Finding>[] found)
    {
        Func<IReadOnlyList<Finding>, double> worth =
            tried.Sought.Wanted == Wanted.Between
                ? at => at.Where(finding => finding.Kind.Judged).Sum(Worth)
                : at => at.Count(Held.Is);
        double[] worths = [.. found.Select(worth)];
        var most = worths.Max() - Alike;
        int[] best = [.. Enumerable.Range(0, found.Length).Where(n => worths[n] >= most)];
        return tried.Sought.Wanted switch
        {
            Wanted.AtLeast => best[^1],
            Wanted.AtMost => best[0],
            _ => best[best.Length / 2],
        };
    }

    // A limit that holds without a caution counts for most; what another counts for is assumed.
    private static double Worth(Finding finding) =>
        finding.IsHeld ? 1
        : finding.Chance is { } chance ? 0.9 * (1 - chance.Exceedance)
        : finding.Outcome switch
        {
            Outcome.Holds => 0.8,
            Outcome.Fails => 0,
            _ => 0.5,
        };

    private double Edge(double breaks, double holds) =>
        tried.Last(breaks, holds, value => Held.Broken(Findings(value)) is null);

    private IReadOnlyList<Finding> Findings(double value) => inspect(tried.With(value));
}
