namespace PowerCheck.Api.Pipeline;

/// <summary>Origins that the configuration names, such as https://shop.example (RFC 6454).</summary>
internal static class Origins
{
    /// <summary>The origins of a section; none when it is empty.</summary>
    /// <exception cref="InvalidOperationException">One of them is no origin.</exception>
    public static IReadOnlyList<string> Of(IConfiguration configuration, string section) =>
        [
            .. (configuration.GetSection(section).Get<string[]>() ?? []).Select(given =>
                IsOrigin(given)
                    ? given
                    : throw new InvalidOperationException(
                        $"{section} in the configuration has \"{given}\" and must have origins alone, such as https://shop.example or http://localhost:8080, without a path."
                    )
            ),
        ];

    private static bool IsOrigin(string given) =>
        Uri.TryCreate(given, UriKind.Absolute, out var address)
        && address.Scheme is "http" or "https"
        && string.Equals(
            address.GetLeftPart(UriPartial.Authority),
            given,
            StringComparison.OrdinalIgnoreCase
        );
}
