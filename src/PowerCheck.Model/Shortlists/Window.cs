using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>Judges a rig.</summary>
/// <param name="label">The rig.</param>
internal delegate IReadOnlyList<Finding> Judge(RigLabel label);

/// <summary>The values of one figure at which every limit holds that it can make hold.</summary>
internal sealed class Window
{
    private readonly RigLabel rig;
    private readonly SoughtFigure sought;
    private readonly LabelFigure<RigLabel> figure;
    private readonly Judge judge;

    /// <summary>Looks for the values.</summary>
    /// <param name="rig">The rig, its part open.</param>
    /// <param name="sought">The figure.</param>
    /// <param name="judge">How a rig is judged.</param>
    public Window(RigLabel rig, SoughtFigure sought, Judge judge)
    {
        (this.rig, this.sought, this.judge) = (rig, sought, judge);
        figure = RigFigures
            .Of(rig)
            .Single(f => string.Equals(f.Path, sought.Path, StringComparison.Ordinal));
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

        var least = low > 0 ? Edge(held, values[low - 1], values[low]) : double.NaN;
        var most =
            high < values.Count - 1 ? Edge(held, values[high + 1], values[high]) : double.NaN;
        Requirements = [.. Bound(held, least, up: false), .. Bound(held, most, up: true)];
        Settled = double.IsNaN(least) && double.IsNaN(most) ? rig : With(Middle(least, most));
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

    private IReadOnlyList<Finding> Findings(double value) => judge(With(value));

    private RigLabel With(double value) => figure.Write(rig, figure.Unit.ToSi(value));
}
