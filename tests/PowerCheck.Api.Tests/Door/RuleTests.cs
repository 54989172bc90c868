using System.Text.Json.Nodes;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>Members that do not go together are refused, with the others named.</summary>
public class RuleTests
{
    /// <summary>What is put into the smallest body, the path of the one error, and the members named beside it.</summary>
    public static TheoryData<string, string, string> Conflicts =>
        new()
        {
            {
                """{"motor":{"burstCurrentA":5,"continuousCurrentA":6}}""",
                "motor.continuousCurrentA",
                "motor.burstCurrentA"
            },
            { """{"motor":{"burstSeconds":5}}""", "motor.burstSeconds", "motor.burstCurrentA" },
            {
                """{"motor":{"resistanceTemperatureC":5}}""",
                "motor.resistanceTemperatureC",
                "motor.resistanceMilliohm"
            },
            { """{"motor":{"kind":"brushed","sensored":true}}""", "motor.sensored", "motor.kind" },
            { """{"motor":{"kind":"brushed","rotor":"outer"}}""", "motor.rotor", "motor.kind" },
            {
                """{"motor":{"kind":"brushless","brushDropV":0.3}}""",
                "motor.brushDropV",
                "motor.kind"
            },
            {
                """{"motor":{"noLoadPoints":[{"voltageV":7,"currentA":1},{"voltageV":7,"currentA":2}]}}""",
                "motor.noLoadPoints.1.voltageV",
                "motor.noLoadPoints.0.voltageV"
            },
            {
                """{"motor":{"noLoadPoints":[{"currentA":1},{"currentA":2}]}}""",
                "motor.noLoadPoints.1.voltageV",
                "motor.noLoadPoints.0.voltageV"
            },
            {
                """{"controller":{"burstCurrentA":5,"continuousCurrentA":6}}""",
                "controller.continuousCurrentA",
                "controller.burstCurrentA"
            },
            {
                """{"controller":{"burstSeconds":5}}""",
                "controller.burstSeconds",
                "controller.burstCurrentA"
            },
            {
                """{"controller":{"minVoltageV":9,"maxVoltageV":8}}""",
                "controller.minVoltageV",
                "controller.maxVoltageV"
            },
            {
                """{"controller":{"minCells":3,"maxCells":2}}""",
                "controller.minCells",
                "controller.maxCells"
            },
            {
                """{"controller":{"minCells":2,"cellLimits":[{"chemistry":"nimh","minCells":5,"maxCells":6}]}}""",
                "controller.cellLimits",
                "controller.minCells"
            },
            {
                """{"controller":{"cellLimits":[{"chemistry":"nimh","minCells":7,"maxCells":6}]}}""",
                "controller.cellLimits.0.minCells",
                "controller.cellLimits.0.maxCells"
            },
            {
                """{"controller":{"cellLimits":[{"chemistry":"nimh","minCells":5,"maxCells":6},{"chemistry":"nimh","minCells":5,"maxCells":6}]}}""",
                "controller.cellLimits.1.chemistry",
                "controller.cellLimits.0.chemistry"
            },
            {
                """{"controller":{"minTurns":[{"cells":2,"turns":21},{"cells":2,"turns":27}]}}""",
                "controller.minTurns.1.cells",
                "controller.minTurns.0.cells"
            },
            {
                """{"controller":{"motorKinds":["brushed","brushed"]}}""",
                "controller.motorKinds.1",
                "controller.motorKinds.0"
            },
            {
                """{"controller":{"receiverSupply":{"continuousCurrentA":3,"peakCurrentA":2}}}""",
                "controller.receiverSupply.continuousCurrentA",
                "controller.receiverSupply.peakCurrentA"
            },
            {
                """{"controller":{"receiverSupply":{"regulator":"linear","efficiency":0.8}}}""",
                "controller.receiverSupply.efficiency",
                "controller.receiverSupply.regulator"
            },
            {
                """{"controller":{"receiverSupply":{"regulator":"switching","maxHeatW":5}}}""",
                "controller.receiverSupply.maxHeatW",
                "controller.receiverSupply.regulator"
            },
            {
                """{"controller":{"receiverSupply":{"voltageV":5,"receiverResetV":5}}}""",
                "controller.receiverSupply.receiverResetV",
                "controller.receiverSupply.voltageV"
            },
            {
                """{"battery":{"continuousC":30,"burstC":20}}""",
                "battery.continuousC",
                "battery.burstC"
            },
            { """{"battery":{"burstSeconds":5}}""", "battery.burstSeconds", "battery.burstC" },
            {
                """{"vehicle":{"massKg":3,"tireDiameterPrinted":true}}""",
                "vehicle.tireDiameterPrinted",
                "vehicle.tireDiameterMm"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"spurStages":3}}}""",
                "vehicle.drivetrain.spurStages",
                "vehicle.drivetrain.axleGear"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"axleGear":"worm"}}}""",
                "vehicle.drivetrain.axleGear",
                "vehicle.drivetrain.spurStages"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"pinionPitch":{"diametral":32,"moduleMm":0.8}}}}""",
                "vehicle.drivetrain.pinionPitch",
                "vehicle.drivetrain.pinionPitch.diametral vehicle.drivetrain.pinionPitch.moduleMm"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"spurPitch":{}}}}""",
                "vehicle.drivetrain.spurPitch",
                "vehicle.drivetrain.spurPitch.diametral vehicle.drivetrain.spurPitch.moduleMm"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"meshCenterMinMm":20}}}""",
                "vehicle.drivetrain.meshCenterMinMm",
                "vehicle.drivetrain.meshCenterMaxMm"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"meshCenterMaxMm":20}}}""",
                "vehicle.drivetrain.meshCenterMaxMm",
                "vehicle.drivetrain.meshCenterMinMm"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"meshCenterMinMm":21,"meshCenterMaxMm":20}}}""",
                "vehicle.drivetrain.meshCenterMinMm",
                "vehicle.drivetrain.meshCenterMaxMm"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"pinionTeeth":12,"spurTeeth":56,"axleRatio":3}}}""",
                "vehicle.drivetrain",
                "vehicle.drivetrain.transmissionRatio vehicle.drivetrain.pinionTeeth vehicle.drivetrain.spurTeeth vehicle.drivetrain.axleRatio"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"overallRatio":40,"pinionTeeth":12}}}""",
                "vehicle.drivetrain.pinionTeeth",
                "vehicle.drivetrain.spurTeeth"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"overallRatio":40,"ratios":[3]}}}""",
                "vehicle.drivetrain.overallRatio",
                "vehicle.drivetrain.ratios"
            },
            {
                """{"vehicle":{"massKg":3,"drivetrain":{"pinionTeeth":12,"spurTeeth":56,"axleRatio":3,"ratios":[3],"transmissionRatio":3}}}""",
                "vehicle.drivetrain.ratios",
                "vehicle.drivetrain.transmissionRatio"
            },
            {
                """{"course":{"segments":[{"seconds":5,"kind":"creep","throttle":0.5}]}}""",
                "course.segments.0.throttle",
                "course.segments.0.kind"
            },
            {
                """{"course":{"segments":[{"seconds":5,"kind":"jammed"}]}}""",
                "course.segments.0.throttle",
                "course.segments.0.kind"
            },
            {
                """{"course":{"segments":[{"seconds":5,"kind":"hold","speedMPerS":0.5}]}}""",
                "course.segments.0.speedMPerS",
                "course.segments.0.kind"
            },
            {
                """{"course":{"segments":[{"seconds":5,"kind":"rest","slopeDegrees":5}]}}""",
                "course.segments.0.slopeDegrees",
                "course.segments.0.kind"
            },
            {
                """{"accessories":[{"idleCurrentA":2,"workingCurrentA":1}]}""",
                "accessories.0.idleCurrentA",
                "accessories.0.workingCurrentA"
            },
            {
                """{"accessories":[{"workingCurrentA":2,"jammedCurrentA":1}]}""",
                "accessories.0.workingCurrentA",
                "accessories.0.jammedCurrentA"
            },
            {
                """{"accessories":[{"idleCurrentA":2,"jammedCurrentA":1}]}""",
                "accessories.0.idleCurrentA",
                "accessories.0.jammedCurrentA"
            },
        };

    [Theory]
    [MemberData(nameof(Conflicts))]
    public async Task Members_that_do_not_go_together_are_refused(
        string parts,
        string path,
        string related
    )
    {
        var error = (await Service.Check(Body(parts))).OnlyError();

        Assert.Equal("conflict", error.GetProperty("code").GetString());
        Assert.Equal(path, error.GetProperty("path").GetString());
        Assert.Equal(
            related.Split(' '),
            error.GetProperty("related").EnumerateArray().Select(other => other.GetString())
        );
    }

    [Theory]
    [InlineData("""{"motor":{"burstSeconds":5,"burstCurrentA":"x"}}""", "motor.burstCurrentA")]
    [InlineData(
        """{"vehicle":{"massKg":3,"drivetrain":{"pinionTeeth":12,"spurTeeth":"x","axleRatio":3,"transmissionRatio":2}}}""",
        "vehicle.drivetrain.spurTeeth"
    )]
    [InlineData(
        """{"vehicle":{"massKg":3,"drivetrain":{"spurPitch":{"diametral":0}}}}""",
        "vehicle.drivetrain.spurPitch.diametral"
    )]
    [InlineData(
        """{"course":{"segments":[{"seconds":5,"kind":"jammed","throttle":2}]}}""",
        "course.segments.0.throttle"
    )]
    [InlineData(
        """{"course":{"segments":[{"seconds":5,"kind":"stuck","throttle":1}]}}""",
        "course.segments.0.kind"
    )]
    public async Task A_member_that_is_wrong_by_itself_is_not_blamed_twice(
        string parts,
        string path
    )
    {
        var error = (await Service.Check(Body(parts))).OnlyError();

        Assert.Equal(path, error.GetProperty("path").GetString());
    }

    private static string Body(string parts)
    {
        var body = Rigs.Smallest();
        foreach (var (name, part) in JsonNode.Parse(parts)!.AsObject())
        {
            body[name] = part?.DeepClone();
        }

        return body.ToJsonString();
    }
}
