using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Model.Curves;
using SkiaSharp;

namespace PowerCheck.Api.Pictures;

/// <summary>Temperatures of motor, controller and pack along the course, from cold, with what they stand.</summary>
internal sealed class CourseDrawing : IDrawing
{
    public const string Title = "Temperature [°C] along the course, from cold";
    private const float Head = 34;
    private const float PlotHeight = 220;
    private const float Foot = 40;
    private const float Wide = Paper.Width - (2 * Paper.Margin);

    /// <summary>From this on time is in minutes [s].</summary>
    private const double MinutesFromS = 180;

    private readonly CourseCurve curve;
    private readonly IReadOnlyList<CoursePart> parts;
    private readonly IReadOnlyList<string> captions;
    private readonly bool empty;

    public CourseDrawing(PictureContent content)
    {
        curve = content.Curves.Course;
        parts = CoursePart.Of(content);
        empty = content.Answer.Endurance.Minutes == 0;
        captions = [.. Captions().SelectMany(text => Typesetting.Wrap(text, Face.Small, Wide))];
    }

    private bool Known => curve.Points.Count > 0;

    private bool Minutes => curve.EndS >= MinutesFromS;

    private double UnitS => Minutes ? 60 : 1;

    private float Body => Known ? PlotHeight + Foot : 4;

    public float Height => Head + Body + (captions.Count * Paper.Line) + 2;

    public void Draw(Brush brush, float top)
    {
        brush.Text(Title, Paper.Margin, top + 18, Face.Title);
        if (Known)
        {
            DrawPlot(brush, Area(top));
        }

        brush.Lines(
            captions,
            Paper.Margin,
            top + Head + Body + Paper.Line - 3,
            Face.Small,
            Paper.Gray
        );
    }

    private void DrawPlot(Brush brush, PlotArea area)
    {
        var drawn = parts.Where(Runs).ToArray();
        area.Draw(
            brush,
            drawn.Where(part => part.Band is not null).Select(Shade),
            [.. drawn.SelectMany(Edges), .. drawn.Select(Line)]
        );
        area.NameAcross(brush, Minutes ? "minutes" : "seconds");
        DrawLimits(brush, area);
        DrawEnds(brush, area, drawn);
    }

    private bool Runs(CoursePart part) =>
        curve.Points.Any(point => double.IsFinite(part.At(point)));

    private PlotArea Area(float top) =>
        new(
            new(
                Paper.Margin + 32,
                top + Head,
                Paper.Width - Paper.Margin - EndRoom,
                top + Head + PlotHeight
            ),
            Scale.Round(0, curve.EndS / UnitS, 6),
            Heights()
        );

    // All curves and limits, and of the bands what is not far above both.
    private Scale Heights()
    {
        double[] at =
        [
            .. curve
                .Points.SelectMany(point => parts.Select(part => part.At(point)))
                .Where(double.IsFinite),
        ];
        double[] limits = [.. parts.Select(part => part.Answer.LimitC).OfType<double>()];
        var high = at.Concat(limits).DefaultIfEmpty(100).Max();
        double[] bands =
        [
            .. parts
                .SelectMany(part => part.Band ?? [])
                .SelectMany(point => new[] { point.LowC, point.HighC })
                .Where(double.IsFinite),
        ];
        var low = at.Concat(bands).DefaultIfEmpty(20).Min();
        var top = Math.Max(high, Math.Min(1.15 * high, bands.DefaultIfEmpty(high).Max()));
        return Scale.Round(low - (0.03 * (top - low)), top + (0.06 * (top - low)), 7);
    }

    private Curve Line(CoursePart part) =>
        new(
            [.. curve.Points.Select(point => point.Seconds / UnitS)],
            [.. curve.Points.Select(part.At)],
            part.Pen
        );

    // The ends of a band as thin lines of the part's own dashes.
    private IEnumerable<Curve> Edges(CoursePart part)
    {
        if (part.Band is not { } band)
        {
            yield break;
        }

        var pen = part.Pen with { Width = 0.8f };
        double[] times = [.. band.Select(point => point.Seconds / UnitS)];
        yield return new(times, [.. band.Select(point => point.LowC)], pen);
        yield return new(times, [.. band.Select(point => point.HighC)], pen);
    }

    private Band Shade(CoursePart part)
    {
        var known = part.Band!.Where(point =>
                double.IsFinite(point.LowC) && double.IsFinite(point.HighC)
            )
            .ToArray();
        return new(
            [.. known.Select(point => point.Seconds / UnitS)],
            [.. known.Select(point => point.LowC)],
            [.. known.Select(point => point.HighC)],
            part.Tint
        );
    }

