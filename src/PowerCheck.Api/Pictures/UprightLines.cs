using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Model.Curves;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Api.Pictures;

/// <summary>The slopes that matter, as upright lines with their labels above the slope drawing's plot.</summary>
/// <param name="lines">The lines, slope rising.</param>
internal sealed class UprightLines(IReadOnlyList<Upright> lines)
{
    private const float Row = 15;
    private const float Gap = 4;

    private static readonly Pen Climb = new(Paper.Ink, 1.2f, 2, 3);
    private static readonly Pen Tires = new(Paper.Green, 1.6f, 9, 3, 2, 3);
    private static readonly Pen Attained = new(Paper.Gray, 1.2f, 5, 2);

    /// <summary>Room for the labels [px].</summary>
    public float Height => lines.Count * Row;

    /// <summary>Those of a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="figures">The figures of the answer.</param>
    public static UprightLines Of(SlopeCurve curve, SlopeFigures figures) =>
        new([.. All(curve, figures).OrderBy(line => line.Degrees)]);

    private static IEnumerable<Upright> All(SlopeCurve curve, SlopeFigures figures)
    {
        if (figures.ClimbDegrees is { } climb)
        {
            yield return new($"climb asked for: {Say.Figure(climb, "°")}", climb, Climb);
        }

        if (figures.SlipDegrees is { } slip)
        {
            yield return new($"tires let go: {Say.Figure(slip, "°")}", slip, Tires);
        }

        if (curve.EndsBy is not (null or Obstacle.Traction) && curve.AttainableRad > 0)
        {
            var degrees = Math.Round(curve.AttainableRad * 180 / Math.PI, 1);
            yield return new($"attained up to about {Say.Figure(degrees, "°")}", degrees, Attained);
        }
    }

    /// <summary>
    /// Draws them, a row a label, so that no line crosses a label: those that stand left of their lines with the steepest on
    /// top, and over them those that only fit right of theirs, with the flattest on top.
    /// </summary>
    /// <param name="brush">Draws them.</param>
    /// <param name="area">The plot.</param>
    /// <param name="top">Upper end of the labels [px].</param>
    public void Draw(Brush brush, PlotArea area, float top)
    {
        var placed = Placed(area);
        var rows = placed.Where(at => at.Right).Concat(placed.Where(at => !at.Right).Reverse());
        var y = top;
        foreach (var (line, x, right) in rows)
        {
            var width = Typesetting.Width(line.Text, Face.Small);
            brush.Line(new(x, area.Box.Bottom), new(x, y), line.Pen);
            brush.Text(line.Text, right ? x + Gap : x - Gap - width, y + 9, Face.Small);
            y += Row;
        }
    }

    private List<(Upright Line, float X, bool Right)> Placed(PlotArea area)
    {
        var placed = new List<(Upright Line, float X, bool Right)>();
        var free = Paper.Margin;
        foreach (var line in lines)
        {
            var x = area.At(line.Degrees, area.Y.From).X;
            var right = x - Gap - Typesetting.Width(line.Text, Face.Small) < free;
            placed.Add((line, x, right));
            free = right ? Math.Max(free, x) : free;
        }

        return placed;
    }
}

/// <summary>An upright line.</summary>
/// <param name="Text">What it stands for.</param>
/// <param name="Degrees">Where it stands [°].</param>
/// <param name="Pen">How it is drawn.</param>
internal sealed record Upright(string Text, double Degrees, Pen Pen);
