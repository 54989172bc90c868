using System.Globalization;
using PowerCheck.Api.Checks.Answers;

namespace PowerCheck.Api.Texts;

/// <summary>
/// A check in at most eight lines: verdict, why, climb, temperatures and run time, the smallest change, the leading battery
/// caution, and the link, which alone may be longer than a line. Figures as in the other forms.
/// </summary>
internal static class CheckText
{
    /// <summary>The lines.</summary>
    /// <param name="answer">What was found.</param>
    public static IReadOnlyList<string> Lines(CheckAnswer answer) =>
        [
            .. Texts.Lines.Wrap(Verdict(answer), 2),
            .. Texts.Lines.Wrap(Climb(answer.LoadCases.Climb), 1),
            .. Texts.Lines.Wrap(Course(answer), 1),
            .. Texts.Lines.Wrap(Advice(answer), 1),
            .. Texts.Lines.Wrap($"Battery: {answer.BatterySafety.Leading}", 2),
            .. answer.Links is { } links ? [links.Page] : Array.Empty<string>(),
        ];

    private static string Verdict(CheckAnswer answer)
    {
        var of = answer.Id is { } id ? $" ({Short(id)})" : "";
        var sure = answer.Confidence is { } confidence ? $", confidence {confidence}" : "";
        var why = Deciding(answer)?.Message ?? answer.Summary;
        return $"PowerCheck {answer.Model.Version}: {answer.Verdict}{sure}{of}. {why}";
    }

    // The name of a rig must not push the verdict out.
    private static string Short(string id) => id.Length > 40 ? $"{id[..40]}…" : id;

    private static FindingAnswer? Deciding(CheckAnswer answer) =>
        answer.Findings.FirstOrDefault(finding => finding.Decides);

    private static string Climb(LoadCaseAnswer climb) =>
        climb is { MotorCurrentA: { } motor, BatteryCurrentA: { } battery }
            ? $"Climb: motor {Figure(motor)} A, battery {Figure(battery)} A{Speed(climb)}{Stopped(climb)}."
        : climb.Obstacle is { } obstacle ? $"Climb: not possible ({obstacle})."
        : "";

    private static string Stopped(LoadCaseAnswer climb) =>
        climb.Obstacle is { } obstacle ? $", not attained ({obstacle})" : "";

    private static string Speed(LoadCaseAnswer climb) =>
        climb.RoadSpeedMPerS is { } speed ? $" at {Figure(speed)} m/s" : "";

    private static string Course(CheckAnswer answer) =>
        string.Join(
            ", ",
            new[]
            {
                Warm("End of the run: winding", answer.Temperatures.MotorWinding),
                Warm("controller", answer.Temperatures.Controller),
                Warm("pack", answer.Temperatures.Battery),
                answer.Endurance.Minutes is { } minutes ? $"run time {Figure(minutes)} min" : null,
            }.OfType<string>()
        );

    private static string? Warm(string part, TemperatureAnswer temperature) =>
        temperature is { CourseEndC: null, Runaway: true } ? $"{part} rising without end"
        : temperature is { CourseEndC: { } end, LimitC: { } limit }
            ? $"{part} {Figure(end)} of {Figure(limit)} °C"
        : null;

    private static string Advice(CheckAnswer answer) =>
        Deciding(answer) is not { } deciding ? ""
        : deciding.Remedies?.FirstOrDefault(remedy => remedy.To is not null) is { } remedy
            ? remedy.Message
        : deciding.Measure is { } measure ? $"To be surer, measure {measure.Path}: {measure.How}"
        : "";

    private static string Figure(double figure) =>
        figure.ToString("R", CultureInfo.InvariantCulture);
}
