namespace PowerCheck.Api.Pipeline;

/// <summary>How long an answer may be kept by those who asked.</summary>
internal static class Caching
{
    /// <summary>Not at all.</summary>
    public const string None = "no-store";

    /// <summary>An hour: what changes only with a new version of the service.</summary>
    public const string Hour = "public, max-age=3600";

    /// <summary>For good: what has another address with every build.</summary>
    public const string Year = "public, max-age=31536000, immutable";
}
