using PowerCheck.Model.Findings;
using PowerCheck.Model.Remedies;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Checks;

/// <summary>The check of a rig: it calls the pure functions in order and adds nothing of its own.</summary>
public static class Check
{
    /// <summary>Completes the rig, runs every load case and the course, and holds every figure against its limit.</summary>
    /// <param name="label">The rig as the caller knows it, already within the ranges of the door.</param>
    /// <param name="spread">How the spread of its figures is carried to the limits.</param>
    /// <param name="remedies">Whether it is sought what would make the limits hold that do not.</param>
    /// <param name="stop">Tells that nobody waits for the answer any more.</param>
    /// <returns>The verdict with its reasons.</returns>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public static CheckResult Run(
        RigLabel label,
        SpreadMethod spread = SpreadMethod.None,
        bool remedies = false,
        CancellationToken stop = default
    )
    {
        stop.ThrowIfCancellationRequested();
        var complete = RigCompletion.Of(label);
        var inspection = complete.Inspect();
        var (found, spreading) = Weighed(label, complete, inspection, spread, stop);
        var judgement = Judgement.Of(NeedsFinder.Fill(label, complete.Ledger.Unknowns, found));
        if (remedies)
        {
            judgement = judgement with
            {
                Findings = RemedyFinder.Fill(
                    label,
                    complete,
                    judgement.Findings,
                    changed =>
                        Judgement.Of(Weighed(changed, spread, Thresholds.Turns, only: null, stop))
                ),
            };
        }

        return new(
            judgement.Verdict,
            spread == SpreadMethod.None ? null : judgement.Confidence,
            judgement.Summary(inspection),
            judgement.Findings,
            inspection.Cases,
            inspection.Result.Temperatures,
            inspection.Result.Endurance,
            inspection.ReceiverSupply,
            inspection.Drivetrain,
            inspection.Wiring,
            complete.Ledger.Assumptions,
            new(spread, spreading.Used, spreading.Rigs),
            spreading.Inputs
        );
    }

    /// <summary>Every finding of a rig, as sure as it is, in no order.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="spread">How the spread of its figures is carried to the limits.</param>
    /// <param name="sides">Probabilities of which it is enough to know on which side each is.</param>
    /// <param name="only">The limits that are looked at; all when null.</param>
    /// <param name="stop">Tells that nobody waits for it any more.</param>
    internal static IReadOnlyList<Finding> Weighed(
        RigLabel label,
        SpreadMethod spread,
        IReadOnlyList<double> sides,
        Func<Finding, bool>? only,
        CancellationToken stop
    )
    {
        stop.ThrowIfCancellationRequested();
        var complete = RigCompletion.Of(label);
        var all = Judgement.Inspect(complete.Inspect());
        IReadOnlyList<Finding> found = only is null ? all : [.. all.Where(only)];
        var spreading = Spreading.Of(label, complete, found, spread, sides, stop);
        return Judgement.Weigh(found, spreading.Chances);
    }

    private static (IReadOnlyList<Finding> Findings, Spreading Spreading) Weighed(
        RigLabel label,
        RigCompletion complete,
        Inspection inspection,
        SpreadMethod spread,
        CancellationToken stop
    )
    {
        var found = Judgement.Inspect(inspection);
        var spreading = Spreading.Of(label, complete, found, spread, sides: null, stop);
        return (Judgement.Weigh(found, spreading.Chances), spreading);
    }
}
