using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Faces;

/// <summary>Which form a caller gets (RFC 9110, 12.5.1: the most specific range counts, then the highest quality).</summary>
public class NegotiationTests
{
    private const string Rig = "/v1/checks?vehicle.massKg=3&spread=none&remedies=none";

    [Theory]
    [InlineData(null, "application/json")]
    [InlineData("*/*", "application/json")]
    [InlineData("application/json", "application/json")]
    [InlineData("application/json; charset=utf-8", "application/json")]
    [InlineData("application/*", "application/json")]
    [InlineData("application/problem+json", "application/json")]
    [InlineData("text/plain", "text/plain")]
    [InlineData("TEXT/PLAIN;q=0.2, application/json;q=0.1", "text/plain")]
    [InlineData("text/*", "text/plain")]
    [InlineData("text/plain;q=0, */*;q=0.1", "application/json")]
    [InlineData("image/svg+xml", "image/svg+xml")]
    [InlineData("image/*", "image/png")]
    [InlineData("image/avif,image/webp,image/*;q=0.8,*/*;q=0.5", "image/png")]
    [InlineData("text/html", "text/html")]
    [InlineData(
        "text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,image/webp,image/apng,*/*;q=0.8,application/signed-exchange;v=b3;q=0.7",
        "text/html"
    )]
    [InlineData("application/pdf", null)]
    [InlineData("application/json;q=0, text/*;q=0, image/*;q=0", null)]
    public async Task An_Accept_header_gets_the_form_that_suits_it_best(
        string? accept,
        string? form
    )
    {
        var answer = accept is null
            ? await Service.Get(Rig)
            : await Service.Send(Service.Accepting(Rig, accept));

        Assert.Equal(
            form is null ? HttpStatusCode.NotAcceptable : HttpStatusCode.OK,
            answer.Status
        );
        Assert.Equal(form ?? "application/problem+json", answer.MediaType);
        Assert.Contains("Accept", answer.Headers["Vary"]);
    }

    [Theory]
    [InlineData("json", "application/json")]
    [InlineData("text", "text/plain")]
    [InlineData("svg", "image/svg+xml")]
    [InlineData("png", "image/png")]
    [InlineData("html", "text/html")]
    public async Task The_form_in_the_query_wins(string form, string type)
    {
        var linked = await Service.Send(Service.Accepting($"{Rig}&form={form}", "application/pdf"));
        var posted = await Service.Check(Rigs.Least, $"?spread=none&form={form}");

        Assert.Equal((HttpStatusCode.OK, type), (linked.Status, linked.MediaType));
        Assert.Equal((HttpStatusCode.OK, type), (posted.Status, posted.MediaType));
    }

    [Fact]
    public async Task A_refused_form_lists_those_that_are_offered()
    {
        var answer = await Service.Send(Service.Accepting(Rig, "application/pdf"));

        Assert.Equal(
            ["application/json", "text/plain", "image/png", "image/svg+xml", "text/html"],
            answer.Json.GetProperty("forms").EnumerateArray().Select(form => form.GetString())
        );
    }

    [Theory]
    [InlineData("/v1/nothing")]
    [InlineData("/v1/sources?page=2")]
    [InlineData("/v1/checks?vehicle.massKg=0")]
    public async Task A_problem_is_text_for_those_who_prefer_it_and_JSON_whatever_else_they_say(
        string address
    )
    {
        foreach (var accept in new[] { "image/png", "application/pdf", "application/json", "*/*" })
        {
            var json = await Service.Send(Service.Accepting(address, accept));
            Assert.True(json.MediaType is "application/problem+json", accept);
        }

        var text = await Service.Send(Service.Accepting(address, "text/plain"));
        Assert.Equal("text/plain", text.MediaType);
        Assert.Contains("Stop using a pack", text.Text);
    }

    [Fact]
    public async Task A_service_that_is_called_by_an_endless_name_gives_no_links_and_draws_at_once()
    {
        foreach (var form in new[] { "json", "svg", "text", "html" })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, $"{Rig}&form={form}");
            Assert.True(request.Headers.TryAddWithoutValidation("Host", new string('h', 5000)));

            var answer = await Service.Send(request);

            Assert.Equal(HttpStatusCode.OK, answer.Status);
            Assert.DoesNotContain("hhhhh", answer.Text);
        }
    }
}
