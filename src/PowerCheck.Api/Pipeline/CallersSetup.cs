using System.Net;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.Net.Http.Headers;

namespace PowerCheck.Api.Pipeline;

/// <summary>Who may call from a page of another origin, and which proxies are believed; both closed when nothing is configured.</summary>
internal static class CallersSetup
{
    private const string CorsOrigins = "Cors:Origins";
    private const string KnownProxies = "Proxy:Known";

    public static void AddCallers(this WebApplicationBuilder builder)
    {
        var origins = Origins.Of(builder.Configuration, CorsOrigins).ToArray();
        builder.Services.AddCors(cors =>
            cors.AddDefaultPolicy(policy =>
                policy
                    .WithOrigins(origins)
                    .WithMethods(HttpMethods.Get, HttpMethods.Head, HttpMethods.Post)
                    .WithHeaders(
                        HeaderNames.Accept,
                        HeaderNames.ContentType,
                        HeaderNames.IfNoneMatch
                    )
                    .WithExposedHeaders(
                        HeaderNames.ETag,
                        HeaderNames.Link,
                        HeaderNames.RetryAfter,
                        TraceHeaders.TraceId
                    )
            )
        );
        builder.Services.Configure<ForwardedHeadersOptions>(options => Believe(options, builder));
    }

    public static void UseProxies(this WebApplication app)
    {
        if (Known(app.Configuration).Any())
        {
            app.UseForwardedHeaders();
        }
    }

    /// <summary>Lets configured origins in, and says that answers differ by origin then, to those without one as well.</summary>
    public static void UseOrigins(this WebApplication app)
    {
        app.UseCors();
        if (Origins.Of(app.Configuration, CorsOrigins).Count > 0)
        {
            app.Use(
                (context, next) =>
                {
                    if (
                        !context
                            .Response.Headers.Vary.ToString()
                            .Contains(HeaderNames.Origin, StringComparison.Ordinal)
                    )
                    {
                        context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.Origin);
                    }

                    return next(context);
                }
            );
        }
    }

    private static void Believe(ForwardedHeadersOptions options, WebApplicationBuilder builder)
    {
        options.ForwardedHeaders =
            ForwardedHeaders.XForwardedFor
            | ForwardedHeaders.XForwardedProto
            | ForwardedHeaders.XForwardedHost;
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        foreach (var network in Known(builder.Configuration))
        {
            options.KnownIPNetworks.Add(network);
        }
    }

    private static IEnumerable<System.Net.IPNetwork> Known(IConfiguration configuration) =>
        (configuration.GetSection(KnownProxies).Get<string[]>() ?? []).Select(given =>
            System.Net.IPNetwork.TryParse(given, out var network) ? network
            : IPAddress.TryParse(given, out var one) ? new(one, one.GetAddressBytes().Length * 8)
            : throw new InvalidOperationException(
                $"{KnownProxies} in the configuration has \"{given}\" and must have addresses or networks, such as 10.0.0.7 or 10.0.0.0/24."
            )
        );
}
