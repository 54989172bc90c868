using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Links;

/// <summary>What is wrong with a link is named, with its cure.</summary>
public class LinkMistakeTests
{
    [Theory]
    [InlineData(
        "motor.massG=160",
        "vehicle.massKg",
        "missing",
        "must be a number from 0.05 to 50 kg"
    )]
    [InlineData("vehicle.massKg=", "vehicle.massKg", "missing", "must be a number")]
    [InlineData(
        "vehicle.massKg=8,5",
        "vehicle.massKg",
        "wrong-type",
        "Write decimals with a point"
    )]
    [InlineData(
        "vehicle.massKg=1,500+g",
        "vehicle.massKg",
        "wrong-type",
        "nothing between thousands"
    )]
    [InlineData("vehicle.massKg=8+A", "vehicle.massKg", "wrong-type", "A is no unit for it")]
    [InlineData("vehicle.massKg=8+KG", "vehicle.massKg", "wrong-type", "KG is no unit for it")]
    [InlineData("vehicle.massKg=heavy", "vehicle.massKg", "wrong-type", "must be a number")]
    [InlineData(
        "vehicle.massKg=1e999",
        "vehicle.massKg",
        "not-finite",
        "is 1e999 and must be a number"
    )]
    [InlineData(
        "vehicle.massKg=3.5.1",
        "vehicle.massKg",
        "wrong-type",
        "is 3.5.1 and must be a number"
    )]
    [InlineData(
        "vehicle.massKg=3&motor.kvRpmPerVot=",
        "motor.kvRpmPerVot",
        "unknown-member",
        "Did you mean"
    )]
    [InlineData(
        "vehicle.massKg=3&accessories.99.kind=",
        "accessories.99.kind",
        "unknown-member",
        "no value"
    )]
    [InlineData(
        "vehicle.massKg=3&motor.sensored=TRUE",
        "motor.sensored",
        "wrong-type",
        "true or false"
    )]
    [InlineData("vehicle.massKg=NaN", "vehicle.massKg", "wrong-type", "must be a number")]
    [InlineData("vehicle.massKg=300+lb", "vehicle.massKg", "out-of-range", "from 0.05 to 50 kg")]
    [InlineData("vehicle.massKg=3&vehicle.massKg=4", "vehicle.massKg", "doubled", "Give it once")]
    [InlineData(
        "vehicle.massKg=3&vehicle.massKg[lb]=4",
        "vehicle.massKg",
        "doubled",
        "Give it once"
    )]
    [InlineData(
        "vehicle.massKg=3&vehicle.drivetrain.efficiency=0.7+x",
        "vehicle.drivetrain.efficiency",
        "wrong-type",
        "plain number"
    )]
    [InlineData(
        "vehicle.massKg=3&motor.kvRpmPerVot=3300",
        "motor.kvRpmPerVot",
        "unknown-member",
        "Did you mean motor.kvRpmPerVolt?"
    )]
    [InlineData(
        "vehicle.massKg=3&kvRpmPerVolt=3300",
        "kvRpmPerVolt",
        "unknown-member",
        "Did you mean motor.kvRpmPerVolt?"
    )]
    [InlineData("vehicle.massKg=3&spred=none", "spred", "unknown-member", "Did you mean spread?")]
    [InlineData("vehicle.massKg=3&spread=some", "spread", "out-of-range", "must be")]
    [InlineData("vehicle.massKg=3&form=pdf", "form", "out-of-range", "must be json or text")]
    [InlineData("vehicle.massKg=3&form=json&form=text", "form", "doubled", "Give it once")]
    [InlineData("vehicle.massKg=3&motor=fast", "motor", "wrong-type", "holds members")]
    [InlineData("vehicle.massKg=3&accessories=servo", "accessories", "wrong-type", "is a list")]
    [InlineData(
        "vehicle.massKg=3&accessories.1.kind=servo",
        "accessories.1",
        "conflict",
        "from 0 on"
    )]
    [InlineData(
        "vehicle.massKg=3&accessories=empty&accessories.0.kind=servo",
        "accessories",
        "doubled",
        "what is within it"
    )]
    [InlineData(
        "vehicle.massKg=3&accessories.32.kind=servo",
        "accessories.32.kind",
        "unknown-member",
        "no value of a rig"
    )]
    [InlineData(
        "vehicle.massKg=3&accessories.00.kind=servo",
        "accessories.00.kind",
        "unknown-member",
        "no value of a rig"
    )]
    [InlineData("vehicle.massKg=3&motor.kind=Brushed", "motor.kind", "out-of-range", "brushed")]
    [InlineData(
        "vehicle.massKg=3&motor.sensored=yes",
        "motor.sensored",
        "wrong-type",
        "true or false"
    )]
    [InlineData(
        "vehicle.massKg=3&battery.seriesCells=2.5",
        "battery.seriesCells",
        "wrong-type",
        "whole number"
    )]
    public async Task A_mistake_is_named_once(string query, string path, string code, string cure)
    {
        var error = (await Service.Get($"/v1/checks?{query}")).OnlyError();

        Assert.Equal(path, error.GetProperty("path").GetString());
        Assert.Equal(code, error.GetProperty("code").GetString());
        Assert.Contains(cure, error.GetProperty("message").GetString());
    }

