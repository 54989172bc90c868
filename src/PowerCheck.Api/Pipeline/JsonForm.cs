using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PowerCheck.Api.Pipeline;

/// <summary>How the service writes JSON.</summary>
internal static class JsonForm
{
    /// <summary>The options of every answer.</summary>
    public static JsonSerializerOptions Options { get; } = Make();

    /// <summary>Sets the options on those that the framework holds.</summary>
    public static void Set(JsonSerializerOptions options)
    {
        options.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
        options.NumberHandling = JsonNumberHandling.Strict;
        // Degree signs and omegas are to be read by people; the answers are never put into a page as they are.
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
    }

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web);
        Set(options);
        return options;
    }
}
