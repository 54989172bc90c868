using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>How a line is drawn: color and dashes both tell lines apart.</summary>
/// <param name="Color">Its color.</param>
/// <param name="Width">Its width [px].</param>
/// <param name="Dashes">Lengths of dash and gap in turn [px]; empty for a solid line.</param>
internal sealed record Pen(SKColor Color, float Width, params float[] Dashes);

/// <summary>How text is set.</summary>
/// <param name="Size">Size of the letters [px].</param>
/// <param name="Bold">Whether they are bold.</param>
internal readonly record struct Face(float Size, bool Bold = false)
{
    /// <summary>The smallest letters.</summary>
    public static readonly Face Small = new(Paper.Small);

    /// <summary>The smallest letters, bold.</summary>
    public static readonly Face SmallBold = new(Paper.Small, true);

    /// <summary>A title.</summary>
    public static readonly Face Title = new(13, true);

    /// <summary>The letters; to be given back.</summary>
    public SKFont Font() =>
        new(Bold ? Typefaces.Bold : Typefaces.Plain, Size)
        {
            Edging = SKFontEdging.Antialias,
            Subpixel = true,
        };
}
