using System.Net;
using System.Text;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>In which forms many rigs are read and answered.</summary>
public class FormTests
{
    [Theory]
    [InlineData(null, "", "application/x-ndjson")]
    [InlineData("*/*", "", "application/x-ndjson")]
    [InlineData("application/json", "", "application/json")]
    [InlineData("text/csv", "", "text/csv")]
    [InlineData("text/*", "", "text/csv")]
    [InlineData("text/csv;q=0.5, application/json", "", "application/json")]
    [InlineData("text/csv, application/json", "", "text/csv")]
    [InlineData("application/x-ndjson;q=0, */*", "", "text/csv")]
    [InlineData("text/csv", "&form=json", "application/json")]
    [InlineData("image/png", "&form=csv", "text/csv")]
    public async Task Accept_picks_the_form_and_the_parameter_wins(
        string? accept,
        string query,
        string expected
    )
    {
        using var request = Fleet.Request(
            Encoding.UTF8.GetBytes(Fleet.Rig("a")),
            Fleet.Lines,
            Fleet.Quick + query
        );
        if (accept is not null)
        {
            Assert.True(request.Headers.TryAddWithoutValidation("Accept", accept));
        }

        using var response = await Service.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(expected, response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("Accept", response.Headers.Vary.ToString());
        Assert.Contains("describedby", response.Headers.GetValues("Link").Single());
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-ndjson; charset=utf-16")]
    public async Task Another_form_of_body_is_refused_with_those_that_are_read(string type)
    {
        var answer = await Fleet.Send("", type);

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.Status);
        Assert.Equal(
            ["application/x-ndjson", "text/csv", "application/json"],
            answer.Json.GetProperty("forms").EnumerateArray().Select(form => form.GetString())
        );
    }

    [Fact]
    public async Task Another_form_of_answer_is_refused_with_those_that_are_offered()
    {
        using var request = Fleet.Request([], Fleet.Lines);
        request.Headers.Accept.ParseAdd("image/png");

        var answer = await Service.Send(request);

        Assert.Equal(HttpStatusCode.NotAcceptable, answer.Status);
        Assert.Equal(3, answer.Json.GetProperty("forms").GetArrayLength());
    }

    [Theory]
    [InlineData("&form=xml", "form")]
    [InlineData("&spred=none", "spred")]
    [InlineData("&spread=some", "spread")]
    public async Task Wrong_parameters_are_refused(string query, string path) =>
        Assert.Equal(
            path,
            (await Fleet.Send("", query: "?remedies=none" + query)).OnlyError().Text("path")
        );
}
