using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Pipeline;

/// <summary>Headers that callers rely on.</summary>
public class HeaderTests
{
    public static TheoryData<string> Addresses =>
        [
            "/v1/sources",
            "/v1/findings",
            "/v1/problems",
            "/problems/invalid",
            "/v1/battery-safety",
            "/openapi/v1.json",
            "/health/live",
            "/docs/index.html",
            "/",
            "/v1/nothing",
            "/v1/checks",
            "/v1/sources?page=2",
        ];

    [Theory]
    [MemberData(nameof(Addresses))]
    public async Task Every_answer_has_a_trace_id_and_leads_to_the_cautions(string address)
    {
        var answer = await Service.Get(address);

        Assert.Matches("^[0-9a-f]{32}$", answer.Headers["X-Trace-Id"]);
        Assert.Equal("</v1/battery-safety>; rel=\"describedby\"", answer.Headers["Link"]);
    }

    [Theory]
    [MemberData(nameof(Addresses))]
    public async Task HEAD_is_answered_as_GET_without_a_body(string address)
    {
        var get = await Service.Get(address);
        var head = await Service.Send(new(HttpMethod.Head, address));

        Assert.Equal(get.Status, head.Status);
        Assert.Equal("", head.Text);
        Assert.Equal(
            get.Headers.GetValueOrDefault("Cache-Control"),
            head.Headers.GetValueOrDefault("Cache-Control")
        );
        Assert.Equal(get.Headers["Link"], head.Headers["Link"]);
    }

    [Theory]
    [InlineData("/v1/sources", "public, max-age=3600")]
    [InlineData("/v1/findings", "public, max-age=3600")]
    [InlineData("/v1/battery-safety", "public, max-age=3600")]
    [InlineData("/v1/problems", "no-store")]
    [InlineData("/health/live", "no-store")]
    public async Task What_may_change_is_not_kept(string address, string expected) =>
        Assert.Equal(expected, (await Service.Get(address)).Headers["Cache-Control"]);

    [Theory]
    [InlineData("GET", "/v1/sources")]
    [InlineData("HEAD", "/v1/sources")]
    [InlineData("GET", "/v1/battery-safety")]
    [InlineData("GET", "/openapi/v1.json")]
    [InlineData("GET", "/health/live")]
    [InlineData("GET", "/problems/invalid")]
    [InlineData("GET", "/v1/nothing")]
    [InlineData("GET", "/v1/checks")]
    [InlineData("DELETE", "/v1/sources")]
    [InlineData("GET", "/v1/sources?page=2")]
    [InlineData("POST", "/v1/checks")]
    public async Task Answers_and_problems_say_that_they_depend_on_Accept(
        string method,
        string address
    )
    {
        var answer = await Service.Send(new(new(method), address));

        Assert.Equal("Accept", answer.Headers["Vary"]);
    }

    [Fact]
    public async Task A_check_and_a_refused_form_say_that_they_depend_on_Accept()
    {
        var check = await Service.Check(Rigs.Least);
        var refused = await Service.Send(Service.Accepting("/v1/sources", "application/pdf"));

        Assert.Equal(HttpStatusCode.OK, check.Status);
        Assert.Equal("Accept", check.Headers["Vary"]);
        Assert.Equal(HttpStatusCode.NotAcceptable, refused.Status);
        Assert.Equal("Accept", refused.Headers["Vary"]);
    }

    [Fact]
    public async Task The_page_of_the_document_is_the_same_whatever_Accept_says() =>
        Assert.DoesNotContain("Vary", (await Service.Get("/docs/index.html")).Headers.Keys);

    [Fact]
    public async Task Two_requests_have_different_trace_ids()
    {
        var one = await Service.Get("/health/live");
        var other = await Service.Get("/health/live");

        Assert.NotEqual(one.Headers["X-Trace-Id"], other.Headers["X-Trace-Id"]);
    }
}
