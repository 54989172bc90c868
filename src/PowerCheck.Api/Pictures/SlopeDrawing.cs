using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Model.Curves;
using PowerCheck.Model.Drivetrain;
using SkiaSharp;

namespace PowerCheck.Api.Pictures;

/// <summary>Motor and battery current of a steady climb over the slope, with what bounds them.</summary>
internal sealed class SlopeDrawing : IDrawing
{
    public const string Title = "Current [A] over the slope, creeping steadily";
    private const float Head = 48;
    private const float PlotHeight = 190;
    private const float Foot = 40;

    /// <summary>Ratings beyond this share of the largest current are told beneath: drawn in they would press the curves flat; assumed.</summary>
    private const double MostOver = 2.5;
    private const double DegreeRad = Math.PI / 180;

    private static readonly Pen Motor = new(Paper.Blue, 2.2f);
    private static readonly Pen Battery = new(Paper.Vermilion, 2.2f, 7, 4);

    private readonly SlopeCurve curve;
    private readonly SlopeFigures figures;
    private readonly UprightLines uprights;
    private readonly IReadOnlyList<string> captions;
    private readonly (RatingLine[] In, RatingLine[] Above) ratings;
    private readonly double mostA;

    public SlopeDrawing(PictureContent content)
    {
        curve = content.Curves.Slope;
        figures = SlopeFigures.Of(content);
        uprights = UprightLines.Of(curve, figures);
        mostA = Most(curve, figures);
        var lines = RatingLine.Of(content.Ratings);
        ratings = (
            [.. lines.Where(line => line.Amperes <= MostOver * mostA)],
            [.. lines.Where(line => line.Amperes > MostOver * mostA)]
        );
        captions = [.. Captions().SelectMany(text => Typesetting.Wrap(text, Face.Small, Wide))];
    }

    private const float Wide = Paper.Width - (2 * Paper.Margin);

    public float Height => Head + Body + (captions.Count * Paper.Line);

    private float Body => Known ? uprights.Height + PlotHeight + Foot : -8;

    public void Draw(Brush brush, float top)
    {
        brush.Text(Title, Paper.Margin, top + 18, Face.Title);
        if (Known)
        {
            DrawKeys(brush, top + 37);
            DrawPlot(brush, Area(top), top + Head - 2);
        }

        brush.Lines(
            captions,
            Paper.Margin,
            top + Head + Body + Paper.Line - 3,
            Face.Small,
            Paper.Gray
        );
    }

    private static void DrawKeys(Brush brush, float y)
    {
        var end = Sample.Draw(brush, "motor current, each motor", Motor, Paper.Margin, y);
        Sample.Draw(brush, "battery current, whole rig", Battery, end + 18, y);
    }

    private void DrawPlot(Brush brush, PlotArea area, float top)
    {
        var curves = Curves();
        area.Draw(brush, [], curves);
        area.NameAcross(brush, "slope in degrees");
        uprights.Draw(brush, area, top);
        foreach (var line in ratings.In)
        {
            line.Draw(brush, area);
        }

        var spots = new LabelSpots(area.Box);
        area.Avoid(spots, curves);
        DrawClimb(brush, area, spots);
        foreach (var line in ratings.In)
        {
            line.Label(brush, area, spots);
        }
    }

    private bool Known =>
        figures.MotorA is not null || curve.Points.Any(point => double.IsFinite(point.MotorA));

    private PlotArea Area(float top) =>
        new(
            new(
                Paper.Margin + 32,
                top + Head + uprights.Height,
                Paper.Width - Paper.Margin - 6,
                top + Head + uprights.Height + PlotHeight
            ),
            Scale.Round(0, curve.Points[^1].SlopeRad / DegreeRad, 9),
            Scale.Round(
                Math.Min(
                    0,
                    curve
                        .Points.Where(p => double.IsFinite(p.BatteryA))
                        .Select(p => p.BatteryA)
                        .DefaultIfEmpty(0)
                        .Min()
                ),
                1.12 * ratings.In.Select(line => line.Amperes).Append(1.04 * mostA).Max()
            )
        );

