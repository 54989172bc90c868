using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>Draws text, lines and marks on a picture; lengths in px from its top left corner.</summary>
/// <param name="canvas">What it draws on.</param>
internal sealed class Brush(SKCanvas canvas)
{
    /// <summary>What it draws on.</summary>
    public SKCanvas Canvas => canvas;

    /// <summary>A text on one line.</summary>
    /// <param name="text">The text.</param>
    /// <param name="x">Where it starts.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="face">How it is set.</param>
    /// <param name="color">Its color; that of ink when left out.</param>
    public void Text(string text, float x, float y, Face face, SKColor? color = null)
    {
        using var font = face.Font();
        using var paint = new SKPaint { Color = color ?? Paper.Ink, IsAntialias = true };
        canvas.DrawText(text, x, y, SKTextAlign.Left, font, paint);
    }

    /// <summary>Lines of text under each other.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="x">Where they start.</param>
    /// <param name="y">Base line of the first.</param>
    /// <param name="face">How they are set.</param>
    /// <param name="color">Their color; that of ink when left out.</param>
    public void Lines(
        IReadOnlyList<string> lines,
        float x,
        float y,
        Face face,
        SKColor? color = null
    )
    {
        for (var n = 0; n < lines.Count; n++)
        {
            Text(lines[n], x, y + (n * Paper.Line), face, color);
        }
    }

    /// <summary>A straight line.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="pen">How it is drawn.</param>
    public void Line(SKPoint from, SKPoint to, Pen pen)
    {
        using var dashes =
            pen.Dashes.Length == 0 ? null : SKPathEffect.CreateDash([.. pen.Dashes], 0);
        using var paint = Stroke(pen);
        paint.PathEffect = dashes;
        canvas.DrawLine(from, to, paint);
    }

    /// <summary>A filled box.</summary>
    /// <param name="box">The box.</param>
    /// <param name="color">Its color.</param>
    public void Fill(SKRect box, SKColor color)
    {
        using var paint = new SKPaint { Color = color, IsAntialias = true };
        canvas.DrawRect(box, paint);
    }

    /// <summary>The outline of a box.</summary>
    /// <param name="box">The box.</param>
    /// <param name="pen">How it is drawn.</param>
    public void Outline(SKRect box, Pen pen)
    {
        using var paint = Stroke(pen);
        canvas.DrawRect(box, paint);
    }

    /// <summary>A closed shape.</summary>
    /// <param name="corners">Its corners.</param>
    /// <param name="fill">What fills it.</param>
    /// <param name="pen">How its outline is drawn.</param>
    public void Shape(SKPoint[] corners, SKColor fill, Pen pen)
    {
        using var path = new SKPath();
        path.AddPoly(corners, close: true);
        using var inside = new SKPaint { Color = fill, IsAntialias = true };
        canvas.DrawPath(path, inside);
        using var outline = Stroke(pen);
        canvas.DrawPath(path, outline);
    }

    /// <summary>A disc.</summary>
    /// <param name="center">Its center.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="fill">What fills it.</param>
    /// <param name="pen">How its outline is drawn.</param>
    public void Disc(SKPoint center, float radius, SKColor fill, Pen pen)
    {
        using var inside = new SKPaint { Color = fill, IsAntialias = true };
        canvas.DrawCircle(center, radius, inside);
        using var outline = Stroke(pen);
        canvas.DrawCircle(center, radius, outline);
    }

    private static SKPaint Stroke(Pen pen) =>
        new()
        {
            Color = pen.Color,
            StrokeWidth = pen.Width,
            Style = SKPaintStyle.Stroke,
            IsAntialias = true,
        };
}
