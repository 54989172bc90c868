using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;
using PowerCheck.Clients.Generated;

namespace PowerCheck.Clients;

/// <summary>The running service, as a generated client sees it.</summary>
internal static class Service
{
    /// <summary>Where it listens.</summary>
    public static Uri Address { get; } =
        new(Environment.GetEnvironmentVariable("POWERCHECK_ADDRESS") ?? "http://localhost:5080");

    /// <summary>A client of it.</summary>
    public static PowerCheckClient Client { get; } =
        new(
            new HttpClientRequestAdapter(new AnonymousAuthenticationProvider())
            {
                BaseUrl = Address.GetLeftPart(UriPartial.Authority),
            }
        );
}