    // Limits that are alike share a line and a label.
    private void DrawLimits(Brush brush, PlotArea area)
    {
        var limits = parts
            .Where(part => part.Answer.LimitC is not null)
            .GroupBy(part => part.Answer.LimitC!.Value)
            .OrderBy(limit => limit.Key)
            .ToArray();
        foreach (var limit in limits)
        {
            var y = area.At(0, limit.Key).Y;
            var pen = limit.First().Pen with { Width = 1.1f };
            brush.Line(new(area.Box.Left, y), new(area.Box.Right, y), pen);
        }

        var spots = new LabelSpots(area.Box);
        area.Avoid(spots, parts.Select(Line));
        foreach (var limit in limits)
        {
            var y = area.At(0, limit.Key).Y;
            var text =
                $"{string.Join(", ", limit.Select(part => part.Limits))} {Say.Figure(limit.Key, "°C")}";
            var right = area.Box.Right - Typesetting.Width(text, Face.Small) - 6;
            SKPoint[] wanted =
            [
                new(area.Box.Left + 6, y - 4),
                new(right, y - 4),
                new(area.Box.Left + 6, y + 12),
                new(right, y + 12),
            ];
            if (spots.Take(text, Face.Small, wanted) is { } spot)
            {
                Halo.Text(brush, text, spot, Face.Small);
            }
        }
    }

    // Beside the ends of the curves, as far apart as letters need.
    private void DrawEnds(Brush brush, PlotArea area, IReadOnlyList<CoursePart> drawn)
    {
        var ends = drawn
            .Select(part => (Part: part, Y: area.At(0, part.At(curve.Points[^1])).Y))
            .Where(end => float.IsFinite(end.Y))
            .OrderBy(end => end.Y)
            .ToArray();
        var y = area.Box.Top - 8;
        var lowest = area.Box.Bottom - (ends.Length * Paper.Line) + 4;
        for (var n = 0; n < ends.Length; n++)
        {
            y = Math.Max(y + Paper.Line, Math.Min(ends[n].Y + 4, lowest + (n * Paper.Line)));
            brush.Line(
                new(area.Box.Right + 1, ends[n].Y),
                new(area.Box.Right + 9, y - 4),
                new(Paper.Rule, 1)
            );
            Sample.Draw(brush, EndText(ends[n].Part), ends[n].Part.Pen, area.Box.Right + 10, y);
        }
    }

    // Room that the figures at the ends of the curves need [px].
    private float EndRoom =>
        parts.Max(part => Typesetting.Width(EndText(part), Face.Small)) + Sample.Length + 18;

    private string EndText(CoursePart part) =>
        curve.Whole && part.Answer.CourseEndC is { } end
            ? $"{part.Name} {Say.Figure(end, "°C")}"
            : part.Name;

    private IEnumerable<string> Captions()
    {
        if (!Known)
        {
            yield return empty
                ? "The pack gives out at once: there is no course to show."
                : "How long it runs, and so how warm it gets, is not to be told from what was given.";
        }

        if (curve.Runaway)
        {
            yield return "The curves end where the winding passes 400 °C: it never settles, but runs away.";
            var ends = parts
                .Where(part => part.Answer.CourseEndC is not null)
                .Select(part => $"{part.Name} {Say.Figure(part.Answer.CourseEndC, "°C")}");
            var left = string.Join(", ", ends);
            if (left.Length > 0)
            {
                yield return $"At the end of the run, were it driven on: {left}.";
            }
        }
        else if (Known && !curve.Whole)
        {
            yield return "The run goes on beyond the picture.";
        }

        foreach (
            var part in parts.Where(part => Known && part.Answer.CourseSecondsToLimit is not null)
        )
        {
            var later =
                curve.Whole && part.Answer.CourseSecondsToLimit > curve.EndS
                    ? ", later than this run lasts"
                    : "";
            yield return $"From cold the {part.Name} reaches its limit after {Say.Figure(part.Answer.CourseSecondsToLimit, "s")}{later}.";
        }

        if (Known && parts.Any(part => part.Band is not null))
        {
            yield return "Shaded: where 95 of 100 such rigs lie (winding, controller, battery).";
        }
    }

    /// <summary>The drawing in words.</summary>
    /// <param name="content">What it is drawn from.</param>
    public static string Alt(PictureContent content)
    {
        var figures = CoursePart
            .Of(content)
            .Select(part =>
                $"{part.Name} {End(part)} (limit {Say.Figure(part.Answer.LimitC, "°C")})"
            );
        return $"Temperatures along the course, from cold. At its end: {string.Join(", ", figures)}.";
    }

    private static string End(CoursePart part) =>
        part.Answer.CourseEndC is null && part.Answer.Runaway == true
            ? "rising without end"
            : Say.Figure(part.Answer.CourseEndC, "°C");
}
