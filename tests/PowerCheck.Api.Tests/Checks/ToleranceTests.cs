using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>What a caller says of how far off figures may be.</summary>
public class ToleranceTests
{
    private const string Mass = "vehicle.massKg";
    private const string Kv = "motor.kvRpmPerVolt";

    private static JsonObject Rig(string path, JsonNode? tolerance)
    {
        var rig = SampleRigs.Of("the example");
        rig["tolerances"] = new JsonObject { [path] = tolerance };
        return rig;
    }

    private static JsonElement Told(Answer answer, string path)
    {
        Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
        return answer
            .Json.GetProperty("tolerances")
            .EnumerateArray()
            .Single(t => t.GetProperty("path").GetString() == path);
    }

    [Theory]
    [InlineData("0.3", "relative", 0.3)]
    [InlineData("""{ "relative": 0.3 }""", "relative", 0.3)]
    [InlineData("""{ "factor": 1.2 }""", "factor", 1.2)]
    [InlineData("""{ "absolute": 0.25 }""", "absolute", 0.25)]
    [InlineData("""{ "low": 3, "high": 3.5 }""", "low", 3)]
    [InlineData("""{ "low": 3, "high": 3.5 }""", "high", 3.5)]
    public async Task A_tolerance_is_taken_in_each_way_in_which_it_can_be_said(
        string tolerance,
        string way,
        double figure
    )
    {
        var told = Told(
            await Service.Check(Rig(Mass, JsonNode.Parse(tolerance)).ToJsonString()),
            Mass
        );

        Assert.Equal(figure, told.GetProperty("spread").GetProperty(way).GetDouble());
        Assert.Equal("caller", told.GetProperty("basis").GetString());
    }

    [Fact]
    public async Task A_figure_whose_caller_says_nothing_is_as_far_off_as_its_label_usually_is()
    {
        var answer = await Service.Check(Rig(Mass, 0.3).ToJsonString());

        Assert.Equal("label", Told(answer, Kv).GetProperty("basis").GetString());
    }

    [Fact]
    public async Task A_figure_held_to_be_exact_has_no_tolerance()
    {
        var answer = await Service.Check(Rig(Mass, 0).ToJsonString());

        Assert.DoesNotContain(
            answer.Json.GetProperty("tolerances").EnumerateArray(),
            t => t.GetProperty("path").GetString() == Mass
        );
    }

    [Fact]
    public async Task A_wider_tolerance_widens_what_depends_on_it()
    {
        async Task<double> Width(JsonNode tolerance)
        {
            var answer = await Service.Check(
                Rig(Mass, tolerance).ToJsonString(),
                "?findings=all&spread=linear"
            );
            var climb = answer
                .Json.GetProperty("findings")
                .EnumerateArray()
                .Single(f =>
                    f.GetProperty("code").GetString() == "motor.winding-temperature"
                    && f.GetProperty("loadCase").GetString() == "climb"
                );
            return climb.GetProperty("high").GetDouble() - climb.GetProperty("low").GetDouble();
        }

        Assert.True(await Width(0.4) > 1.1 * await Width(0));
    }

    [Fact]
    public async Task What_is_assumed_may_have_a_tolerance_too()
    {
        var answer = await Service.Check(Rig("vehicle.drivetrain.efficiency", 0.01).ToJsonString());

        Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
    }

    [Theory]
    [InlineData("motor.kvRpmPerVolts", "0.1", "unknown-member", "Did you mean motor.kvRpmPerVolt?")]
    [InlineData("motor.kind", "0.1", "unknown-member", "words and counts have no tolerance")]
    [InlineData(Mass, "\"0.1\"", "wrong-type", "must be a number or an object")]
    [InlineData(Mass, "2", "out-of-range", "from 0 to 0.95")]
    [InlineData(Mass, """{ "factor": 0.5 }""", "out-of-range", "from 1 to 10")]
    [InlineData(Mass, """{ "share": 0.5 }""", "unknown-member", "relative")]
    [InlineData(Mass, "{}", "conflict", "said in one way")]
    [InlineData(Mass, """{ "low": 3 }""", "conflict", "said in one way")]
    [InlineData(Mass, """{ "relative": 0.1, "factor": 1.1 }""", "conflict", "said in one way")]
    [InlineData(Mass, """{ "low": 5, "high": 6 }""", "conflict", "must hold vehicle.massKg")]
    [InlineData("battery.burstC", "0.1", "conflict", "Give battery.burstC too")]
    public async Task What_cannot_be_a_tolerance_is_told_with_its_cure(
        string path,
        string tolerance,
        string code,
        string cure
    )
    {
        var answer = await Service.Check(Rig(path, JsonNode.Parse(tolerance)).ToJsonString());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        var fault = answer.Json.GetProperty("errors").EnumerateArray().Single();
        Assert.StartsWith($"tolerances.{path}", fault.GetProperty("path").GetString());
        Assert.Equal(code, fault.GetProperty("code").GetString());
        Assert.Contains(cure, answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tolerances_are_an_object_and_name_each_path_once()
    {
        var rig = SampleRigs.Of("the example");
        rig["tolerances"] = new JsonArray();
        var list = await Service.Check(rig.ToJsonString());
        var twice = await Service.Check(
            Rig(Mass, 0.1)
                .ToJsonString()
                .Replace(
                    $"\"{Mass}\":0.1",
                    $"\"{Mass}\":0.1,\"{Mass}\":0.2",
                    StringComparison.Ordinal
                )
        );

        Assert.Contains("wrong-type", list.Text, StringComparison.Ordinal);
        Assert.Contains("doubled", twice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_tolerances_than_a_rig_has_figures_are_refused()
    {
        var rig = SampleRigs.Of("the example");
        rig["tolerances"] = new JsonObject(
            Enumerable
                .Range(0, 201)
                .Select(n => KeyValuePair.Create($"motor.m{n}", (JsonNode?)JsonValue.Create(0.1)))
        );

        var answer = await Service.Check(rig.ToJsonString());

        Assert.Contains("too many members", answer.Text, StringComparison.Ordinal);
    }
}
