using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Microsoft.AspNetCore.WebUtilities;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Tests.Door;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Links;

/// <summary>A rig, its link, and the rig of that link are the same.</summary>
public class LinkRoundTests
{
    private static readonly CheckOptions Options = new(false, SpreadMethod.Linear, true);

    [Fact]
    public void The_rig_of_a_link_is_the_rig_that_it_was_made_of() =>
        DrawnBody.Members.Sample(members => Same(DrawnBody.Of(members)), iter: 2000);

    [Theory]
    [InlineData("accessories", "[]")]
    [InlineData("accessories", "[{}]")]
    [InlineData("accessories", """[{"kind":"servo"},{},{"kind":"light"}]""")]
    [InlineData("wiring", "{}")]
    [InlineData("motor.thermal", "{}")]
    [InlineData("controller.motorKinds", "[]")]
    [InlineData("controller.motorKinds", """["brushed","brushless"]""")]
    [InlineData("controller.receiverSupply", "{}")]
    [InlineData("course.segments", "[]")]
    [InlineData("vehicle.drivetrain.ratios", "[2.5,1.6,1]")]
    [InlineData("tolerances", "{}")]
    [InlineData(
        "tolerances",
        """{"course.segments.0.seconds":{"low":1,"high":2},"motor.kvRpmPerVolt":{"absolute":5},"vehicle.massKg":0.1}"""
    )]
    [InlineData("id", "\"a&b=c?d#e+f% ü\\n\"")]
    [InlineData("motor.name", "\"empty\"")]
    [InlineData("vehicle.name", "\" two  blanks \"")]
    public void So_it_is_with(string path, string value)
    {
        var body = Rigs.Example();
        var steps = path.Split('.');
        JsonNode owner = body;
        foreach (var step in steps[..^1])
        {
            owner = owner[step]!;
        }

        owner[steps[^1]] = JsonNode.Parse(value);

        Same(body);
    }

    private static void Same(JsonObject body)
    {
        var request = Request(JsonSerializer.SerializeToUtf8Bytes(body));
        var query = RigLink.Query(new(request, Options));
        var again = OfLink(query);

        Assert.Equal(Text(request), Text(again));
        Assert.Equal(query, RigLink.Query(new(again, Options)));
    }

    private static CheckRequest OfLink(string query)
    {
        var faults = new Faults();
        var body = LinkReader.Read(QueryHelpers.ParseQuery(query), CheckOptions.Names, faults);
        Assert.True(faults.None, query);
        return Request(body.ToArray());
    }

    private static CheckRequest Request(byte[] body) =>
        RequestReader.Read<CheckRequest>(body, new()).Request!;

    private static string Text(CheckRequest request) =>
        JsonSerializer.Serialize(request, JsonForm.Options);
}
