using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Shortlists;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Shortlists;

/// <summary>Choosing a part over HTTP: what the answer asks for, sent to a check, holds.</summary>
public class ShortlistTests
{
    private static JsonObject Search() => JsonNode.Parse(ExampleSearch.Json)!.AsObject();

    private static async Task<Answer> Asked(JsonObject body, string query = Service.Alone) =>
        await Service.Post("/v1/shortlists" + query, body.ToJsonString());

    [Fact]
    public async Task A_controller_that_is_just_as_required_holds_in_a_check()
    {
        var answer = await Asked(Search());
        Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
        var requirement = answer.Json.GetProperty("requirement").EnumerateArray().ToArray();
        Assert.True(requirement.Length > 5);

        var check = Search()["check"]!.DeepClone().AsObject();
        foreach (var figure in requirement.Where(r => r.TryGetProperty("unit", out _)))
        {
            var bound = figure.TryGetProperty("minimum", out var least)
                ? least
                : figure.GetProperty("maximum");
            check.With(Text(figure, "path"), bound.GetDouble());
        }

        check.With("controller.motorKinds", new JsonArray("brushless"));
        check.With("controller.sensorInput", true);
        var checkedRig = await Service.Check(check.ToJsonString(), "?findings=all&spread=none");
        Assert.True(checkedRig.Status == HttpStatusCode.OK, checkedRig.Text);
        var findings = checkedRig.Json.GetProperty("findings").EnumerateArray().ToArray();
        Assert.All(
            requirement.Where(figure => figure.TryGetProperty("unit", out _)),
            figure =>
            {
                var setters = findings
                    .Where(f => Text(f, "code") == Text(figure, "setBy"))
                    .ToArray();
                Assert.NotEmpty(setters);
                Assert.All(setters, f => Assert.Equal("holds", Text(f, "outcome")));
            }
        );
    }

    [Fact]
    public async Task Candidates_are_weighed_with_their_spread_unless_that_is_not_asked_for()
    {
        var weighed = await Asked(Search(), "");
        var alone = await Asked(Search());

        Assert.True(Least(weighed) > Least(alone), "a part must do more where figures may be off");

        static double Least(Answer answer) =>
            answer
                .Json.GetProperty("requirement")
                .EnumerateArray()
                .Single(r => Text(r, "path") == "controller.continuousCurrentA")
                .GetProperty("minimum")
                .GetDouble();
    }

    [Fact]
    public async Task The_link_of_a_candidate_leads_to_the_check_of_the_rig_with_it()
    {
        var candidates = (await Asked(Search())).Json.GetProperty("candidates");

        foreach (var candidate in candidates.EnumerateArray())
        {
            var link = candidate.GetProperty("links").GetProperty("self").GetString()!;
            var check = (await Service.Get(link)).Json;

            Assert.Equal(Text(candidate, "id"), Text(check, "id"));
            Assert.Equal(Text(candidate, "verdict"), Text(check, "verdict"));
            Assert.Equal(
                Text(candidate, "message"),
                Text(check.GetProperty("findings").EnumerateArray().First(), "message")
            );
        }
    }

    [Fact]
    public async Task Candidates_are_ranked_and_compared_with_what_is_fitted()
    {
        var answer = await Asked(Search());
        var candidates = answer.Json.GetProperty("candidates").EnumerateArray().ToArray();

        Assert.Equal(["large", "small"], candidates.Select(c => Text(c, "id")));
        Assert.Equal([1, 2], candidates.Select(c => c.GetProperty("rank").GetInt32()));
        Assert.Contains(
            candidates[0].GetProperty("differences").EnumerateArray(),
            d =>
                Text(d, "path") == "controller.continuousCurrentA"
                && d.GetProperty("fitted").GetDouble() == 25
                && d.GetProperty("candidate").GetDouble() == 80
        );
        Assert.True(answer.Json.TryGetProperty("batterySafety", out _));
    }

    [Fact]
    public async Task No_more_candidates_are_answered_than_asked_for()
    {
        var body = Search();
        body["limit"] = 1;
        var answer = await Asked(body);

        var only = answer.Json.GetProperty("candidates").EnumerateArray().Single();
        Assert.Equal("large", Text(only, "id"));
    }

    [Fact]
    public async Task Every_part_can_be_sought_and_the_sought_one_left_out()
    {
        var rig = Rigs.Example();
        foreach (var part in new[] { "motor", "controller", "battery", "pinion" })
        {
            var check = rig.DeepClone().AsObject();
            check.Remove(part);
            if (part == "pinion")
            {
                check["vehicle"]!["drivetrain"]!.AsObject().Remove("pinionTeeth");
            }

            var answer = await Asked(new() { ["check"] = check, ["seek"] = part });

            Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
            Assert.NotEmpty(answer.Json.GetProperty("requirement").EnumerateArray());
        }
    }

