using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using PowerCheck.Api.Problems;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Problems;

/// <summary>Whatever goes wrong is told in one form.</summary>
public class ProblemTests
{
    [Fact]
    public async Task An_address_without_anything_is_a_404() =>
        Told(await Service.Get("/v1/nothing"), HttpStatusCode.NotFound, "not-found");

    [Theory]
    [InlineData("/openapi/v2.json")]
    [InlineData("/openapi/v10.json")]
    [InlineData("/openapi/nothing.json")]
    public async Task A_document_that_does_not_exist_is_a_404(string address) =>
        Told(await Service.Get(address), HttpStatusCode.NotFound, "not-found");

    [Fact]
    public async Task A_problem_kind_that_does_not_exist_is_a_404() =>
        Told(await Service.Get("/problems/nothing"), HttpStatusCode.NotFound, "not-found");

    [Theory]
    [InlineData("DELETE", "/v1/sources", "GET, HEAD")]
    [InlineData("GET", "/v1/shortlists", "POST")]
    [InlineData("OPTIONS", "/v1/checks", "GET, POST, HEAD")]
    public async Task A_method_that_is_not_answered_is_a_405_with_those_that_are(
        string method,
        string address,
        string allowed
    )
    {
        var answer = await Service.Send(new(new(method), address));

        Told(answer, HttpStatusCode.MethodNotAllowed, "method-not-allowed");
        Assert.Equal(allowed, answer.Headers["Allow"]);
        Assert.Contains(allowed, answer.Json.GetProperty("detail").GetString());
    }

    [Theory]
    [InlineData("application/pdf")]
    [InlineData("image/gif")]
    [InlineData("application/json; q=0")]
    [InlineData("*/*; q=0")]
    [InlineData("application/problem+json; q=0")]
    [InlineData("application/problem+json, application/json; q=0")]
    public async Task A_form_that_is_not_offered_is_a_406_with_those_that_are(string accept)
    {
        var answer = await Service.Send(Service.Accepting("/v1/sources", accept));

        Told(answer, HttpStatusCode.NotAcceptable, "not-acceptable");
        Assert.Equal("application/json", answer.Json.GetProperty("forms")[0].GetString());
    }

