using System.Globalization;
using System.Text.RegularExpressions;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Api.Texts;

namespace PowerCheck.Api.Tests.Texts;

/// <summary>A check in a few lines that a forum post can carry.</summary>
public class TextTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 200)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task It_has_at_most_eight_lines_caution_and_link_among_them(int number)
    {
        var (json, lines) = await Both(number);

        Assert.InRange(lines.Length, 4, 8);
        Assert.All(lines[..^1], line => Assert.InRange(line.Length, 1, 120));
        var leading = json.Json.GetProperty("batterySafety").GetProperty("leading").GetString();
        Assert.Contains(leading!, string.Join(' ', lines));
        Assert.Equal(json.Json.GetProperty("links").GetProperty("page").GetString(), lines[^1]);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task Its_figures_are_those_of_the_JSON(int number)
    {
        var (json, lines) = await Both(number, "?spread=none&remedies=none");
        var text = string.Join('\n', lines[..^1]);

        Assert.Contains($": {json.Json.GetProperty("verdict").GetString()}", text);
        // A line is written where the figures that it needs are there: then each of them must be.
        foreach (var (label, path, beside) in Told)
        {
            if (
                JsonPath.Find(json.Json, path) is { } figure
                && JsonPath.Find(json.Json, beside) is not null
            )
            {
                var shown = Regex.Match(text, label, RegexOptions.None, TimeSpan.FromSeconds(1));
                Assert.True(shown.Success, $"{path} is not told: {text}");
                Assert.Equal(
                    figure.GetDouble(),
                    double.Parse(shown.Groups[1].Value, CultureInfo.InvariantCulture)
                );
            }
        }
    }

    private const string Motor = "loadCases.climb.motorCurrentA";
    private const string Battery = "loadCases.climb.batteryCurrentA";

    private static readonly (string Label, string Path, string Beside)[] Told =
    [
        ("Climb: motor ([^ ,]+) A", Motor, Battery),
        ("Climb: .*battery ([^ ,]+) A", Battery, Motor),
        .. Warm("run: winding", "motorWinding"),
        .. Warm("controller", "controller"),
        .. Warm("pack", "battery"),
        ("run time ([^ ,]+) min", "endurance.minutes", "endurance.minutes"),
    ];

    private static IEnumerable<(string Label, string Path, string Beside)> Warm(
        string label,
        string part
    )
    {
        var (end, limit) = ($"temperatures.{part}.courseEndC", $"temperatures.{part}.limitC");
        yield return ($"{label} ([^ ,]+) of", end, limit);
        yield return ($"{label} [^ ,]+ of ([^ ,]+) °C", limit, end);
    }

    [Theory]
    [InlineData("Climb: motor ")]
    [InlineData(", battery ")]
    [InlineData("run: winding ")]
    [InlineData(", controller ")]
    [InlineData(", pack ")]
    [InlineData(", run time ")]
    public async Task Most_rigs_have_each_of_them(string label)
    {
        var texts = await Task.WhenAll(
            Enumerable.Range(1, 50).Select(number => Both(number, "?spread=none&remedies=none"))
        );

        var having = texts.Count(pair =>
            pair.Lines.Any(line => line.Contains(label, StringComparison.Ordinal))
        );
        Assert.InRange(having, 25, 50);
    }

    [Fact]
    public async Task A_climb_that_is_not_attained_says_so()
    {
        var body = Rigs.Example().With("controller.currentLimitA", 3).ToJsonString();

        var json = await Service.Check(body);
        var text = await Service.Check(body, "?spread=none&form=text");

        Assert.Equal("current-limit", JsonPath.Text(json.Json, "loadCases.climb.obstacle"));
        Assert.Contains(", not attained (current-limit).", text.Text);
    }

    [Fact]
    public async Task A_long_name_leaves_room_for_the_verdict()
    {
        var body = Rigs.Example().With("id", new string('x', 120)).ToJsonString();

        var text = await Service.Check(body, "?spread=none&form=text");

        Assert.Matches("^PowerCheck [0-9.]+: [a-z]+ \\(x{40}…\\)", text.Text);
    }

    [Theory]
    [InlineData("vehicle.massKg=3&id=a%0aBattery:+all+safe%1b[2J")]
    [InlineData("vehicle.massKg=3&x%0aBattery:+all+safe=1")]
    [InlineData("vehicle.massKg=3&id=a%e2%80%aeb")]
    public async Task What_a_caller_wrote_makes_no_line_of_its_own(string query)
    {
        var text = (await Service.Get($"/v1/checks?{query}&spread=none&form=text")).Text;

        Assert.DoesNotContain("\nBattery: all", text);
        Assert.DoesNotContain(text.Replace("\n", "", StringComparison.Ordinal), char.IsControl);
        Assert.DoesNotContain('\u202E', text);
    }

    [Theory]
    [InlineData("", 3, "")]
    [InlineData("a b", 1, "a b")]
    [InlineData("a\r\nb", 1, "a b")]
    public void Short_text_is_one_line(string text, int most, string expected) =>
        Assert.Equal(expected, string.Join('|', Lines.Wrap(text, most)));

    [Fact]
    public void Long_text_is_broken_between_words_and_ends_in_an_ellipsis()
    {
        var text = string.Join(' ', Enumerable.Repeat("seven77", 60));

        var lines = Lines.Wrap(text, 2).ToArray();

        Assert.Equal(2, lines.Length);
        Assert.All(lines, line => Assert.InRange(line.Length, 100, 120));
        Assert.EndsWith("seven77", lines[0]);
        Assert.EndsWith("seven77 …", lines[1]);
        Assert.Equal(text, string.Join(' ', Lines.Wrap(text, 9)));
    }

    [Fact]
    public void A_word_without_end_is_broken() =>
        Assert.All(
            Lines.Wrap(new string('x', 500), 9),
            line => Assert.InRange(line.Length, 1, 120)
        );

    private static async Task<(Answer Json, string[] Lines)> Both(
        int number,
        string query = Service.Alone
    )
    {
        var body = AnyBody.Of(number).ToJsonString();
        var json = await Service.Check(body, query);
        var text = await Service.Check(body, $"{query}&form=text");
        Assert.EndsWith("\n", text.Text);
        return (json, text.Text.TrimEnd('\n').Split('\n'));
    }
}
