namespace PowerCheck.Api.Texts;

/// <summary>Breaks text into lines that a forum post can carry.</summary>
internal static class Lines
{
    /// <summary>Most characters of a line.</summary>
    public const int Width = 120;

    private const string More = " …";

    /// <summary>The text in lines, broken between words; what is left over ends in an ellipsis.</summary>
    /// <param name="text">The text.</param>
    /// <param name="most">Most lines.</param>
    public static IEnumerable<string> Wrap(string text, int most)
    {
        var rest = text.ReplaceLineEndings(" ").Trim();
        for (var line = 1; rest.Length > 0; line++)
        {
            if (rest.Length <= Width)
            {
                yield return rest;
                yield break;
            }

            var isLast = line == most;
            var end = End(rest, isLast ? Width - More.Length : Width);
            yield return isLast ? rest[..end] + More : rest[..end];
            if (isLast)
            {
                yield break;
            }

            rest = rest[end..].TrimStart();
        }
    }

    // A word that alone is too long is broken.
    private static int End(string text, int width) =>
        text.LastIndexOf(' ', width) is var blank and > 0 ? blank : width;
}
