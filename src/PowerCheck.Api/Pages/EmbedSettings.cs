namespace PowerCheck.Api.Pages;

/// <summary>Who may put the card into a frame: origins in the configuration, Embed:FrameAncestors. Nobody where none are named.</summary>
internal sealed class EmbedSettings
{
    private const string Section = "Embed:FrameAncestors";
    private static readonly string[] Schemes = [Uri.UriSchemeHttps, Uri.UriSchemeHttp];

    private EmbedSettings(string ancestors) => Ancestors = ancestors;

    /// <summary>Who may, as a policy lists them.</summary>
    public string Ancestors { get; }

    /// <summary>Reads the configuration.</summary>
    /// <exception cref="InvalidOperationException">An entry is no origin.</exception>
    public static EmbedSettings Of(IConfiguration configuration)
    {
        var section = configuration.GetSection(Section);
        var origins = section.Get<string[]>() ?? [];
        if (origins.Length == 0 && section.Value is { Length: > 0 } one)
        {
            origins = [one];
        }

        foreach (var origin in origins)
        {
            Hold(origin);
        }

        return new(origins.Length == 0 ? "'none'" : string.Join(' ', origins));
    }

    private static void Hold(string origin)
    {
        if (!IsOrigin(origin))
        {
            throw new InvalidOperationException(
                $"{Section} in the configuration has \"{origin}\" and must list origins such as https://shop.example, without a path."
            );
        }
    }

    private static bool IsOrigin(string origin) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var address)
        && Schemes.Contains(address.Scheme, StringComparer.Ordinal)
        && address.UserInfo.Length == 0
        && string.Equals(
            address.GetLeftPart(UriPartial.Authority),
            origin,
            StringComparison.OrdinalIgnoreCase
        );
}
