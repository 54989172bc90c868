using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>How sure an answer says that it is, against rigs drawn from what it prints.</summary>
public class SpreadTests
{
    private const int Draws = 800;

    [Theory]
    [InlineData("the example")]
    [InlineData("a controller that burns")]
    public async Task Rigs_drawn_from_the_printed_spreads_pass_a_limit_as_often_as_it_says(
        string name
    )
    {
        var first = await Checked(SampleRigs.Of(name), "?findings=all&spread=linear");
        var told = Findings(first.Json)
            .Where(pair => pair.Value.TryGetProperty("exceedanceProbability", out _))
            .ToDictionary(
                pair => pair.Key,
                pair => pair.Value.GetProperty("exceedanceProbability").GetDouble()
            );
        Assert.True(told.Count > 10, "hardly any limit has a probability");
        var past = told.Keys.ToDictionary(key => key, _ => 0);
        var dice = new Random(1);

        for (var n = 0; n < Draws; n++)
        {
            var drawn = await Settled(
                PrintedSpreads.Drawn(
                    SampleRigs.Of(name),
                    first.Json,
                    _ => PrintedSpreads.Normal(dice)
                )
            );
            foreach (var (key, finding) in Findings(drawn.Json))
            {
                past[key] = past.GetValueOrDefault(key) + (IsPast(finding) ? 1 : 0);
            }
        }

        // Four standard errors of a share of so many draws, and what the answer itself may be off.
        var tolerance = (4 * Math.Sqrt(0.25 / Draws)) + 0.02;
        Assert.All(
            told,
            pair =>
                Assert.InRange(
                    (double)past[pair.Key] / Draws,
                    pair.Value - tolerance,
                    pair.Value + tolerance
                )
        );
    }

    [Fact]
    public async Task How_sure_it_is_is_told_unless_it_is_not_asked_for()
    {
        var answer = await Checked(SampleRigs.Of("the example"), "?findings=all");

        Assert.Equal("linear", answer.Json.GetProperty("spread").GetProperty("asked").GetString());
        Assert.True(answer.Json.TryGetProperty("confidence", out _));
        Assert.Contains(
            Findings(answer.Json).Values,
            finding => finding.TryGetProperty("exceedanceProbability", out _)
        );
    }

    [Fact]
    public async Task Nothing_is_said_of_how_sure_it_is_of_the_best_estimates_alone()
    {
        var answer = await Checked(SampleRigs.Of("the example"), "?findings=all&spread=none");

        Assert.Equal(
            ("none", "none", 0),
            (
                answer.Json.GetProperty("spread").GetProperty("asked").GetString(),
                answer.Json.GetProperty("spread").GetProperty("used").GetString(),
                answer.Json.GetProperty("spread").GetProperty("samples").GetInt32()
            )
        );
        Assert.All(
            Findings(answer.Json).Values,
            finding => Assert.False(finding.TryGetProperty("exceedanceProbability", out _))
        );
    }

    [Fact]
    public async Task The_method_is_one_of_three()
    {
        var answer = await Service.Check(
            SampleRigs.Of("the example").ToJsonString(),
            "?spread=some"
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        var fault = answer.Json.GetProperty("errors").EnumerateArray().Single();
        Assert.Equal("spread", fault.GetProperty("path").GetString());
        Assert.Equal(
            ["none", "linear", "montecarlo"],
            fault.GetProperty("allowed").EnumerateArray().Select(word => word.GetString())
        );
    }

    [Fact]
    public async Task A_given_figure_is_listed_with_how_far_off_it_may_be()
    {
        var answer = await Checked(SampleRigs.Of("the example"), Service.Alone);
        var tolerances = answer.Json.GetProperty("tolerances").EnumerateArray().ToArray();

        var kv = tolerances.Single(t => Path(t) == "motor.kvRpmPerVolt");
        Assert.Equal(3300, kv.GetProperty("value").GetDouble());
        Assert.Equal(0.05, kv.GetProperty("spread").GetProperty("relative").GetDouble());
        var rating = tolerances.Single(t => Path(t) == "controller.continuousCurrentA");
        Assert.Equal(42, rating.GetProperty("spread").GetProperty("low").GetDouble());
        Assert.Equal(63, rating.GetProperty("spread").GetProperty("high").GetDouble());
        Assert.DoesNotContain(tolerances, t => Path(t) == "course.climbSlopeDegrees");
    }

    private static async Task<Answer> Checked(JsonObject body, string query)
    {
        var answer = await Service.Check(body.ToJsonString(), query);
        Assert.True(answer.Status == HttpStatusCode.OK, $"{body.ToJsonString()}\n{answer.Text}");
        return answer;
    }

    // Two figures drawn apart may contradict each other: the one that must be the lower is then put just under the other.
    private static async Task<Answer> Settled(JsonObject body)
    {
        var answer = await Service.Check(
            body.ToJsonString(),
            "?findings=all&remedies=none&spread=none"
        );
        for (var n = 0; n < 20 && answer.Status == HttpStatusCode.UnprocessableEntity; n++)
        {
            foreach (var fault in answer.Json.GetProperty("errors").EnumerateArray())
            {
                var upper = fault.GetProperty("related")[0].GetString()!;
                body.With(Path(fault), 0.999 * Figure(body, upper));
            }

            answer = await Service.Check(
                body.ToJsonString(),
                "?findings=all&remedies=none&spread=none"
            );
        }

        Assert.True(answer.Status == HttpStatusCode.OK, $"{body.ToJsonString()}\n{answer.Text}");
        return answer;
    }

    private static double Figure(JsonObject body, string path) =>
        path.Split('.')
            .Aggregate(
                (JsonNode)body,
                (node, step) => char.IsAsciiDigit(step[0]) ? node[int.Parse(step)]! : node[step]!
            )
            .GetValue<double>();

    private static Dictionary<string, JsonElement> Findings(JsonElement answer) =>
        answer
            .GetProperty("findings")
            .EnumerateArray()
            .Where(finding => finding.TryGetProperty("limit", out _))
            .GroupBy(finding =>
                $"{finding.GetProperty("code")} {(finding.TryGetProperty("loadCase", out var one) ? one.GetString() : "")}"
            )
            .Where(group => group.Count() == 1)
            .ToDictionary(group => group.Key, group => group.Single());

    private static bool IsPast(JsonElement finding)
    {
        if (!finding.TryGetProperty("estimate", out var estimate))
        {
            // A figure that grows without end.
            return finding.GetProperty("outcome").GetString() is "fails" or "doubtful";
        }

        var (figure, limit) = (estimate.GetDouble(), finding.GetProperty("limit").GetDouble());
        return PrintedSpreads.IsAtLeast(finding.GetProperty("code").GetString()!)
            ? figure < limit
            : figure > limit;
    }

    private static string Path(JsonElement figure) => figure.GetProperty("path").GetString()!;
}
