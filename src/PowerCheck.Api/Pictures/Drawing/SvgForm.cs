using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>A drawing as SVG: text stays text, and nothing in it needs anything from elsewhere.</summary>
internal static partial class SvgForm
{
    private const string Families = "DejaVu Sans, Verdana, sans-serif";
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The drawing.</summary>
    /// <param name="drawing">What is drawn.</param>
    /// <param name="key">What its ids start with, so that several can stand in one page.</param>
    /// <param name="title">What it is, in a few words.</param>
    /// <param name="description">What it shows, in words.</param>
    public static string Of(IDrawing drawing, string key, string title, string description)
    {
        var height = MathF.Ceiling(drawing.Height);
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, Paper.Width, height), stream))
        {
            Sheet.Draw(canvas, drawing, height);
        }

        stream.Position = 0;
        var root = XDocument.Load(stream).Root!;
        foreach (var text in root.Descendants(Svg + "text"))
        {
            Tidy(text);
        }

        foreach (var path in root.Descendants(Svg + "path"))
        {
            path.SetAttributeValue("d", Shorter((string?)path.Attribute("d") ?? ""));
        }

        Prefix(root, key);
        Name(root, key, height, Typesetting.Legal(title), Typesetting.Legal(description));
        return root.ToString(SaveOptions.DisableFormatting);
    }

    private static void Name(
        XElement root,
        string key,
        float height,
        string title,
        string description
    )
    {
        root.Attributes().Where(attribute => attribute.IsNamespaceDeclaration).Remove();
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue(
            "viewBox",
            string.Create(CultureInfo.InvariantCulture, $"0 0 {Paper.Width} {height}")
        );
        root.SetAttributeValue("aria-labelledby", $"{key}-title {key}-desc");
        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", $"{key}-title"), title),
            new XElement(Svg + "desc", new XAttribute("id", $"{key}-desc"), description)
        );
    }

    // One place and one length a text in place of a place a letter: it is found and read as a whole, and keeps its room in
    // another machine's letters.
    private static void Tidy(XElement text)
    {
        var content = text.Value.Trim();
        if (content.Length == 0)
        {
            text.Remove();
            return;
        }

        var size = (float)text.Attribute("font-size")!;
        var bold = text.Attribute("font-weight")?.Value is "bold" or "600" or "700";
        text.Value = content;
        text.SetAttributeValue("font-family", Families);
        text.SetAttributeValue("x", First(text.Attribute("x")));
        text.SetAttributeValue("y", First(text.Attribute("y")));
        text.SetAttributeValue(
            "textLength",
            Typesetting
                .Width(content, new(size, bold))
                .ToString("0.##", CultureInfo.InvariantCulture)
        );
        text.SetAttributeValue("lengthAdjust", "spacingAndGlyphs");
    }

    // A tenth of a px is as fine as anything is seen.
    private static string Shorter(string path) =>
        Places()
            .Replace(
                path,
                place =>
                    double.Parse(place.ValueSpan, CultureInfo.InvariantCulture)
                        .ToString("0.#", CultureInfo.InvariantCulture)
            );

    [GeneratedRegex(@"-?[0-9]+\.[0-9]+", RegexOptions.None, 1000)]
    private static partial Regex Places();

    private static string First(XAttribute? places) =>
        places?.Value.Split(',', StringSplitOptions.TrimEntries)[0] ?? "0";

    // Ids of its own, counted from 1, so that the same drawing is the same document.
    private static void Prefix(XElement root, string key)
    {
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        string Own(string id)
        {
            ids.TryAdd(id, string.Create(CultureInfo.InvariantCulture, $"{key}-{ids.Count + 1}"));
            return ids[id];
        }

        foreach (var attribute in root.DescendantsAndSelf().Attributes().ToArray())
        {
            if (attribute.Name.LocalName is "id")
            {
                attribute.Value = Own(attribute.Value);
            }
            else if (attribute.Value.StartsWith("url(#", StringComparison.Ordinal))
            {
                attribute.Value = $"url(#{Own(attribute.Value[5..^1])})";
            }
            else if (attribute.Name.LocalName is "style" or "space")
            {
                attribute.Remove();
            }
        }
    }
}
