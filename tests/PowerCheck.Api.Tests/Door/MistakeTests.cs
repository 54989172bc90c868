using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>Bodies with one mistake each get one clear error; a body with many gets them all.</summary>
public class MistakeTests
{
    /// <summary>A path of the example rig, what is put there as JSON, and the code of the one error; the error stands at the path unless said otherwise.</summary>
    public static TheoryData<string, string, string, string?> Mistakes =>
        new()
        {
            { "motor.kvRpmPerVlot", "3300", "unknown-member", null },
            { "colour", "\"red\"", "unknown-member", null },
            { "battery.capacityMah", "\"2200\"", "wrong-type", null },
            { "motor.kind", "3", "wrong-type", null },
            { "motor.kind", "\"Brushless\"", "out-of-range", null },
            { "battery.chemistry", "\"lead\"", "out-of-range", null },
            { "course.climbSlopeDegrees", "120", "out-of-range", null },
            { "vehicle.massKg", "-3", "out-of-range", null },
            { "battery.capacityMah", "1e999", "not-finite", null },
            { "vehicle.massKg", "-1e999", "not-finite", null },
            { "battery.seriesCells", "2.5", "wrong-type", null },
            { "vehicle.massKg", "null", "missing", null },
            { "motor", "null", "missing", null },
            { "motor", "[]", "wrong-type", null },
            { "accessories", "{}", "wrong-type", null },
            { "motor.sensored", "\"yes\"", "wrong-type", null },
            { "controller.minCells", "4", "conflict", null },
            { "vehicle.drivetrain.overallRatio", "40", "conflict", null },
            { "vehicle.drivetrain.axleRatio", "null", "conflict", "vehicle.drivetrain" },
            { "motor.noLoadPoints.0.currentA", "null", "missing", null },
            { "controller.motorKinds.0", "\"steam\"", "out-of-range", null },
            { "accessories.0", "1", "wrong-type", null },
            { "motor.name", "7", "wrong-type", null },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public async Task A_body_with_one_mistake_gets_one_error(
        string path,
        string value,
        string code,
        string? at
    )
    {
        var mark = "\"here it is put\"";
        var body = Rigs.Example().With(path, "here it is put").ToJsonString().Replace(mark, value);

        var error = (await Service.Check(body)).OnlyError();

        Assert.Equal(at ?? path, error.GetProperty("path").GetString());
        Assert.Equal(code, error.GetProperty("code").GetString());
        var message = error.GetProperty("message").GetString()!;
        Assert.Contains((at ?? path).Split('.')[^1], message);
        Assert.DoesNotContain("System.", message);
    }

    [Fact]
    public async Task A_body_with_twelve_mistakes_in_different_objects_gets_twelve_errors()
    {
        const string body = """
            {
              "motor": {
                "kvRpmPerVolt": "3300",
                "noLoadPoints": [{ "voltageV": 1e999, "currentA": 2 }],
                "thermal": { "windingJPerK": -1 }
              },
              "controller": {
                "holdMode": "DragBrake",
                "receiverSupply": { "voltageV": true },
                "cellLimits": [{ "chemistry": "lipo", "minCells": 3, "maxCells": 2 }]
              },
              "battery": { "seriesCells": 99 },
              "vehicle": { "drivetrain": { "pinionPitch": {} } },
              "course": { "ambientC": 500, "segments": [{ "kind": "rest" }] },
              "wiring": { "batteryLeedAwg": 14 }
            }
            """;

        var answer = await Service.Check(body);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(
            [
                "motor.kvRpmPerVolt",
                "motor.noLoadPoints.0.voltageV",
                "motor.thermal.windingJPerK",
                "controller.holdMode",
                "controller.receiverSupply.voltageV",
                "battery.seriesCells",
                "vehicle.massKg",
                "course.ambientC",
                "course.segments.0.seconds",
                "wiring.batteryLeedAwg",
                "controller.cellLimits.0.minCells",
                "vehicle.drivetrain.pinionPitch",
            ],
            answer.ErrorPaths
        );
    }

    [Fact]
    public async Task A_member_given_twice_is_refused_though_both_agree()
    {
        var error = (
            await Service.Check(
                """{"motor":{},"controller":{},"battery":{},"vehicle":{"massKg":3,"massKg":3}}"""
            )
        ).OnlyError();

        Assert.Equal("vehicle.massKg", error.GetProperty("path").GetString());
        Assert.Equal("doubled", error.GetProperty("code").GetString());
    }

    [Fact]
    public async Task An_unknown_member_is_answered_with_the_nearest_name()
    {
        var error = (
            await Service.Check(Rigs.Smallest().With("motor.KVrpmPerVolt", 3300).ToJsonString())
        ).OnlyError();

        Assert.Equal("kvRpmPerVolt", error.GetProperty("nearest").GetString());
    }

    [Fact]
    public async Task A_member_in_the_wrong_object_is_answered_with_its_place()
    {
        var error = (
            await Service.Check(Rigs.Smallest().With("vehicle.pinionTeeth", 12).ToJsonString())
        ).OnlyError();

        Assert.Equal("unknown-member", error.GetProperty("code").GetString());
        Assert.Equal("vehicle.drivetrain.pinionTeeth", error.GetProperty("related")[0].GetString());
        Assert.Contains("vehicle.drivetrain.pinionTeeth", error.GetProperty("message").GetString());
    }

    [Fact]
    public async Task A_number_in_quotes_is_answered_with_the_cure()
    {
        var error = (
            await Service.Check(Rigs.Smallest().With("battery.capacityMah", "2200").ToJsonString())
        ).OnlyError();

        Assert.Contains("without quotes", error.GetProperty("message").GetString());
    }

    [Fact]
    public async Task A_figure_out_of_range_is_answered_with_what_was_given_and_the_range()
    {
        var error = (
            await Service.Check(Rigs.Smallest().With("vehicle.massKg", 500).ToJsonString())
        ).OnlyError();

        Assert.Equal("500", error.GetProperty("given").GetString());
        Assert.Equal(0.05, error.GetProperty("minimum").GetDouble());
        Assert.Equal(50, error.GetProperty("maximum").GetDouble());
        Assert.Contains("kg", error.GetProperty("message").GetString());
    }

    [Fact]
    public async Task A_word_that_is_not_on_the_list_is_answered_with_the_list()
    {
        var error = (
            await Service.Check(Rigs.Smallest().With("battery.chemistry", "lippo").ToJsonString())
        ).OnlyError();

        Assert.Equal("lipo", error.GetProperty("nearest").GetString());
        Assert.Equal(
            ["lipo", "lihv", "liion", "lifepo4", "nimh"],
            error.GetProperty("allowed").EnumerateArray().Select(word => word.GetString())
        );
    }

    [Fact]
    public async Task More_than_a_hundred_errors_are_cut_and_said_to_be_cut()
    {
        var many = string.Join(',', Enumerable.Range(0, 150).Select(i => $"\"x{i}\":1"));

        var answer = await Service.Check(
            Rigs.Least.Replace("\"motor\":{}", $"\"motor\":{{{many}}}")
        );

        Assert.Equal(100, answer.Errors.Length);
        Assert.True(answer.Json.GetProperty("errorsTruncated").GetBoolean());
    }

    [Fact]
    public async Task A_list_that_is_too_long_is_refused_once()
    {
        var body = Rigs.Smallest();
        for (var i = 0; i < 33; i++)
        {
            body.With($"accessories.{i}.kind", "light");
        }

        var error = (await Service.Check(body.ToJsonString())).OnlyError();

        Assert.Equal("accessories", error.GetProperty("path").GetString());
        Assert.Equal(32, error.GetProperty("maximum").GetDouble());
    }

    [Fact]
    public async Task Mistakes_in_body_and_query_come_in_one_problem()
    {
        var answer = await Service.Check(
            Rigs.Smallest().With("vehicle.massKg", 0).ToJsonString(),
            "?findings=some&page=2&findngs=all"
        );

        Assert.Equal(["page", "findngs", "findings", "vehicle.massKg"], answer.ErrorPaths);
    }
}
