using PowerCheck.Model.Findings;

namespace PowerCheck.Model.Shortlists;

/// <summary>
/// The last value of a figure at which limits hold with the spread of all figures. Each value takes many rigs: so each tells,
/// by its widths, where the next is worth trying.
/// </summary>
/// <param name="tried">The rig with the figure.</param>
/// <param name="held">The limits.</param>
/// <param name="inspector">Inspects rigs.</param>
internal sealed class SureEdge(Tried tried, Held held, Inspector inspector)
{
    /// <summary>Most values that are weighed, assumed enough.</summary>
    private const int Most = 12;

    /// <summary>How far short of a foretold edge the next value is tried, as a share: most likely it holds, assumed.</summary>
    private const double Short = 0.005;

    /// <summary>The value, with the limit that gives way beyond it; null where none does.</summary>
    /// <param name="within">A value at which they hold.</param>
    /// <param name="guess">Where the edge may be.</param>
    /// <param name="end">The furthest value that parts have.</param>
    public (double Edge, Finding SetBy)? Of(double within, double guess, double end)
    {
        var known = new Known(within, double.NaN, null);
        var value = guess;
        for (var n = 0; n < Most && !double.IsNaN(value); n++)
        {
            var findings = inspector.Weighed(tried.With(value), held);
            var broken = held.Broken(findings);
            if (broken is not null && value.Equals(tried.Beyond(known.Holds, end > known.Holds)))
            {
                return (known.Holds, broken);
            }

            known = broken is null
                ? known with
                {
                    Holds = tried.Rounded(value, value > end),
                }
                : known with
                {
                    Breaks = value,
                    SetBy = broken,
                };
            value = Next(new(findings), known, value, end);
        }

        return known.SetBy is { } setBy ? (known.Holds, setBy) : null;
    }

    // Where to look after a value: at the edge that its widths foretell, until the limits hold there and a step beyond they do not.
    private double Next(Widths widths, Known known, double value, double end)
    {
        var beyond = tried.Beyond(known.Holds, end > known.Holds);
        if (known.Holds.Equals(end))
        {
            return double.NaN;
        }

        var foretold = Foretold(widths, known.Holds, end);
        if (known.Breaks.Equals(value))
        {
            return IsBetween(foretold, known.Holds, value)
                ? foretold
                : tried.Between(value, known.Holds);
        }

        var isFurther = double.IsNaN(known.Breaks)
            ? foretold.Equals(end) || IsBetween(foretold, beyond, end)
            : IsBetween(foretold, beyond, known.Breaks);
        return isFurther ? foretold
            : IsBetween(beyond, known.Holds, end) ? beyond
            : double.NaN;
    }

    // The last value at which the limits held, the last at which they did not, and the one that gave way there.
    private readonly record struct Known(double Holds, double Breaks, Finding? SetBy);

    private static bool IsBetween(double value, double one, double other) =>
        (value - one) * (other - value) > 0;

    private double Foretold(Widths widths, double within, double end)
    {
        bool Holds(double at) =>
            held.Broken(widths.Weigh(Inspector.Limits(tried.With(at)))) is null;
        if (Holds(end))
        {
            return end;
        }

        var last = tried.Last(end, within, Holds);
        return tried.Sought.Whole
            ? last
            : tried.Rounded(last * (end > within ? 1 - Short : 1 + Short), within > end);
    }
}
