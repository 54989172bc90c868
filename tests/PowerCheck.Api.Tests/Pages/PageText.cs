using System.Net;
using System.Text.RegularExpressions;

namespace PowerCheck.Api.Tests.Pages;

/// <summary>Reads the pages of the service as a browser would, as far as the tests need it.</summary>
internal static class PageText
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    /// <summary>What the form sends: every field with its name and value, the empty ones too.</summary>
    public static (string Name, string Value)[] Sent(string page)
    {
        var form = page[page.IndexOf("<form", StringComparison.Ordinal)..];
        form = form[..form.IndexOf("</form>", StringComparison.Ordinal)];
        return
        [
            .. Find(form, "<input[^>]*>|<select.*?</select>")
                .Select(match => Field(match.Value))
                .OfType<(string, string)>(),
        ];
    }

    /// <summary>What the form sends, as a query.</summary>
    public static string Query(IEnumerable<(string Name, string Value)> sent) =>
        string.Join(
            '&',
            sent.Select(pair =>
                $"{Uri.EscapeDataString(pair.Name)}={Uri.EscapeDataString(pair.Value)}"
            )
        );

    /// <summary>The tag of the field of a path.</summary>
    public static string Tag(string page, string path) =>
        First(page, $"(<(?:input|select)[^>]* id=\"f-{path.Replace('.', '-')}\"[^>]*>)") ?? "";

    /// <summary>What is said at the field of a path, in plain text.</summary>
    public static string Notes(string page, string path) =>
        Plain(
            First(page, $"<span class=\"notes\" id=\"n-{path.Replace('.', '-')}\">(.*?)</div>")
                ?? ""
        );

    /// <summary>The text of markup.</summary>
    public static string Plain(string markup) =>
        WebUtility.HtmlDecode(
            Regex.Replace(markup, "<[^>]*>", " ", RegexOptions.ExplicitCapture, Patience)
        );

    /// <summary>The title of a page.</summary>
    public static string Title(string page) => First(page, "<title>(.*?)</title>") ?? "";

    /// <summary>The address that a page gives for its own state.</summary>
    public static string Canonical(string page) =>
        First(page, "<link rel=\"canonical\" href=\"([^\"]*)\"") ?? "";

    /// <summary>Whether a pattern is found in a page.</summary>
    public static bool Has(string page, string pattern) => Find(page, pattern).Count > 0;

    /// <summary>Every finding of a pattern.</summary>
    public static MatchCollection Find(string page, string pattern) =>
        Regex.Matches(page, pattern, RegexOptions.Singleline, Patience);

    private static string? First(string page, string pattern) =>
        Find(page, pattern) is [var first, ..]
            ? WebUtility.HtmlDecode(first.Groups[1].Value)
            : null;

    private static (string, string)? Field(string tag)
    {
        if (Attribute(tag, "name") is not { } name)
        {
            return null;
        }

        return tag.StartsWith("<select", StringComparison.Ordinal) ? (name, Chosen(tag))
            : !tag.Contains("type=\"checkbox\"") ? (name, Attribute(tag, "value") ?? "")
            : tag.Contains(" checked") ? (name, Attribute(tag, "value")!)
            : null;
    }

    private static string Chosen(string select) =>
        Find(select, "<option[^>]*>")
            .Select(option => option.Value)
            .FirstOrDefault(option => option.Contains(" selected"))
            is { } chosen
            ? Attribute(chosen, "value") ?? ""
            : "";

    private static string? Attribute(string tag, string name) =>
        First(tag[..(tag.IndexOf('>') + 1)], $" {name}=\"([^\"]*)\"");
}
