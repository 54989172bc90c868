using Microsoft.Net.Http.Headers;

namespace PowerCheck.Api.Door;

/// <summary>Holds the headers of a body against what the door reads: JSON in UTF-8, not compressed.</summary>
internal static class BodyForm
{
    /// <summary>Whether the door reads such a body. An empty one needs no form: it is refused as empty.</summary>
    public static bool Readable(HttpRequest request)
    {
        if (request.Headers.ContentEncoding.Count > 0)
        {
            return false;
        }

        return MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
            ? Json(type)
            : request.ContentLength is 0;
    }

    private static bool Json(MediaTypeHeaderValue type) =>
        type.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase)
        && (
            type.Charset.Length == 0
            || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase)
            || type.Charset.Equals("\"utf-8\"", StringComparison.OrdinalIgnoreCase)
        );
}
