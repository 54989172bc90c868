using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Remedies;

/// <summary>Finds what each single change of a rig does to the limits that do not hold (M14).</summary>
internal static class RemedyFinder
{
    /// <summary>The findings, with the remedies of those that fail or are in doubt.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="complete">The same, completed.</param>
    /// <param name="findings">The findings.</param>
    /// <param name="judge">How a changed rig is judged.</param>
    public static IReadOnlyList<Finding> Fill(
        RigLabel label,
        RigCompletion complete,
        IReadOnlyList<Finding> findings,
        Judge judge
    )
    {
        if (!findings.Any(IsOpen))
        {
            return findings;
        }

        var trials = Trials(label, complete, judge);
        return
        [
            .. findings.Select(finding =>
                IsOpen(finding)
                    ? finding with
                    {
                        Remedies =
                        [
                            .. trials.Select(trial => trial.For(finding)).Order(SmallestFirst),
                        ],
                    }
                    : finding
            ),
        ];
    }

    // With spread a check takes a thousand rigs: only for the limit that decides.
    private static bool IsOpen(Finding finding) =>
        finding is { Kind.Judged: true, Outcome: Outcome.Fails or Outcome.Doubtful }
        && (finding.Chance is null || finding.Decides);

    // A tolerance between two ends is of the part that is there, and says nothing of another.
    private static Trials[] Trials(RigLabel label, RigCompletion complete, Judge judge)
    {
        var filled = RigFill.Of(label, complete);
        var figures = RigFigures
            .Of(filled)
            .ToDictionary(figure => figure.Path, StringComparer.Ordinal);
        var assumptions = complete.Ledger.Assumptions;
        return
        [
            .. from change in Change.All
            let figure = figures[change.Path]
            let now = Change.Now(figure, filled, assumptions)
            where
                now > 0
                && label.Tolerances.GetValueOrDefault(change.Path, Spread.None).Kind
                    != SpreadKind.Interval
            select new Trials(label, Within(change, label, figures), figure, now, judge),
        ];
    }

    // A current that is kept for ever is never above the one that is kept for seconds: where one is given it bounds the other.
    private static Change Within(
        Change change,
        RigLabel label,
        Dictionary<string, LabelFigure<RigLabel>> figures
    )
    {
        double Given(string? path, double none) =>
            path is not null && figures[path].Read(label) is { } si
                ? figures[path].Unit.FromSi(si)
                : none;
        return change with
        {
            Least = Math.Max(change.Least, Given(change.Over, 0)),
            Most = Math.Min(change.Most, Given(change.Under, double.PositiveInfinity)),
        };
    }

    // The smallest relative change first, what is counted first where both are alike, none last.
    private static readonly Comparer<Remedy> SmallestFirst = Comparer<Remedy>.Create(
        (a, b) =>
        {
            var order = Size(a).CompareTo(Size(b));
            return order != 0 ? order : IsCounted(b).CompareTo(IsCounted(a));
        }
    );

    private static double Size(Remedy remedy) =>
        remedy.Verdict is null
            ? double.PositiveInfinity
            : Math.Abs(Math.Log(remedy.To / remedy.From));

    private static bool IsCounted(Remedy remedy) =>
        Change
            .All.Single(change => string.Equals(change.Path, remedy.Path, StringComparison.Ordinal))
            .Whole;
}
