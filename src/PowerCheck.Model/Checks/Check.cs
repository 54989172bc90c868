using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Checks;

/// <summary>The check of a rig: it calls the pure functions in order and adds nothing of its own.</summary>
public static class Check
{
    /// <summary>Completes the rig, runs every load case and the course, and holds every figure against its limit.</summary>
    /// <param name="label">The rig as the caller knows it, already within the ranges of the door.</param>
    /// <param name="spread">How the spread of its figures is carried to the limits.</param>
    /// <returns>The verdict with its reasons.</returns>
    public static CheckResult Run(RigLabel label, SpreadMethod spread = SpreadMethod.None)
    {
        var complete = RigCompletion.Of(label);
        var inspection = Inspection.Of(complete.Rig, complete.Course);
        var found = Judgement.Inspect(inspection);
        var spreading = Spreading.Of(label, complete, found, spread);
        var findings = NeedsFinder.Fill(
            label,
            complete.Ledger.Unknowns,
            Judgement.Weigh(found, spreading.Chances)
        );
        var judgement = Judgement.Of(findings);
        return new(
            judgement.Verdict,
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
}
