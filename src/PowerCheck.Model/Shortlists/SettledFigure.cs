using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Shortlists;

/// <summary>A figure of the sought part, settled at what it needs.</summary>
/// <param name="Rig">The rig with it.</param>
/// <param name="Requirements">Its bounds; empty where any value will do.</param>
internal sealed record SettledFigure(RigLabel Rig, IReadOnlyList<Requirement> Requirements)
{
    /// <summary>How often a window is foretold, assumed enough.</summary>
    private const int Most = 4;

    /// <summary>Settles a figure by best estimates.</summary>
    /// <param name="tried">The rig with the figure.</param>
    public static SettledFigure Of(Tried tried)
    {
        var window = new Window(tried, Inspector.Limits);
        return new(At(tried, window, window.Least, window.Most), [.. window.Requirements]);
    }

    /// <summary>Settles a figure with the spread of all figures.</summary>
    /// <param name="tried">The rig with the figure.</param>
    /// <param name="inspector">Inspects rigs.</param>
    public static SettledFigure Of(Tried tried, Inspector inspector)
    {
        var (window, held) = Foretold(tried, inspector);
        var values = tried.Values;

        // Where no bound is foretold, the furthest value that parts have is tried.
        (double Edge, Requirement[] Required) Bound(Wanted unwanted, double guess, double end) =>
            tried.Sought.Wanted != unwanted
            && new SureEdge(tried, held, inspector).Of(
                window.Best,
                double.IsNaN(guess) ? end : guess,
                end
            )
                is { } found
                ? (found.Edge, [tried.Required(found.Edge, end > window.Best, found.SetBy)])
                : (double.NaN, []);

        var least = Bound(Wanted.AtMost, window.Least, values[0]);
        var most = Bound(Wanted.AtLeast, window.Most, values[^1]);
        return new(At(tried, window, least.Edge, most.Edge), [.. least.Required, .. most.Required]);
    }

    // Widths that are taken over from another rig may foretell too much: so from the value that does best by best estimates, then
    // again from those that were foretold; the one counts at which the most limits hold.
    private static (Window Window, Held Held) Foretold(Tried tried, Inspector inspector)
    {
        var found = new List<(Window Window, Held Held)>();
        var window = new Window(tried, Inspector.Limits);
        while (found.Count < Most)
        {
            var best = window.Best;
            var widths = new Widths(inspector.Weighed(tried.With(best)));
            window = new(tried, rig => widths.Weigh(Inspector.Limits(rig)));
            var findings = inspector.Weighed(tried.With(window.Best));
            found.Add((window, window.Held.Also(findings)));
            if (window.Best.Equals(best) || window.Held.Broken(findings) is null)
            {
                break;
            }
        }

        return found.MaxBy(it => it.Held.Count);
    }

    private static RigLabel At(Tried tried, Window window, double least, double most) =>
        !double.IsNaN(least) || !double.IsNaN(most) ? tried.With(tried.Middle(least, most))
        : tried.Sought.LeftOut ? tried.Rig
        : tried.With(window.Best);
}
