extern alias Charts;

using Charts::ScottPlot;
using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>The letters of the pictures: they come with the program, so that no machine needs any.</summary>
internal static class Typefaces
{
    /// <summary>Their family.</summary>
    public const string Family = "DejaVu Sans";

    /// <summary>Upright letters.</summary>
    public static SKTypeface Plain { get; } = Load("DejaVuSans.ttf");

    /// <summary>Bold letters.</summary>
    public static SKTypeface Bold { get; } = Load("DejaVuSans-Bold.ttf");

    /// <summary>Whether there is a sign for a character.</summary>
    /// <param name="rune">The character.</param>
    public static bool Has(System.Text.Rune rune) => Plain.ContainsGlyph(rune.Value);

    static Typefaces() => Charts::ScottPlot.Fonts.FontResolvers.Insert(0, new Resolver());

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(Typefaces).Assembly.GetManifestResourceStream($"fonts/{name}");
        return SKTypeface.FromStream(stream)
            ?? throw new InvalidOperationException($"The letters {name} are missing.");
    }

    private sealed class Resolver : IFontResolver
    {
        public SKTypeface? CreateTypeface(
            string fontName,
            FontWeight weight,
            FontSlant slant,
            FontSpacing spacing
        ) => CreateTypeface(fontName, weight >= FontWeight.SemiBold, italic: false);

        public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) =>
            !string.Equals(fontName, Family, StringComparison.Ordinal) ? null
            : bold ? Bold
            : Plain;
    }
}
