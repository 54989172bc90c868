using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>Finds what holds of a rig and what does not.</summary>
/// <param name="rig">The rig.</param>
internal delegate IReadOnlyList<Finding> Inspect(RigLabel rig);

/// <summary>The values of one figure at which every limit holds that it can make hold.</summary>
internal sealed class Window
{
    private readonly RigLabel rig;
    private readonly SoughtFigure sought;
    private readonly LabelFigure<RigLabel> figure;
    private readonly Inspect inspect;

    /// <summary>Looks for the values.</summary>
    /// <param name="rig">The rig, its part open.</param>
    /// <param name="sought">The figure.</param>
    /// <param name="inspect">How a rig is inspected.</param>
    public Window(RigLabel rig, SoughtFigure sought, Inspect inspect)
    {
        (this.rig, this.sought, this.inspect) = (rig, sought, inspect);
        figure = sought.In(rig);
        var values = sought.Values;
        var found = values.Select(Findings).ToArray();
        var best = Best(found);
        var held = found[best].Where(IsHeld).ToArray();
        var holds = found.Select(at => Broken(held, at) is null).ToArray();
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
        var least =
            low > 0 && sought.Wanted != Wanted.AtMost
                ? Edge(held, values[low - 1], values[low])
                : double.NaN;
        var most =
            high < values.Count - 1 && sought.Wanted != Wanted.AtLeast
                ? Edge(held, values[high + 1], values[high])
                : double.NaN;
        Requirements = [.. Bound(held, least, up: false), .. Bound(held, most, up: true)];
        Settled =
            !double.IsNaN(least) || !double.IsNaN(most) ? With(Middle(least, most))
            : sought.LeftOut ? rig
            : With(values[best]);
    }

    /// <summary>The bounds of the values, each with the limit that sets it; empty where any value will do.</summary>
    public IReadOnlyList<Requirement> Requirements { get; }

    /// <summary>The rig with the figure at what it needs.</summary>
    public RigLabel Settled { get; }

    // The value at which the most limits hold: of alike ones the best by what is good, else the middle one.
    private int Best(IReadOnlyList<Finding>[] found)
    {
        var most = found.Max(at => at.Count(IsHeld));
        var best = Enumerable
            .Range(0, found.Length)
            .Where(n => found[n].Count(IsHeld) == most)
            .ToArray();
        return sought.Wanted switch
        {
            Wanted.AtLeast => best[^1],
            Wanted.AtMost => best[0],
            _ => best[best.Length / 2],
        };
    }

    private static bool IsHeld(Finding finding) =>
        finding is { Kind.Judged: true, Outcome: Outcome.Holds, Caution: false };

    // The first limit that does not hold any more, the farthest past it first; null when all hold.
    private static Finding? Broken(IReadOnlyList<Finding> held, IReadOnlyList<Finding> found) =>
        held.Where(finding => Reaches.Same(finding, found) is not { } same || !IsHeld(same))
            .MaxBy(finding =>
                Reaches.Same(finding, found) is { } same
                    ? same.Chance?.Exceedance ?? same.Severeness
                    : double.NegativeInfinity
            );

    // Between a value that breaks a limit and one that does not, in whole numbers or three digits: the last that does not.
    private double Edge(IReadOnlyList<Finding> held, double breaks, double holds)
    {
        while (true)
        {
            var middle = Rounded((breaks + holds) / 2, holds > breaks);
            if (middle.Equals(breaks) || middle.Equals(holds))
            {
                return holds;
            }

            (breaks, holds) = Broken(held, Findings(middle)) is null
                ? (breaks, middle)
                : (middle, holds);
        }
    }

    private IEnumerable<Requirement> Bound(IReadOnlyList<Finding> held, double edge, bool up)
    {
        if (double.IsNaN(edge))
        {
            yield break;
        }

        var beyond = sought.Whole ? edge + (up ? 1 : -1) : edge * (up ? 1.05 : 0.95);
        if (Broken(held, Findings(beyond)) is { } sets)
        {
            var si = figure.Unit.ToSi(edge);
            yield return new(
                sought.Path,
                figure.Unit,
                up ? double.NaN : si,
                up ? si : double.NaN,
                [],
                sets.Kind.Code,
                sets.LoadCase
            );
        }
    }

    private double Middle(double least, double most) =>
        double.IsNaN(most) ? least
        : double.IsNaN(least) ? most
        : Rounded(Math.Sqrt(least * most), up: false);

    private double Rounded(double value, bool up) =>
        sought.Whole ? Rounding.Whole(value, up) : Rounding.Digits(value, 3, up);

    private IReadOnlyList<Finding> Findings(double value) => inspect(With(value));

    private RigLabel With(double value) => figure.Write(rig, figure.Unit.ToSi(value));
}
