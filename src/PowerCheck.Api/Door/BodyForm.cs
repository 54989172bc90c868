using Microsoft.Net.Http.Headers;

namespace PowerCheck.Api.Door;

/// <summary>Holds the headers of a body against what an address reads: text in UTF-8, not compressed.</summary>
internal static class BodyForm
{
    private static readonly string[] Json = ["application/json"];

    /// <summary>Whether the door reads such a body as JSON. An empty one needs no form: it is refused as empty.</summary>
    public static bool Readable(HttpRequest request) =>
        Of(request, Json) is not null
        || (
            request.ContentLength is 0
            && request.Headers.ContentEncoding.Count == 0
            && !MediaTypeHeaderValue.TryParse(request.ContentType, out _)
        );

    /// <summary>Which of some media types a body has; null when it is none of them, or not plain UTF-8.</summary>
    public static string? Of(HttpRequest request, IReadOnlyList<string> forms) =>
        request.Headers.ContentEncoding.Count == 0
        && MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
        && IsUtf8(type)
            ? forms.FirstOrDefault(form =>
                type.MediaType.Equals(form, StringComparison.OrdinalIgnoreCase)
            )
            : null;

    private static bool IsUtf8(MediaTypeHeaderValue type) =>
        type.Charset.Length == 0
        || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase)
        || type.Charset.Equals("\"utf-8\"", StringComparison.OrdinalIgnoreCase);
}
