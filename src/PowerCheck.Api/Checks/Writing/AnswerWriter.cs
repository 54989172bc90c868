using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes what the check found as the answer that is sent.</summary>
internal static class AnswerWriter
{
    /// <summary>The answer.</summary>
    /// <param name="call">The call.</param>
    /// <param name="result">What the check found.</param>
    /// <param name="links">Where the same check can be had by a link; null where it is too long for one.</param>
    public static CheckAnswer Write(CheckCall call, CheckResult result, LinksAnswer? links) =>
        new(
            Report(call.Request.Id, result, call.Options.AllFindings),
            links,
            SafetyBlock.For(result.Findings)
        );

    /// <summary>The answer without its cautions, for where they stand once beside many.</summary>
    /// <param name="id">The id of the request.</param>
    /// <param name="result">What the check found.</param>
    /// <param name="allFindings">Whether those that hold without a caution are listed too.</param>
    public static CheckReport Report(string? id, CheckResult result, bool allFindings) =>
        new()
        {
            Id = id,
            Model = new() { Version = ModelVersion.Current },
            Verdict = Words.Of(result.Verdict),
            Confidence = result.Confidence is { } confidence ? Words.Of(confidence) : null,
            Summary = result.Summary,
            Findings = FindingWriter.Write(result.Findings, allFindings),
            LoadCases = LoadCaseWriter.Write(result.LoadCases),
            Temperatures = TemperatureWriter.Write(result.Temperatures),
            Endurance = ReportWriter.Write(result.Endurance),
            ReceiverSupply = ReportWriter.Write(result.ReceiverSupply),
            Drivetrain = ReportWriter.Write(result.Drivetrain),
            Wiring = ReportWriter.Write(result.Wiring),
            Spread = new()
            {
                Asked = Words.Of(result.Spread.Asked),
                Used = Words.Of(result.Spread.Used),
                Samples = result.Spread.Rigs,
            },
            Tolerances = [.. result.Inputs.Where(IsGiven).Select(ToleranceWriter.Write)],
            Assumptions = [.. result.Assumptions.Select(AssumptionWriter.Write)],
        };

    private static bool IsGiven(Input input) => input.Basis != SpreadBasis.Assumed;
}
