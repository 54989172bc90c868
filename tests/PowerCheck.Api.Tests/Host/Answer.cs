using System.Net;
using System.Text.Json;

namespace PowerCheck.Api.Tests.Host;

/// <summary>An answer of the service, read whole.</summary>
internal sealed record Answer(
    HttpStatusCode Status,
    string? MediaType,
    string Text,
    IReadOnlyDictionary<string, string> Headers
)
{
    public JsonElement Json => JsonDocument.Parse(Text).RootElement;

    public JsonElement[] Errors => [.. Json.GetProperty("errors").EnumerateArray()];

    public IEnumerable<string?> ErrorPaths =>
        Errors.Select(error => error.GetProperty("path").GetString());

    public static async Task<Answer> Of(HttpResponseMessage response) =>
        new(
            response.StatusCode,
            response.Content.Headers.ContentType?.MediaType,
            await response.Content.ReadAsStringAsync(),
            response
                .Headers.Concat(response.Content.Headers)
                .ToDictionary(
                    header => header.Key,
                    header => string.Join(", ", header.Value),
                    StringComparer.OrdinalIgnoreCase
                )
        );

    /// <summary>The one error of a problem that should have exactly one.</summary>
    public JsonElement OnlyError()
    {
        Assert.True(Status == HttpStatusCode.UnprocessableEntity, Text);
        Assert.True(Errors.Length == 1, Text);
        return Errors[0];
    }
}
