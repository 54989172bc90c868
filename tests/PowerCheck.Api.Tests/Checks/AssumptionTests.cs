using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Tests.Door;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>What was assumed can be said by the caller instead, and says the same then.</summary>
public class AssumptionTests
{
    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task An_assumption_that_is_sent_is_assumed_no_more_and_changes_nothing(string name)
    {
        var first = await Checked(SampleRigs.Of(name));
        var groups = Assumptions(first).GroupBy(assumption => List(Path(assumption))).ToArray();
        Assert.True(groups.Length > 20, "hardly anything was assumed");

        foreach (var group in groups)
        {
            var body = SampleRigs.Of(name);
            Send(body, group);

            var second = await Checked(body);

            var left = Assumptions(second).Select(Path).ToHashSet();
            Assert.All(group, assumption => Assert.DoesNotContain(Path(assumption), left));
            AssertSame(
                first.Json.GetProperty("loadCases"),
                second.Json.GetProperty("loadCases"),
                group.Key
            );
        }
    }

    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task Nothing_is_assumed_any_more_when_everything_that_was_is_sent(string name)
    {
        var body = SampleRigs.Of(name);
        var first = await Checked(body);
        var second = first;
        // One assumption may only make sense beside another, so that a second round may be needed.
        for (var round = 0; round < 2 && Assumptions(second).Any(); round++)
        {
            Send(body, Assumptions(second));
            second = await Checked(body);
        }

        Assert.Empty(Assumptions(second).Select(Path));
        Assert.Equal(
            first.Json.GetProperty("verdict").GetString(),
            second.Json.GetProperty("verdict").GetString()
        );
        AssertSame(
            first.Json.GetProperty("loadCases"),
            second.Json.GetProperty("loadCases"),
            "all"
        );
    }

    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task An_assumption_is_in_the_unit_of_its_member(string name)
    {
        foreach (var assumption in Assumptions(await Checked(SampleRigs.Of(name))))
        {
            var member = RequestMembers.Of(Generic(Path(assumption)));
            var unit = assumption.TryGetProperty("unit", out var shown) ? shown.GetString() : "";
            Assert.Equal(member.Figure?.Unit.Symbol ?? "", unit);
            Assert.Equal(member.Figure is null, assumption.TryGetProperty("word", out _));
        }
    }

    private static async Task<Answer> Checked(JsonObject body)
    {
        var answer = await Service.Check(body.ToJsonString(), "?spread=none");
        Assert.True(answer.Status == HttpStatusCode.OK, $"{body.ToJsonString()}\n{answer.Text}");
        return answer;
    }

    private static void Send(JsonObject body, IEnumerable<JsonElement> assumptions)
    {
        foreach (var assumption in assumptions)
        {
            body.With(Path(assumption), Value(assumption));
        }
    }

    private static JsonNode? Value(JsonElement assumption)
    {
        if (!assumption.TryGetProperty("word", out var word))
        {
            return JsonNode.Parse(assumption.GetProperty("value").GetRawText());
        }

        return word.GetString() switch
        {
            "true" => true,
            "false" => false,
            var text => text,
        };
    }

    private static IEnumerable<JsonElement> Assumptions(Answer answer) =>
        answer.Json.GetProperty("assumptions").EnumerateArray();

    private static string Path(JsonElement assumption) =>
        assumption.GetProperty("path").GetString()!;

    /// <summary>What belongs to one list is sent together: an item alone would lack what it must have.</summary>
    private static string List(string path)
    {
        var steps = path.Split('.');
        var position = Array.FindIndex(steps, step => char.IsAsciiDigit(step[0]));
        return position < 0 ? path : string.Join('.', steps[..position]);
    }

    /// <summary>The path with every list position 0.</summary>
    private static string Generic(string path) =>
        string.Join('.', path.Split('.').Select(step => char.IsAsciiDigit(step[0]) ? "0" : step));

    private static void AssertSame(JsonElement first, JsonElement second, string what)
    {
        foreach (var name in first.EnumerateObject().Select(one => one.Name))
        {
            var (one, other) = (first.GetProperty(name), second.GetProperty(name));
            Assert.Equal(
                one.EnumerateObject().Select(figure => figure.Name),
                other.EnumerateObject().Select(figure => figure.Name)
            );
            foreach (var figure in one.EnumerateObject())
            {
                var same = Same(figure.Value, other.GetProperty(figure.Name));
                Assert.True(
                    same,
                    $"{what} sent: {name}.{figure.Name} was {figure.Value} and is {other.GetProperty(figure.Name)}"
                );
            }
        }
    }

    private static bool Same(JsonElement one, JsonElement other) =>
        one.ValueKind == JsonValueKind.Number
            ? Math.Abs(one.GetDouble() - other.GetDouble())
                <= 2e-5 * Math.Abs(one.GetDouble()) + 1e-9
            : one.GetRawText() == other.GetRawText();
}