    [Theory]
    [InlineData("check", null, "check", "missing")]
    [InlineData("seek", null, "seek", "missing")]
    [InlineData("seek", "\"servo\"", "seek", "out-of-range")]
    [InlineData("candidates", """[{"motor":{}}]""", "candidates.0.controller", "missing")]
    [InlineData(
        "candidates",
        """[{"controller":{},"pinionTeeth":9}]""",
        "candidates.0.pinionTeeth",
        "conflict"
    )]
    [InlineData(
        "candidates",
        """[{"id":"1","controller":{}},{"controller":{}}]""",
        "candidates.1.id",
        "conflict"
    )]
    [InlineData(
        "fitted",
        """{"controller":{"minCells":4,"maxCells":2}}""",
        "fitted.controller.minCells",
        "conflict"
    )]
    [InlineData(
        "candidates",
        """[{"controller":{"minCells":4,"maxCells":2}}]""",
        "candidates.0.controller.minCells",
        "conflict"
    )]
    public async Task What_is_wrong_is_told_by_its_path(
        string member,
        string? json,
        string path,
        string code
    )
    {
        var body = Search();
        body.Remove(member);
        if (json is not null)
        {
            body[member] = JsonNode.Parse(json);
        }

        var errors = (await Asked(body)).Errors;

        Assert.Contains(errors, e => Text(e, "path") == path && Text(e, "code") == code);
    }

    [Fact]
    public async Task A_part_that_is_not_sought_must_be_there()
    {
        var body = Search();
        body["check"]!.AsObject().Remove("motor");

        Assert.Equal(["check.motor"], (await Asked(body)).ErrorPaths);
    }

    [Fact]
    public async Task A_pinion_is_sought_only_where_it_makes_the_ratio()
    {
        var body = Search();
        body["seek"] = "pinion";
        body.Remove("candidates");
        body.Remove("fitted");
        body["check"]!["controller"] = new JsonObject();
        body["check"]!["vehicle"]!["drivetrain"] = new JsonObject { ["overallRatio"] = 42 };

        Assert.Equal(["check.vehicle.drivetrain.spurTeeth"], (await Asked(body)).ErrorPaths);
    }

    [Fact]
    public async Task A_pinion_that_is_sought_is_not_given_too()
    {
        var body = new JsonObject { ["check"] = Rigs.Example(), ["seek"] = "pinion" };

        Assert.Equal(["check.vehicle.drivetrain.pinionTeeth"], (await Asked(body)).ErrorPaths);
    }

    [Fact]
    public async Task What_was_assumed_is_listed()
    {
        var answer = await Asked(Search());

        Assert.Contains(
            answer.Json.GetProperty("assumptions").EnumerateArray(),
            a => Text(a, "path") == "vehicle.drivetrain.efficiency"
        );
    }

    [Fact]
    public async Task A_limit_that_the_part_does_not_help_is_told_and_none_where_all_hold()
    {
        var body = Search();
        body["check"]!["vehicle"]!["massKg"] = 9;
        var unmet = (await Asked(body)).Json.GetProperty("unmet").EnumerateArray().ToArray();

        Assert.Contains(
            unmet,
            limit =>
                Text(limit, "code") == "motor.winding-temperature"
                && Text(limit, "outcome") == "fails"
                && Text(limit, "message").Contains("°C", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(unmet, limit => Text(limit, "outcome") == "unknown");
        Assert.False((await Asked(Search())).Json.TryGetProperty("unmet", out _));
    }

    [Fact]
    public async Task A_tolerance_between_two_ends_is_of_the_part_of_the_check_alone()
    {
        // A candidate that holds far better than needed stays so, whatever the part of the check is said to be.
        var body = Search();
        body["check"]!["controller"] = new JsonObject();
        body["candidates"]![1]!["controller"]!["onResistanceMilliohm"] = 1;
        var free = await Asked(body, "");
        body["check"]!["controller"] = new JsonObject { ["onResistanceMilliohm"] = 40 };
        body["check"]!["tolerances"] = new JsonObject
        {
            ["controller.onResistanceMilliohm"] = new JsonObject { ["low"] = 30, ["high"] = 50 },
        };
        var bound = await Asked(body, "");

        Assert.True(bound.Status == HttpStatusCode.OK, bound.Text);
        Assert.Equal(Large(free), Large(bound));

        static string Large(Answer answer) =>
            answer
                .Json.GetProperty("candidates")
                .EnumerateArray()
                .Single(c => Text(c, "id") == "large")
                .GetRawText();
    }

    [Fact]
    public async Task A_tolerance_that_is_wrong_is_told_by_its_path()
    {
        var body = Search();
        body["check"]!["tolerances"] = new JsonObject { ["vehicle.masKg"] = 0.1 };

        Assert.Equal(["check.tolerances.vehicle.masKg"], (await Asked(body)).ErrorPaths);
    }

    private static string Text(JsonElement element, string member) =>
        element.TryGetProperty(member, out var text) ? text.GetString()! : "";
}
