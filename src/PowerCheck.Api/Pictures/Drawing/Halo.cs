using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>Text on a light ground, so that it can be read across lines.</summary>
internal static class Halo
{
    /// <summary>Draws the text.</summary>
    /// <param name="brush">Draws it.</param>
    /// <param name="text">The text.</param>
    /// <param name="at">Left end and base line.</param>
    /// <param name="face">How it is set.</param>
    public static void Text(Brush brush, string text, SKPoint at, Face face)
    {
        var width = Typesetting.Width(text, face);
        brush.Fill(
            new(at.X - 2, at.Y - face.Size + 1, at.X + width + 2, at.Y + 3),
            Paper.White.WithAlpha(225)
        );
        brush.Text(text, at.X, at.Y, face);
    }
}
