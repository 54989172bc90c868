using Microsoft.Net.Http.Headers;

namespace PowerCheck.Api.Pipeline;

/// <summary>Reads the Accept header. Parameters other than q are ignored.</summary>
internal static class AcceptHeader
{
    private const string Problem = "application/problem+json";

    /// <summary>What covers JSON, the closest first. Who reads problems reads JSON.</summary>
    private static readonly string[] JsonRanges =
    [
        "application/json",
        Problem,
        "application/*",
        "*/*",
    ];

    /// <summary>
    /// Whether JSON will do: the closest range that covers it does not rule it out. Ruling out problems alone says
    /// nothing about answers.
    /// </summary>
    public static bool AllowsJson(HttpRequest request)
    {
        var header = request.Headers.Accept;
        if (
            header.Count == 0
            || !MediaTypeHeaderValue.TryParseList(header, out var ranges)
            || ranges.Count == 0
        )
        {
            return true;
        }

        var closest = JsonRanges
            .Select(range => ranges.FirstOrDefault(given => Same(given, range)))
            .FirstOrDefault(given => given is not null && !RulesOutProblems(given));
        return closest is not null && closest.Quality is not 0;
    }

    private static bool RulesOutProblems(MediaTypeHeaderValue given) =>
        Same(given, Problem) && given.Quality is 0;

    private static bool Same(MediaTypeHeaderValue given, string range) =>
        given.MediaType.Equals(range, StringComparison.OrdinalIgnoreCase);
}