    // Each took a second and then failed once, by patterns that go back and forth.
    [Theory]
    [InlineData("1", "-", "")]
    [InlineData("+", "1", "1,1")]
    public async Task A_long_figure_is_a_mistake_like_any_other(
        string filler,
        string end,
        string start
    )
    {
        var figure = start + string.Concat(Enumerable.Repeat(filler, 30_000)) + end;

        var error = (await Service.Get($"/v1/checks?vehicle.massKg={figure}")).OnlyError();

        Assert.Equal("wrong-type", error.GetProperty("code").GetString());
        Assert.InRange(error.GetProperty("message").GetString()!.Length, 20, 300);
    }

    [Theory]
    [InlineData("text/plain", "json", "application/problem+json")]
    [InlineData("text/plain", "text", "text/plain")]
    [InlineData("text/csv", "html", "text/html")]
    public async Task A_body_in_another_form_is_refused_in_the_form_that_was_asked_for(
        string sent,
        string form,
        string type
    )
    {
        var answer = await Service.Send(
            new(HttpMethod.Post, $"/v1/checks?form={form}")
            {
                Content = new StringContent("{}", null, sent),
            }
        );

        Assert.Equal(
            (HttpStatusCode.UnsupportedMediaType, type),
            (answer.Status, answer.MediaType)
        );
    }

    [Fact]
    public async Task All_mistakes_of_a_link_are_named_together()
    {
        var answer = await Service.Get(
            "/v1/checks?vehicle.massKg=8,5&motor.massG=x&controller.minCells=4&controller.maxCells=2&no.such=1&spread=all"
        );

        Assert.Equal(
            ["controller.minCells", "motor.massG", "no.such", "spread", "vehicle.massKg"],
            answer.ErrorPaths.Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("json", "application/problem+json")]
    [InlineData("text", "text/plain")]
    [InlineData("svg", "image/svg+xml")]
    [InlineData("html", "text/html")]
    public async Task A_mistake_has_the_form_that_was_asked_for(string form, string type)
    {
        var answer = await Service.Get($"/v1/checks?form={form}&vehicle.massKg=500");

        Assert.Equal(type, answer.MediaType);
        // The page calls the member by its label.
        Assert.Contains("is 500 and must be from 0.05 to 50 kg.", answer.Text);
        Assert.Contains("Stop using a pack", answer.Text);
        Assert.Equal("no-store", answer.Headers["Cache-Control"]);
    }

    [Fact]
    public async Task So_it_has_as_a_picture()
    {
        var answer = await Service.Get("/v1/checks?form=png&vehicle.massKg=500");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal("image/png", answer.MediaType);
        Assert.Equal("no-store", answer.Headers["Cache-Control"]);
        Assert.Equal("PNG", answer.Text[1..4]);
    }
}
