namespace PowerCheck.Api.Pipeline;

/// <summary>The address by which a caller knows the service.</summary>
internal static class ServiceAddress
{
    /// <summary>Longest name of a host (RFC 1035, 2.3.4), and a port.</summary>
    private const int LongestHost = 255 + 6;

    /// <summary>Scheme and host; null where the caller named none, or none that can be.</summary>
    public static string? Of(HttpRequest request) =>
        request.Host.Value is { Length: > 0 and <= LongestHost } host
            ? $"{request.Scheme}://{host}{request.PathBase}"
            : null;
}
