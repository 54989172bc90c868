using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Xml.Linq;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Faces;

/// <summary>Data, lines, drawing and page of a rig carry the same figures.</summary>
public class SameFiguresTests
{
    private static readonly (string Path, string Unit)[] Shown =
    [
        ("loadCases.climb.motorCurrentA", " A"),
        ("loadCases.climb.batteryCurrentA", " A"),
        ("endurance.minutes", " min"),
        ("temperatures.motorWinding.courseEndC", " °C"),
        ("temperatures.motorWinding.limitC", " °C"),
        ("temperatures.controller.courseEndC", " °C"),
        ("temperatures.battery.courseEndC", " °C"),
        ("drivetrain.torqueReserve", " times"),
        ("drivetrain.slipSlopeDegrees", "°"),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 200)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task The_drawing_has_the_figures_of_the_data(int number)
    {
        var (json, links) = await Asked(number);

        var drawing = await Service.Get(links.GetProperty("svg").GetString()!);

        var texts = XDocument
            .Parse(drawing.Text)
            .Descendants("{http://www.w3.org/2000/svg}text")
            .Select(text => text.Value)
            .ToArray();
        Assert.Contains(json.GetProperty("verdict").GetString()!.ToUpperInvariant(), texts);
        Assert.All(Figures(json), figure => Assert.Contains(figure, texts));
        Assert.Contains("All cautions: http://localhost/v1/battery-safety", texts);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task The_page_of_a_link_has_the_same_link_and_figures(int number)
    {
        var (json, links) = await Asked(number);
        var link = links.GetProperty("page").GetString()!;

        var page = await Service.Get(link);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        var text = WebUtility.HtmlDecode(page.Text);
        Assert.Contains($"value=\"{link}\"", text);
        Assert.Contains(links.GetProperty("png").GetString()!, text);
        // Those of the drawings on it; its own table rounds them for the eye.
        foreach (var (path, unit) in Shown.Take(2).Append(Shown[^1]))
        {
            if (
                JsonPath.Find(json, path) is { } figure
                && json.GetProperty("loadCases")
                    .GetProperty("climb")
                    .TryGetProperty("motorCurrentA", out _)
            )
            {
                Assert.Contains(Text(figure, unit), text);
            }
        }
    }

    [Fact]
    public async Task Most_rigs_have_all_of_them()
    {
        var figures = 0;
        foreach (var number in Enumerable.Range(1, 50))
        {
            figures += Figures((await Asked(number)).Json).Count();
        }

        Assert.InRange(figures, 50 * Shown.Length / 2, 50 * Shown.Length);
    }

    private static IEnumerable<string> Figures(JsonElement json) =>
        Shown
            .Select(one => (Found: JsonPath.Find(json, one.Path), one.Unit))
            .Where(one => one.Found is not null)
            .Select(one => Text(one.Found!.Value, one.Unit));

    private static string Text(JsonElement figure, string unit) =>
        figure.GetDouble().ToString(CultureInfo.InvariantCulture) + unit;

    private static async Task<(JsonElement Json, JsonElement Links)> Asked(int number)
    {
        var answer = await Service.Check(
            AnyBody.Of(number).ToJsonString(),
            "?spread=none&remedies=none"
        );
        return (answer.Json, answer.Json.GetProperty("links"));
    }
}
