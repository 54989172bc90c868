using System.Text;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>Text as it is set in a picture.</summary>
internal static class Typesetting
{
    /// <summary>No line of the paper has more letters than these.</summary>
    private const int MostInLine = 600;

    /// <summary>Stands for a character without a sign.</summary>
    private const char Missing = '?';

    /// <summary>Text in characters that can be drawn, on one line.</summary>
    /// <param name="text">The text.</param>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune))
            {
                clean.Append(' ');
            }
            else if (Typefaces.Has(rune))
            {
                clean.Append(rune.ToString());
            }
            else
            {
                clean.Append(Missing);
            }
        }

        return clean.ToString();
    }

    /// <summary>Text without what no document may hold.</summary>
    /// <param name="text">The text.</param>
    public static string Legal(string text) =>
        string.Concat(
            text.EnumerateRunes()
                .Where(rune => !Rune.IsControl(rune) && rune.Value is not (0xFFFE or 0xFFFF))
                .Select(rune => rune.ToString())
        );

    /// <summary>How wide a text is [px].</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">How it is set.</param>
    public static float Width(string text, Face face)
    {
        using var font = face.Font();
        return font.MeasureText(text);
    }

    /// <summary>A text in lines of whole words; a word that is wider than a line is cut.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">How it is set.</param>
    /// <param name="width">Width of a line [px].</param>
    public static IReadOnlyList<string> Wrap(string text, Face face, float width)
    {
        using var font = face.Font();
        var lines = new List<string>();
        var line = "";
        foreach (
            var word in Clean(text)
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .SelectMany(word => Cut(word, fits => font.MeasureText(fits) <= width))
        )
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && font.MeasureText(longer) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        return line.Length > 0 ? [.. lines, line] : lines;
    }

    /// <summary>A text that fits a width, its end left out where it is too wide.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">How it is set.</param>
    /// <param name="width">The width [px].</param>
    public static string Fit(string text, Face face, float width)
    {
        var clean = Clean(text);
        if (Width(clean, face) <= width)
        {
            return clean;
        }

        var length = Longest(clean, start => Width($"{start}…", face) <= width);
        return $"{clean[..length].TrimEnd()}…";
    }

    // How much of the start fits: a longer start is never narrower.
    private static int Longest(string text, Func<string, bool> fits)
    {
        var (inside, outside) = (0, Math.Min(text.Length, MostInLine));
        while (outside - inside > 1)
        {
            var middle = (inside + outside) / 2;
            (inside, outside) = fits(text[..middle]) ? (middle, outside) : (inside, middle);
        }

        return inside;
    }

    private static IEnumerable<string> Cut(string word, Func<string, bool> fits)
    {
        var rest = word;
        while (!fits(rest))
        {
            var length = Math.Max(1, Longest(rest, fits));
            yield return rest[..length];
            rest = rest[length..];
        }

        yield return rest;
    }
}
