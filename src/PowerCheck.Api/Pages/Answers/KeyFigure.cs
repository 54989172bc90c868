using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Display;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>A figure that a builder looks for first.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Figure">The figure with its unit.</param>
/// <param name="Beside">What to hold it against; empty for nothing.</param>
public sealed record KeyFigure(string Name, string Figure, string Beside)
{
    private const int Few = 3;

    /// <summary>The figures of an answer.</summary>
    public static IReadOnlyList<KeyFigure> Of(CheckAnswer answer, DisplayUnits units)
    {
        var climb = answer.LoadCases.Climb;
        var winding = answer.Temperatures.MotorWinding;
        return
        [
            new(
                "Motor current, climbing",
                units.Show(climb.MotorCurrentA, "A", Few),
                Stopped(climb)
            ),
            new("Battery current, climbing", units.Show(climb.BatteryCurrentA, "A", Few), ""),
            new("Winding at the end of the run", Winding(answer, units), Limit(winding, units)),
            new(
                "Run time",
                units.Show(answer.Endurance.Minutes, "min", Few),
                Ends(answer.Endurance)
            ),
            new(
                "Torque reserve",
                Times(answer.Drivetrain.TorqueReserve),
                "of what the climb needs"
            ),
        ];
    }

    // A pack that gives out at once leaves everything cool, which would be read as good.
    private static string Winding(CheckAnswer answer, DisplayUnits units) =>
        answer.Temperatures.MotorWinding is { CourseEndC: null, Runaway: true } ? "no end"
        : answer.Endurance.Minutes is 0 ? DisplayUnits.Nothing
        : units.Show(answer.Temperatures.MotorWinding.CourseEndC, "°C", Few);

    private static string Stopped(LoadCaseAnswer climb) =>
        climb.Obstacle is { } obstacle ? $"does not get up: {Forms.Labels.Word(obstacle)}" : "";

    private static string Limit(TemperatureAnswer winding, DisplayUnits units) =>
        winding.LimitC is { } limit ? $"stands {units.Show(limit, "°C")}" : "";

    private static string Ends(EnduranceAnswer endurance) =>
        endurance.EndsBy switch
        {
            "cutoff" => "until the cut-off",
            "reserve" => "down to the reserve",
            _ => "",
        };

    private static string Times(double? reserve) =>
        reserve is null
            ? DisplayUnits.Nothing
            : $"{DisplayUnits.Metric.Show(reserve, null, Few)} ×";
}
