using System.Text;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace PowerCheck.Api.Tests.Host;

/// <summary>The real host, started once for all tests; they only ask and change nothing.</summary>
internal static class Service
{
    private static readonly Lazy<WebApplicationFactory<Program>> Shared = new(() => new Quiet());

    /// <summary>A client that does not follow redirects.</summary>
    public static HttpClient Client { get; } = ClientOf(Shared.Value);

    /// <summary>A host that says nothing, to be changed by a test that needs another one.</summary>
    public static WebApplicationFactory<Program> Own() => new Quiet();

    public static HttpClient ClientOf(WebApplicationFactory<Program> host) =>
        host.CreateClient(new() { AllowAutoRedirect = false });

    public static Task<Answer> Get(string address) => Send(new(HttpMethod.Get, address));

    /// <summary>A check; by the best estimates alone, which takes the least time, unless asked otherwise.</summary>
    public static Task<Answer> Check(string body, string query = Alone) =>
        Check(Encoding.UTF8.GetBytes(body), query);

    public static Task<Answer> Check(byte[] body, string query = Alone) =>
        Post("/v1/checks" + query, body);

    public const string Alone = "?spread=none";

    public static Task<Answer> Post(string address, string body) =>
        Post(address, Encoding.UTF8.GetBytes(body));

    private static Task<Answer> Post(string address, byte[] body) =>
        Send(
            new(HttpMethod.Post, address)
            {
                Content = new ByteArrayContent(body)
                {
                    Headers = { ContentType = new("application/json") },
                },
            }
        );

    public static async Task<Answer> Send(HttpRequestMessage request)
    {
        using (request)
        {
            using var response = await Client.SendAsync(request);
            return await Answer.Of(response);
        }
    }

    public static HttpRequestMessage Accepting(string address, string accept)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, address);
        Assert.True(request.Headers.TryAddWithoutValidation("Accept", accept));
        return request;
    }

    private sealed class Quiet : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder) =>
            builder.UseSetting("Serilog:MinimumLevel:Default", "Fatal");
    }
}
