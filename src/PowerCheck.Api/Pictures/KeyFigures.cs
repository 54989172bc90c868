using PowerCheck.Api.Pictures.Drawing;

namespace PowerCheck.Api.Pictures;

/// <summary>The figures that builders ask for first, in a table.</summary>
internal sealed class KeyFigures : IDrawing
{
    private const int Columns = 3;
    private const float RowHeight = 38;
    private const float Wide = (Paper.Width - (2 * Paper.Margin)) / Columns;

    private readonly IReadOnlyList<(string Name, string Figure)> figures;

    public KeyFigures(PictureContent content) => figures = [.. Of(content)];

    public float Height => (((figures.Count + Columns - 1) / Columns) * RowHeight) + 6;

    /// <summary>The figures of a content, each as it stands in the answer.</summary>
    /// <param name="content">What is drawn.</param>
    public static IEnumerable<(string Name, string Figure)> Of(PictureContent content)
    {
        var answer = content.Answer;
        var (climb, warm) = (answer.LoadCases.Climb, answer.Temperatures);
        yield return ("Motor current, climb", Say.Figure(climb.MotorCurrentA, "A"));
        yield return ("Battery current, climb", Say.Figure(climb.BatteryCurrentA, "A"));
        yield return ("Run time", Say.Figure(answer.Endurance.Minutes, "min"));
        yield return ("Winding, end of course", End(warm.MotorWinding));
        yield return ("Controller, end of course", End(warm.Controller));
        yield return ("Battery, end of course", End(warm.Battery));
        yield return ("Winding limit", Say.Figure(warm.MotorWinding.LimitC, "°C"));
        yield return (
            "Torque over the climb's",
            answer.Drivetrain.TorqueReserve is { } reserve
                ? $"{Say.Figure(reserve)} times"
                : Say.NotKnown
        );
        yield return ("Tires let go at", Say.Figure(answer.Drivetrain.SlipSlopeDegrees, "°"));
    }

    public void Draw(Brush brush, float top)
    {
        brush.Fill(new(Paper.Margin, top, Paper.Width - Paper.Margin, top + Height), Paper.Tint);
        for (var n = 0; n < figures.Count; n++)
        {
            var (x, y) = (
                Paper.Margin + 10 + (n % Columns * Wide),
                top + 6 + (n / Columns * RowHeight)
            );
            brush.Text(figures[n].Name, x, y + 12, Face.Small, Paper.Gray);
            brush.Text(figures[n].Figure, x, y + 28, new(13, true));
        }
    }

    private static string End(Checks.Answers.TemperatureAnswer part) =>
        part.CourseEndC is null && part.Runaway == true
            ? "rising without end"
            : Say.Figure(part.CourseEndC, "°C");
}