    private Curve[] Curves()
    {
        double[] slopes = [.. curve.Points.Select(point => point.SlopeRad / DegreeRad)];
        return
        [
            new(slopes, [.. curve.Points.Select(point => point.MotorA)], Motor),
            new(slopes, [.. curve.Points.Select(point => point.BatteryA)], Battery),
        ];
    }

    private static double Most(SlopeCurve curve, SlopeFigures figures) =>
        curve
            .Points.SelectMany(point => new[] { point.MotorA, point.BatteryA })
            .Append(figures.MotorA ?? 0)
            .Append(figures.BatteryA ?? 0)
            .Where(double.IsFinite)
            .Append(0.1)
            .Max();

    private void DrawClimb(Brush brush, PlotArea area, LabelSpots spots)
    {
        if (figures.JudgedDegrees is not { } at)
        {
            return;
        }

        var outline = new Pen(Paper.Ink, 1.2f);
        if (figures.MotorA is { } motor)
        {
            var p = area.At(at, motor);
            brush.Shape(
                [new(p.X, p.Y - 6), new(p.X + 6, p.Y), new(p.X, p.Y + 6), new(p.X - 6, p.Y)],
                figures.Attainable ? Paper.Blue : Paper.White,
                outline
            );
            Label(brush, spots, $"motor {Say.Figure(motor, "A")}", p);
        }

        if (figures.BatteryA is { } battery)
        {
            var p = area.At(at, battery);
            brush.Shape(
                [
                    new(p.X - 5, p.Y - 5),
                    new(p.X + 5, p.Y - 5),
                    new(p.X + 5, p.Y + 5),
                    new(p.X - 5, p.Y + 5),
                ],
                figures.Attainable ? Paper.Vermilion : Paper.White,
                outline
            );
            Label(brush, spots, $"battery {Say.Figure(battery, "A")}", p);
        }
    }

    private static void Label(Brush brush, LabelSpots spots, string text, SKPoint at)
    {
        var width = Typesetting.Width(text, Face.SmallBold);
        spots.Keep(new(at.X - 6, at.Y - 6, at.X + 6, at.Y + 6));
        var spot = spots.Take(
            text,
            Face.SmallBold,
            new(at.X - width - 11, at.Y - 8),
            new(at.X + 11, at.Y - 8)
        );
        if (spot is { } free)
        {
            Halo.Text(brush, text, free, Face.SmallBold);
        }
    }

    private IEnumerable<string> Captions()
    {
        if (!Known)
        {
            yield return "The currents are not to be told from what was given.";
            yield break;
        }

        if (figures.Obstacle is { } obstacle)
        {
            yield return $"The climb that is asked for is not attained (hollow marks): {obstacle}.";
        }
        else if (curve.EndsBy is { } end and not Obstacle.Traction)
        {
            yield return $"Steeper than the curves go, it does not get: {Say.Obstacle(end)}.";
        }

        if (ratings.Above.Length > 0)
        {
            yield return $"Above the picture (▲): {string.Join(", ", ratings.Above.Select(line => line.Text))}.";
        }

        if (figures.MotorA is not null && figures.BatteryA is null)
        {
            yield return "Without a known resistance of the motor the battery current is not known.";
        }
    }

    /// <summary>The drawing in words.</summary>
    /// <param name="content">What it is drawn from.</param>
    public static string Alt(PictureContent content)
    {
        var known = SlopeFigures.Of(content);
        var at = known.JudgedDegrees is { } degrees ? $" at {Say.Figure(degrees, "°")}" : "";
        var slip = known.SlipDegrees is { } let
            ? $" The tires let go at {Say.Figure(let, "°")}."
            : "";
        return $"Motor and battery current of a steady climb over the slope. Of the climb{at}: motor current "
            + $"{Say.Figure(known.MotorA, "A")}, battery current {Say.Figure(known.BatteryA, "A")}.{slip}";
    }
}
