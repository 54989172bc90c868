namespace PowerCheck.Api.Pipeline;

/// <summary>The address by which a caller knows the service.</summary>
internal static class ServiceAddress
{
    /// <summary>Scheme, host and the path under which it stands, without a slash at the end.</summary>
    public static string Of(HttpRequest request) =>
        $"{request.Scheme}://{request.Host}{request.PathBase}";
}
