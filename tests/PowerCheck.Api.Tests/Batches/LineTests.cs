using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>A rig a line.</summary>
public class LineTests
{
    [Fact]
    public async Task Every_line_is_answered_once_and_in_order()
    {
        var body = string.Concat(
            Enumerable.Range(1, 300).Select(n => Fleet.Rig($"rig-{n}") + "\n")
        );

        var outcomes = (await Fleet.Send(body, query: Fleet.Quick + "&fields=verdict")).Outcomes();

        Assert.Equal(
            Enumerable.Range(1, 300).Select(n => $"{n} rig-{n}"),
            outcomes[..^1].Select(one => $"{one.GetProperty("line")} {one.Text("id")}")
        );
    }

    [Fact]
    public async Task A_line_is_answered_as_a_check_by_itself()
    {
        var rigs = SampleRigs.All.Select(SampleRigs.Of).ToArray();
        var body = string.Join('\n', rigs.Select(rig => rig.ToJsonString()));

        var outcomes = (await Fleet.Send(body)).Outcomes();

        foreach (var (rig, outcome) in rigs.Zip(outcomes))
        {
            var alone = (await Service.Check(rig.ToJsonString(), Fleet.Quick)).Json;
            var expected = JsonNode.Parse(alone.GetRawText())!.AsObject();
            Assert.True(expected.Remove("batterySafety") && expected.Remove("links"));
            Assert.Equal(expected.ToJsonString(), Compact(outcome.GetProperty("check")));
        }
    }

    [Fact]
    public async Task Blank_lines_are_passed_over_but_counted()
    {
        var outcomes = (
            await Fleet.Send($"\n  \r\n{Fleet.Rig("a")}\r\n\n{Fleet.Rig("b")}")
        ).Outcomes();

        Assert.Equal(["check 3", "check 5"], outcomes.Kinds());
    }

    [Fact]
    public async Task Nothing_at_all_gives_an_empty_tally()
    {
        var tally = Assert.Single((await Fleet.Send("")).Outcomes());

        Assert.Equal(0, tally.GetProperty("lines").GetInt32());
        Assert.True(tally.GetProperty("complete").GetBoolean());
    }

    [Fact]
    public async Task The_cautions_stand_once_in_the_tally()
    {
        var answer = await Fleet.Send($"{Fleet.Rig("a")}\n{Fleet.Rig("b")}\nnonsense\n");

        Assert.Equal(1, answer.Text.Split("\"batterySafety\"").Length - 1);
        Assert.True(answer.Outcomes()[^1].TryGetProperty("batterySafety", out _));
    }

    [Theory]
    [InlineData("{\"id\":\"cut\",\"motor\":{", "the body ends too early")]
    [InlineData("{} {}", "text follows the end of the body")]
    [InlineData("nonsense", "does not belong in JSON text")]
    [InlineData("{\"id\":\"x\",}", "comma")]
    public async Task A_line_that_is_no_JSON_is_a_problem_at_its_line(string line, string reason)
    {
        var outcomes = (
            await Fleet.Send($"{Fleet.Rig("a")}\n{line}\n{Fleet.Rig("b")}\n")
        ).Outcomes();

        Assert.Equal(["check 1", "problem 2", "check 3"], outcomes.Kinds());
        Assert.StartsWith("Line 2, column", outcomes.Problem().Text("detail"));
        Assert.Contains(reason, outcomes.Problem().Text("detail"));
    }

    [Fact]
    public async Task A_line_cut_off_at_the_end_is_a_problem()
    {
        var rig = Fleet.Rig("a");

        var outcomes = (await Fleet.Send($"{rig}\n{rig[..200]}")).Outcomes();

        Assert.Equal(["check 1", "problem 2"], outcomes.Kinds());
        Assert.Contains("ends too early", outcomes.Problem().Text("detail"));
    }

    [Fact]
    public async Task A_line_that_is_not_UTF_8_is_a_problem()
    {
        byte[] body =
        [
            .. Encoding.UTF8.GetBytes(Fleet.Rig("a") + "\n{\"id\":\""),
            0xE9,
            .. Encoding.UTF8.GetBytes("\"}\n" + Fleet.Rig("b")),
        ];

        var outcomes = (await Fleet.Send(body)).Outcomes();

        Assert.Equal(["check 1", "problem 2", "check 3"], outcomes.Kinds());
        Assert.Contains("not valid UTF-8", outcomes.Problem().Text("detail"));
    }

    [Theory]
    [InlineData(262_144, true)]
    [InlineData(262_145, false)]
    [InlineData(1_000_000, false)]
    public async Task A_line_may_have_as_many_bytes_as_a_body(int bytes, bool isRead)
    {
        var rig = Fleet.Rig("a");
        var body = $"{rig}\n{rig.PadRight(bytes)}\n{rig}\n";

        var outcomes = (await Fleet.Send(body)).Outcomes();

        Assert.Equal(["check 1", isRead ? "check 2" : "problem 2", "check 3"], outcomes.Kinds());
        if (!isRead)
        {
            Assert.Equal(413, outcomes.Problem().GetProperty("status").GetInt32());
        }
    }

    [Fact]
    public async Task A_problem_has_every_fault_of_its_line_and_its_id()
    {
        var rig = Rigs.Example().With("vehicle.massKg", 500).With("motor.kind", "brushles");
        rig["id"] = "heavy";

        var outcome = (await Fleet.Send(rig.ToJsonString())).Outcomes()[0];

        Assert.Equal("heavy", outcome.Text("id"));
        Assert.Equal(
            ["motor.kind", "vehicle.massKg"],
            outcome
                .GetProperty("problem")
                .GetProperty("errors")
                .EnumerateArray()
                .Select(error => error.Text("path"))
        );
    }

    [Fact]
    public async Task The_tally_counts_verdicts_and_problems()
    {
        var heavy = SampleRigs.Of("a controller that burns").ToJsonString();
        var little = Rigs.Least;

        var tally = (
            await Fleet.Send($"{heavy}\n{heavy}\n{Fleet.Rig("a")}\n{little}\n?\n")
        ).Outcomes()[^1];

        Assert.Equal("tally", tally.Text("kind"));
        Assert.Equal(5, tally.GetProperty("lines").GetInt32());
        Assert.Equal(1, tally.GetProperty("problems").GetInt32());
        Assert.Equal(
            """{"suitable":1,"limited":0,"unsuitable":2,"undetermined":1}""",
            Compact(tally.GetProperty("verdicts"))
        );
        Assert.False(tally.TryGetProperty("reason", out _));
    }

    private static string Compact(JsonElement element) =>
        JsonNode.Parse(element.GetRawText())!.ToJsonString();
}
