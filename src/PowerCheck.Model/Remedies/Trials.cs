using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Remedies;

/// <summary>Judges a rig as a caller would have it judged who asked for it.</summary>
/// <param name="label">The rig.</param>
internal delegate Judgement Judge(RigLabel label);

/// <summary>A rig with one thing of it changed to different values.</summary>
/// <param name="label">The rig as the caller knows it.</param>
/// <param name="change">The thing.</param>
/// <param name="figure">Where it stands.</param>
/// <param name="now">Its value now, in the unit of its path.</param>
/// <param name="judge">How a rig is judged.</param>
internal sealed class Trials(
    RigLabel label,
    Change change,
    LabelFigure<RigLabel> figure,
    double now,
    Judge judge
)
{
    /// <summary>A share of a limit by which it has not moved, assumed.</summary>
    private const double LeastMove = 1e-6;

    private readonly Dictionary<double, IReadOnlyList<Finding>> seen = [];
    private readonly Dictionary<double, Judgement> judged = [];

    /// <summary>The nearest value found at which a limit holds, verified by judging the rig.</summary>
    /// <param name="finding">The limit.</param>
    public Remedy For(Finding finding)
    {
        if (!Moves(finding))
        {
            return Found(double.NaN, null);
        }

        foreach (var aim in Aim.At(finding))
        {
            var values = new[] { Nearest(aim, false), Nearest(aim, true) }
                .Where(value => !double.IsNaN(value))
                .OrderBy(value => Math.Abs(Math.Log(value / now)))
                .ToArray();
            if (values.Length == 0)
            {
                break;
            }

            foreach (var value in values)
            {
                var judgement = Judged(value);
                if (Spreads.Reaches.Same(finding, judgement.Findings)?.Outcome == Outcome.Holds)
                {
                    return Found(value, judgement.Verdict);
                }
            }
        }

        return Found(double.NaN, null);
    }

    // Whether the limit is another one at either end of what is tried.
    private bool Moves(Finding finding) =>
        new[] { false, true }
            .SelectMany(up => change.Outwards(now, up).TakeLast(1))
            .Any(end =>
                Spreads.Reaches.Same(finding, Seen(end)) is not { } same
                || same.Outcome != finding.Outcome
                || !Alike(same.Reach, finding.Reach)
            );

    private static bool Alike(double a, double b) =>
        a.Equals(b) || Math.Abs(a - b) <= LeastMove * Math.Abs(b);

    private Remedy Found(double to, Verdict? verdict)
    {
        var tried = seen.Keys.Append(now).ToArray();
        return new(
            change.Path,
            figure.Unit,
            figure.Unit.ToSi(now),
            figure.Unit.ToSi(to),
            verdict,
            change.Noun,
            figure.Unit.ToSi(tried.Min()),
            figure.Unit.ToSi(tried.Max())
        );
    }

    // Outwards to the first value that meets the aim, then back towards the last that does not.
    private double Nearest(Aim aim, bool up)
    {
        var inner = now;
        foreach (var outer in change.Outwards(now, up))
        {
            if (aim.Met(Seen(outer)))
            {
                return Back(aim, inner, outer);
            }

            inner = outer;
        }

        return double.NaN;
    }

    private double Back(Aim aim, double inner, double outer)
    {
        for (
            var between = change.Between(inner, outer);
            !double.IsNaN(between);
            between = change.Between(inner, outer)
        )
        {
            (inner, outer) = aim.Met(Seen(between)) ? (inner, between) : (between, outer);
        }

        return outer;
    }

    private IReadOnlyList<Finding> Seen(double value)
    {
        if (!seen.TryGetValue(value, out var findings))
        {
            seen[value] = findings = Judgement.Limits(RigCompletion.Of(With(value)).Inspect());
        }

        return findings;
    }

    private Judgement Judged(double value)
    {
        if (!judged.TryGetValue(value, out var judgement))
        {
            judged[value] = judgement = judge(With(value));
        }

        return judgement;
    }

    private RigLabel With(double value) => figure.Write(label, figure.Unit.ToSi(value));
}
