using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Faces;

/// <summary>The forms in which a check is answered, the one for callers who do not mind first.</summary>
internal static class CheckForms
{
    public const string Json = "application/json";
    public const string Text = "text/plain";
    public const string Png = "image/png";
    public const string Svg = "image/svg+xml";
    public const string Html = "text/html";

    /// <summary>Media types of the forms. Of pictures the one comes first that every program shows.</summary>
    public static readonly string[] All = [Json, Text, Png, Svg, Html];

    /// <summary>Words for the forms, in their order.</summary>
    public static readonly string[] Words = ["json", "text", "png", "svg", "html"];

    /// <summary>How an endpoint answers in all of them.</summary>
    /// <param name="cache">The Cache-Control header of its answers.</param>
    public static Answering Answering(string cache) =>
        new(cache, OwnQuery: true) { Forms = All, FormWords = Words };
}
