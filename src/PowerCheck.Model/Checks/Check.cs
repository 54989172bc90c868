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
    /// <returns>The verdict with its reasons.</returns>
    public static CheckResult Run(
        RigLabel label,
        SpreadMethod spread = SpreadMethod.None,
        bool remedies = false
    )
    {
        var complete = RigCompletion.Of(label);
        var inspection = complete.Inspect();
        var (found, spreading) = Weighed(label, complete, inspection, spread);
        var judgement = Judgement.Of(NeedsFinder.Fill(label, complete.Ledger.Unknowns, found));
        if (remedies)
        {
            judgement = judgement with
            {
                Findings = RemedyFinder.Fill(
                    label,
                    complete,
                    judgement.Findings,
                    changed => Judged(changed, spread)
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

    private static Judgement Judged(RigLabel label, SpreadMethod spread)
    {
        var complete = RigCompletion.Of(label);
        return Judgement.Of(
            Weighed(label, complete, complete.Inspect(), spread, outcomesAlone: true).Findings
        );
    }

    private static (IReadOnlyList<Finding> Findings, Spreading Spreading) Weighed(
        RigLabel label,
        RigCompletion complete,
        Inspection inspection,
        SpreadMethod spread,
        bool outcomesAlone = false
    )
    {
        var found = Judgement.Inspect(inspection);
        var spreading = Spreading.Of(label, complete, found, spread, outcomesAlone);
        return (Judgement.Weigh(found, spreading.Chances), spreading);
    }
}
