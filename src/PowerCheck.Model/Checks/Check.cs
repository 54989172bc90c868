using PowerCheck.Model.Accessories;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Checks;

/// <summary>The check of a rig: it calls the pure functions in order and adds nothing of its own.</summary>
public static class Check
{
    /// <summary>Completes the rig, runs every load case and the course, and holds every figure against its limit.</summary>
    /// <param name="label">The rig as the caller knows it, already within the ranges of the door.</param>
    /// <returns>The verdict with its reasons.</returns>
    public static CheckResult Run(RigLabel label)
    {
        var complete = RigCompletion.Of(label);
        var inspection = Inspect(complete);
        var findings = NeedsFinder.Fill(
            label,
            complete.Ledger.Unknowns,
            Judgement.Inspect(inspection)
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
            complete.Ledger.Assumptions
        );
    }

    /// <summary>Everything that is computed of a completed rig.</summary>
    /// <param name="complete">The rig.</param>
    public static Inspection Inspect(RigCompletion complete)
    {
        var (rig, course, _) = complete;
        var cases = CaseRunner.Run(rig);
        var drivetrain = DrivetrainRunner.Run(rig);
        var result = CourseRunner.Run(rig, course, cases);
        return new(
            rig,
            course,
            cases,
            result,
            drivetrain,
            ReceiverSupplyRunner.Run(rig.ReceiverSupply, BusVoltages(rig, cases)),
            WiringRunner.Run(rig.Leads, rig.Battery.OpenCircuitV(1), rig.Battery.ShortResistanceOhm)
        );
    }

    private static BusVoltages BusVoltages(Rig rig, LoadCases cases)
    {
        var lowest = Math.Min(
            cases.PunchAtReserve.BusVoltageV,
            Math.Min(cases[LoadCaseName.Jam].BusVoltageV, cases[LoadCaseName.Climb].BusVoltageV)
        );
        return new(cases[LoadCaseName.Level].BusVoltageV, lowest);
    }
}
