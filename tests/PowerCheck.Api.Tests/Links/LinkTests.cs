using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Links;

/// <summary>A check by a link is the check of the same body.</summary>
public class LinkTests
{
    private const string Known =
        "motor.kind=brushed&motor.kvRpmPerVolt=1500&motor.resistanceMilliohm=80&motor.massG=160&controller.motorKinds=brushed"
        + "&controller.continuousCurrentA=60&battery.seriesCells=2&battery.capacityMah=2200&vehicle.drivetrain.overallRatio=45";

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 200)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task The_link_in_an_answer_leads_to_the_same_answer(int number)
    {
        var posted = await Service.Check(
            AnyBody.Of(number).With("id", $"rig {number}").ToJsonString(),
            number % 10 == 0 ? "?findings=all&remedies=none" : "?spread=none&remedies=none"
        );

        var linked = await Service.Get(Link(posted, "self"));

        Assert.Equal(posted.Text, linked.Text);
    }

    // Pound and inch: NIST SP 811 (2008), appendix B.8: 0.453 592 37 kg and 25.4 mm, exact. Fahrenheit: (95 - 32)/1.8 = 35.
    [Theory]
    [InlineData("vehicle.massKg=8+lb", "vehicle.massKg=3.62873896")]
    [InlineData("vehicle.massKg=8lb", "vehicle.massKg=3.62873896")]
    [InlineData("vehicle.massKg[lb]=8", "vehicle.massKg=3.62873896")]
    [InlineData("vehicle.massKg[lb]=3.5+kg", "vehicle.massKg=3.5")]
    [InlineData("vehicle.massKg=3&vehicle.tireDiameterMm=4.6in", "vehicle.tireDiameterMm=116.84")]
    [InlineData(
        "vehicle.massKg=3&battery.cellResistanceMilliohm=25+mOhm",
        "battery.cellResistanceMilliohm=25"
    )]
    [InlineData(
        "vehicle.massKg=3&battery.cellResistanceMilliohm=0.025+%CE%A9",
        "battery.cellResistanceMilliohm=25"
    )]
    [InlineData("vehicle.massKg=3&course.ambientC=95+degF", "course.ambientC=35")]
    [InlineData(
        "vehicle.massKg=3&vehicle.drivetrain.efficiency=75%25",
        "vehicle.drivetrain.efficiency=0.75"
    )]
    [InlineData("vehicle.massKg=3&motor.kvRpmPerVolt=3300+rpm/V", "motor.kvRpmPerVolt=3300")]
    [InlineData("vehicle.massKg=3e0&course.creepSpeedMPerS=.25", "course.creepSpeedMPerS=0.25")]
    [InlineData(
        "vehicle.massKg=3&controller.motorKinds=brushed,brushless",
        "controller.motorKinds=brushed,brushless"
    )]
    [InlineData("vehicle.massKg=3&wiring=empty&wiring.fuseA=30", "wiring.fuseA=30")]
    [InlineData(
        "vehicle.massKg=3&vehicle.drivetrain.maxWheelTorqueNm=1+Nm",
        "vehicle.drivetrain.maxWheelTorqueNm=1"
    )]
    [InlineData("vehicle.massKg=3&wiring=empty", "wiring=empty")]
    [InlineData(
        "vehicle.massKg=3&controller.motorKinds=brushed&controller.motorKinds=brushless",
        "controller.motorKinds=brushed,brushless"
    )]
    public async Task A_value_may_be_written_in_several_ways(string query, string canonical)
    {
        var answer = await Service.Get($"/v1/checks?{query}&spread=none&remedies=none");

        Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
        Assert.Contains(canonical, Link(answer, "self").Split('?', '&'));
    }

    [Fact]
    public async Task The_same_rig_has_the_same_link_in_whatever_order_and_unit_it_is_asked_for()
    {
        var one = await Service.Get($"/v1/checks?{Known}&vehicle.massKg=1500g&spread=none");
        var other = await Service.Get(
            $"/v1/checks?spread=none&vehicle.massKg=1.50&utm_source=a&motor.slots=&{Known}"
        );

        Assert.Equal(Link(one, "self"), Link(other, "self"));
        Assert.Equal(one.Headers["ETag"], other.Headers["ETag"]);
    }

    [Fact]
    public async Task A_part_of_which_a_link_says_nothing_is_there_and_empty()
    {
        var posted = await Service.Check(Rigs.Least);
        var linked = await Service.Get("/v1/checks?vehicle.massKg=3&spread=none");

        Assert.Equal(posted.Text, linked.Text);
    }

    [Fact]
    public async Task Links_are_absolute_and_one_a_form()
    {
        var links = (await Service.Check(Rigs.Least)).Json.GetProperty("links");
        var self = links.GetProperty("self").GetString();

        Assert.Equal("http://localhost/v1/checks?vehicle.massKg=3&spread=none", self);
        Assert.Equal(
            "http://localhost/?vehicle.massKg=3&spread=none",
            links.GetProperty("page").GetString()
        );
        foreach (var form in new[] { "text", "svg", "png" })
        {
            Assert.Equal($"{self}&form={form}", links.GetProperty(form).GetString());
        }
    }

    [Fact]
    public async Task A_rig_that_is_too_long_for_a_link_has_none()
    {
        var body = Rigs.Smallest();
        for (var n = 0; n < 32; n++)
        {
            body.With($"accessories.{n}.name", new string('é', 100))
                .With($"accessories.{n}.kind", "light");
        }

        var answer = await Service.Check(body.ToJsonString());

        Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
        Assert.False(answer.Json.TryGetProperty("links", out _));
    }

    private static string Link(Answer answer, string form) =>
        answer.Json.GetProperty("links").GetProperty(form).GetString()!;
}
