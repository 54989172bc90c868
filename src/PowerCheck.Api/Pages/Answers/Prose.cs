using System.Text.RegularExpressions;
using PowerCheck.Api.Pages.Forms;
using PowerCheck.Api.Paths;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>A piece of a sentence of the model.</summary>
/// <param name="Text">What is read.</param>
/// <param name="Path">The field that it names; null for plain words.</param>
internal readonly record struct ProsePiece(string Text, string? Path);

/// <summary>Finds members of a rig in sentences of the model, so that the page can call them by their labels.</summary>
internal static partial class Prose
{
    /// <summary>The sentence in pieces.</summary>
    public static IEnumerable<ProsePiece> Of(string sentence)
    {
        var start = 0;
        foreach (var match in Path().Matches(sentence).OfType<Match>())
        {
            var path = match.Value;
            if (!RigPath.Names(path))
            {
                continue;
            }

            yield return new(sentence[start..match.Index], null);
            yield return new(Labels.Whole(path), path);
            start = match.Index + match.Length;
        }

        yield return new(sentence[start..], null);
    }

    /// <summary>The sentence with labels in place of paths.</summary>
    public static string Plain(string sentence) =>
        string.Concat(Of(sentence).Select(piece => piece.Text));

    /// <summary>What a mistake says of the field at which it stands, without its name.</summary>
    /// <param name="message">The message.</param>
    /// <param name="path">The field; null where it stands at none.</param>
    /// <param name="subject">What stands for the name.</param>
    public static string Of(string message, string? path, string subject) =>
        path is not null && message.StartsWith($"{path} ", StringComparison.Ordinal)
            ? $"{subject}{Plain(message[path.Length..])}"
            : Plain(message);

    [GeneratedRegex(@"[a-z]+(\.[a-zA-Z0-9]+)+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Path();
}
