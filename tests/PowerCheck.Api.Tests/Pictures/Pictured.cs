using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Door;
using PowerCheck.Api.Pictures;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Curves;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Pictures;

/// <summary>Rigs ready to be drawn, and what stands in their pictures.</summary>
internal static class Pictured
{
    public const string Address = "https://rigs.example/v1/battery-safety";

    public static PictureContent Of(
        string body,
        SpreadMethod spread = SpreadMethod.None,
        bool all = false
    )
    {
        var faults = new Faults();
        var (request, _) = RequestReader.Read<CheckRequest>(Encoding.UTF8.GetBytes(body), faults);
        Assert.True(faults.None);
        return Of(RigMapper.Map(request!), request!, spread, all);
    }

    public static PictureContent Of(
        RigLabel label,
        CheckRequest request,
        SpreadMethod spread = SpreadMethod.None,
        bool all = false
    )
    {
        var answer = AnswerWriter.Write(
            new(request, new(all, spread, Remedies: false)),
            Check.Run(label, spread),
            links: null
        );
        return new(
            answer,
            CurveReport.Of(label, spread),
            Ratings.Of(request, answer.Assumptions),
            Address
        );
    }

    /// <summary>The answer as it is sent.</summary>
    public static JsonElement Json(PictureContent content) =>
        JsonSerializer.SerializeToElement(content.Answer, JsonSerializerOptions.Web);

    /// <summary>A figure of the answer, written as it is there.</summary>
    public static string Figure(JsonElement answer, string path)
    {
        foreach (var step in path.Split('.'))
        {
            answer = answer.GetProperty(step);
        }

        return answer.GetRawText();
    }

    /// <summary>What a picture says to those who do not see it.</summary>
    public static string Words(string svg) =>
        XDocument.Parse(svg).Root!.Element("{http://www.w3.org/2000/svg}desc")!.Value;

    /// <summary>All four pictures by name.</summary>
    public static IEnumerable<(string Name, string Svg)> All(PictureContent content) =>
        [
            ("slope", Picture.SlopeSvg(content)),
            ("course", Picture.CourseSvg(content)),
            ("limits", Picture.LimitsSvg(content)),
            ("sheet", Picture.SheetSvg(content)),
        ];

    /// <summary>Every text of a picture with the place that it takes up.</summary>
    public static IReadOnlyList<PicturedText> Texts(string svg) =>
        [
            .. XDocument
                .Parse(svg)
                .Descendants()
                .Where(element => element.Name.LocalName is "text")
                .Select(PicturedText.Of),
        ];

    /// <summary>Width and height of a picture.</summary>
    public static (double Width, double Height) Size(string svg)
    {
        var box = XDocument.Parse(svg).Root!.Attribute("viewBox")!.Value.Split(' ');
        return (
            double.Parse(box[2], CultureInfo.InvariantCulture),
            double.Parse(box[3], CultureInfo.InvariantCulture)
        );
    }
}

/// <summary>A text of a picture.</summary>
internal sealed record PicturedText(
    string Text,
    double Left,
    double Base,
    double Width,
    double Size
)
{
    public double Right => Left + Width;

    public double Top => Base - (0.76 * Size);

    public double Bottom => Base + (0.22 * Size);

    public bool Overlaps(PicturedText other) =>
        Left < other.Right
        && other.Left < Right
        && Top < other.Bottom - 0.5
        && other.Top < Bottom - 0.5;

    public static PicturedText Of(XElement text)
    {
        double Number(string name) =>
            double.Parse(text.Attribute(name)?.Value ?? "0", CultureInfo.InvariantCulture);
        var (x, y) = Moved(text.Attribute("transform")?.Value);
        return new(
            text.Value,
            x + Number("x"),
            y + Number("y"),
            Number("textLength"),
            Number("font-size")
        );
    }

    // translate(x y), and nothing else, is what the pictures use.
    private static (double X, double Y) Moved(string? transform)
    {
        if (transform is null)
        {
            return (0, 0);
        }

        Assert.StartsWith("translate(", transform, StringComparison.Ordinal);
        var numbers = transform["translate(".Length..^1]
            .Split(' ', ',')
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture))
            .ToArray();
        return (numbers[0], numbers.ElementAtOrDefault(1));
    }
}
