using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>A drawing as PNG.</summary>
internal static class PngForm
{
    /// <summary>The drawing.</summary>
    /// <param name="drawing">What is drawn.</param>
    /// <param name="scale">Dots a px: 1, or 2 for a dense screen.</param>
    public static byte[] Of(IDrawing drawing, int scale)
    {
        var height = MathF.Ceiling(drawing.Height);
        using var bitmap = new SKBitmap(
            (int)Paper.Width * scale,
            (int)height * scale,
            SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Scale(scale);
            Sheet.Draw(canvas, drawing, height);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
