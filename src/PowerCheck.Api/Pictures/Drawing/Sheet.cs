using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>The sheet of white paper with a frame on which every picture stands, in dark pages too.</summary>
internal static class Sheet
{
    /// <summary>Draws sheet and drawing.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="drawing">The drawing.</param>
    /// <param name="height">Height of the sheet [px].</param>
    public static void Draw(SKCanvas canvas, IDrawing drawing, float height)
    {
        var brush = new Brush(canvas);
        brush.Fill(new(0, 0, Paper.Width, height), Paper.White);
        drawing.Draw(brush, 0);
        brush.Outline(new(0.5f, 0.5f, Paper.Width - 0.5f, height - 0.5f), new(Paper.Gray, 1));
    }
}
