using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>A drawing as PNG.</summary>
internal static class PngForm
{
    /// <summary>The drawing.</summary>
    /// <param name="drawing">What is drawn.</param>
    public static byte[] Of(IDrawing drawing)
    {
        var height = MathF.Ceiling(drawing.Height);
        using var bitmap = new SKBitmap(
            (int)Paper.Width,
            (int)height,
            SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        using (var canvas = new SKCanvas(bitmap))
        {
            Sheet.Draw(canvas, drawing, height);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
