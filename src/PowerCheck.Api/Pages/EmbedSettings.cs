using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Pages;

/// <summary>Who may put the card into a frame: origins in the configuration, Embed:FrameAncestors. Nobody where none are named.</summary>
internal sealed class EmbedSettings
{
    private const string Section = "Embed:FrameAncestors";

    private EmbedSettings(string ancestors) => Ancestors = ancestors;

    /// <summary>Who may, as a policy lists them.</summary>
    public string Ancestors { get; }

    /// <summary>Reads the configuration.</summary>
    /// <exception cref="InvalidOperationException">An entry is no origin.</exception>
    public static EmbedSettings Of(IConfiguration configuration)
    {
        var origins = Origins.Of(configuration, Section);
        return new(origins.Count == 0 ? "'none'" : string.Join(' ', origins));
    }
}
