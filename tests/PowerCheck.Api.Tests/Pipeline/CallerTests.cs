using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Pipeline;

/// <summary>Pages of other origins and proxies are let in as configured, and not otherwise (WHATWG Fetch, CORS protocol).</summary>
public class CallerTests
{
    private const string Shop = "https://shop.example";
    private const string Rig = "/v1/checks?vehicle.massKg=3&spread=none&remedies=none";

    [Fact]
    public async Task Nobody_is_let_in_unless_configured()
    {
        var answer = await Asked(Service.Client, Shop);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.DoesNotContain("Access-Control-Allow-Origin", answer.Headers.Keys);
        Assert.Equal("Accept", answer.Headers["Vary"]);
    }

    [Theory]
    [InlineData(Shop, Shop)]
    [InlineData("https://other.example", null)]
    [InlineData(null, null)]
    public async Task A_configured_origin_is_let_in_and_answers_differ_by_origin_then(
        string? origin,
        string? allowed
    )
    {
        using var host = With(("Cors:Origins:0", Shop));

        var answer = await Asked(Service.ClientOf(host), origin);

        Assert.Equal(allowed, answer.Headers.GetValueOrDefault("Access-Control-Allow-Origin"));
        Assert.Equal("Accept, Origin", Ordered(answer.Headers["Vary"]));
    }

    [Fact]
    public async Task A_browser_may_ask_before_it_posts()
    {
        using var host = With(("Cors:Origins:0", Shop));
        using var request = new HttpRequestMessage(HttpMethod.Options, "/v1/checks");
        request.Headers.Add("Origin", Shop);
        request.Headers.Add("Access-Control-Request-Method", "POST");
        request.Headers.Add("Access-Control-Request-Headers", "content-type");

        using var answer = await Service.ClientOf(host).SendAsync(request);

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        Assert.Contains("POST", answer.Headers.GetValues("Access-Control-Allow-Methods").Single());
        Assert.Contains("</v1/battery-safety>", answer.Headers.GetValues("Link").Single());
    }

    [Theory]
    [InlineData("Cors:Origins:0", "https://shop.example/cart")]
    [InlineData("Cors:Origins:0", "shop.example")]
    [InlineData("Embed:FrameAncestors:0", "*")]
    [InlineData("Proxy:Known:0", "the proxy")]
    public void A_setting_that_is_none_stops_the_start(string name, string value)
    {
        using var host = With((name, value));

        var stopped = Assert.ThrowsAny<Exception>(() => host.CreateClient());

        Assert.Contains(value, stopped.GetBaseException().Message);
    }

    [Theory]
    [InlineData(null, "http://localhost/")]
    [InlineData("10.0.0.0/8", "http://localhost/")]
    public async Task A_proxy_that_is_not_known_is_not_believed(string? known, string expected)
    {
        using var host = known is null ? With() : With(("Proxy:Known:0", known));

        Assert.StartsWith(expected, await SelfBehindProxy(host));
    }

    [Fact]
    public async Task A_known_proxy_says_by_which_address_callers_know_the_service()
    {
        // Without a network the caller has no address; the test server's is that of no one.
        using var host = With(("Proxy:Known:0", "127.0.0.1"));

        Assert.StartsWith(
            "https://checks.example/v1/checks?",
            await SelfBehindProxy(host, "127.0.0.1")
        );
    }

    private static async Task<string> SelfBehindProxy(
        Microsoft.AspNetCore.Mvc.Testing.WebApplicationFactory<Program> host,
        string from = "192.0.2.1"
    )
    {
        var context = await host.Server.SendAsync(request =>
        {
            request.Request.Method = "GET";
            request.Request.Path = "/v1/checks";
            request.Request.QueryString = new("?vehicle.massKg=3&spread=none&remedies=none");
            request.Request.Host = new("localhost");
            request.Request.Headers["X-Forwarded-Host"] = "checks.example";
            request.Request.Headers["X-Forwarded-Proto"] = "https";
            request.Connection.RemoteIpAddress = IPAddress.Parse(from);
        });
        using var reader = new StreamReader(context.Response.Body);
        return System
            .Text.Json.JsonDocument.Parse(await reader.ReadToEndAsync())
            .RootElement.GetProperty("links")
            .GetProperty("self")
            .GetString()!;
    }

    private static Microsoft.AspNetCore.Mvc.Testing.WebApplicationFactory<Program> With(
        params (string Name, string Value)[] settings
    ) =>
        Service
            .Own()
            .WithWebHostBuilder(builder =>
            {
                foreach (var (name, value) in settings)
                {
                    builder.UseSetting(name, value);
                }
            });

    private static async Task<Answer> Asked(HttpClient client, string? origin)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, Rig);
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        using var response = await client.SendAsync(request);
        return await Answer.Of(response);
    }

    private static string Ordered(string list) =>
        string.Join(", ", list.Split(", ").Distinct().Order(StringComparer.Ordinal));
}