    [Theory]
    [InlineData("*/*")]
    [InlineData("application/*")]
    [InlineData("application/json; charset=utf-8; q=0.1")]
    [InlineData("application/problem+json")]
    [InlineData("application/problem+json; q=0.5, */*; q=0")]
    [InlineData("application/problem+json; q=0, */*")]
    public async Task A_form_that_JSON_covers_is_answered(string accept)
    {
        var answer = await Service.Send(Service.Accepting("/v1/sources", accept));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal("application/json", answer.MediaType);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/json; charset=iso-8859-1")]
    [InlineData("application/problem+json")]
    [InlineData(null)]
    public async Task A_body_in_another_form_is_a_415_with_those_that_are_read(string? type)
    {
        var content = new ByteArrayContent("{}"u8.ToArray());
        content.Headers.TryAddWithoutValidation("Content-Type", type);

        var answer = await Service.Send(new(HttpMethod.Post, "/v1/checks") { Content = content });

        Told(answer, HttpStatusCode.UnsupportedMediaType, "unsupported-media-type");
        Assert.Equal("application/json", answer.Json.GetProperty("forms")[0].GetString());
    }

    [Fact]
    public async Task A_compressed_body_is_a_415()
    {
        var content = new ByteArrayContent([1, 2, 3]);
        content.Headers.ContentType = new("application/json");
        content.Headers.ContentEncoding.Add("gzip");

        var answer = await Service.Send(new(HttpMethod.Post, "/v1/checks") { Content = content });

        Told(answer, HttpStatusCode.UnsupportedMediaType, "unsupported-media-type");
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_body_that_is_too_large_is_a_413(bool lengthIsSaid)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/v1/checks")
        {
            Content = new ByteArrayContent(new byte[300_000]),
        };
        request.Content.Headers.ContentType = new("application/json");
        request.Headers.TransferEncodingChunked = !lengthIsSaid;

        Told(await Service.Send(request), HttpStatusCode.RequestEntityTooLarge, "too-large");
    }

    [Fact]
    public async Task A_query_parameter_that_is_not_known_is_a_422()
    {
        var answer = await Service.Get("/v1/sources?page=2&utm_source=forum");

        Told(answer, HttpStatusCode.UnprocessableEntity, "invalid");
        Assert.Equal(["page"], answer.ErrorPaths);
    }

    [Fact]
    public async Task A_query_parameter_that_the_service_was_told_to_ignore_is_ignored()
    {
        await using var host = Service
            .Own()
            .WithWebHostBuilder(builder => builder.UseSetting("Query:Ignored:0", "ref"));
        using var client = Service.ClientOf(host);
        using var told = await client.GetAsync("/v1/sources?ref=forum");
        using var other = await client.GetAsync("/v1/sources?refs=forum");

        Assert.Equal(HttpStatusCode.OK, told.StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, other.StatusCode);
    }

    [Theory]
    [InlineData("?findings=", HttpStatusCode.OK)]
    [InlineData("?Findings=all", HttpStatusCode.UnprocessableEntity)]
    [InlineData("?findings=All", HttpStatusCode.UnprocessableEntity)]
    [InlineData("?findings=all&findings=all", HttpStatusCode.UnprocessableEntity)]
    public async Task Query_parameters_match_exactly_and_may_be_empty(
        string query,
        HttpStatusCode status
    ) => Assert.Equal(status, (await Service.Check(Rigs.Least, query)).Status);

    [Fact]
    public async Task A_failure_of_the_service_is_a_500_that_tells_nothing_of_its_inside()
    {
        await using var host = Service
            .Own()
            .WithWebHostBuilder(builder =>
                builder.ConfigureServices(services =>
                    services.AddSingleton<IStartupFilter, Breaking>()
                )
            );
        using var client = Service.ClientOf(host);
        using var response = await client.GetAsync("/v1/broken");

        var answer = await Answer.Of(response);

        Told(answer, HttpStatusCode.InternalServerError, "internal");
        Assert.Equal("Accept", answer.Headers["Vary"]);
        Assert.DoesNotContain("secret", answer.Text);
        Assert.DoesNotContain("Exception", answer.Text);
    }

    [Fact]
    public async Task Every_kind_has_an_address_that_tells_what_it_means()
    {
        var kinds = (await Service.Get("/v1/problems")).Json.GetProperty("items");

        Assert.Equal(ProblemKinds.All.Count, kinds.GetArrayLength());
        foreach (var kind in kinds.EnumerateArray())
        {
            var answer = await Service.Get(kind.GetProperty("type").GetString()!);
            Assert.Equal(HttpStatusCode.OK, answer.Status);
            Assert.Equal(kind.GetRawText(), answer.Json.GetProperty("kind").GetRawText());
        }
    }

    private static void Told(Answer answer, HttpStatusCode status, string slug)
    {
        Assert.Equal(status, answer.Status);
        Assert.Equal("application/problem+json", answer.MediaType);
        Assert.Contains("no-store", answer.Headers["Cache-Control"]);
        Assert.Equal((int)status, answer.Json.GetProperty("status").GetInt32());
        Assert.Equal($"/problems/{slug}", answer.Json.GetProperty("type").GetString());
        Assert.Equal(answer.Headers["X-Trace-Id"], answer.Json.GetProperty("traceId").GetString());
        Assert.NotEqual("", answer.Json.GetProperty("title").GetString());
        Assert.NotEqual("", answer.Json.GetProperty("detail").GetString());
        Assert.StartsWith("/", answer.Json.GetProperty("instance").GetString());
        Assert.True(
            answer.Json.GetProperty("batterySafety").GetProperty("cautions").GetArrayLength() > 5
        );
    }

    /// <summary>Puts a fault behind the service's own pipeline.</summary>
    private sealed class Breaking : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
            app =>
            {
                next(app);
                app.Map(
                    "/v1/broken",
                    broken =>
                        broken.Run(_ =>
                            throw new InvalidOperationException("a secret of the inside")
                        )
                );
            };
    }
}
