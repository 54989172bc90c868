using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>A short piece of a line, as a key to it.</summary>
internal static class Sample
{
    /// <summary>How long it is [px].</summary>
    public const float Length = 26;

    /// <summary>Draws the piece and what it stands for.</summary>
    /// <param name="brush">Draws it.</param>
    /// <param name="text">What it stands for.</param>
    /// <param name="pen">How the line is drawn.</param>
    /// <param name="x">Where it starts.</param>
    /// <param name="y">Base line of the text.</param>
    /// <returns>Where it ends.</returns>
    public static float Draw(Brush brush, string text, Pen pen, float x, float y)
    {
        brush.Line(new SKPoint(x, y - 4), new SKPoint(x + Length, y - 4), pen);
        brush.Text(text, x + Length + 5, y, Face.Small);
        return x + Length + 5 + Typesetting.Width(text, Face.Small);
    }
}
