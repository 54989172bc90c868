using System.Text.Json;
using System.Text.Json.Nodes;

namespace PowerCheck.Contract;

/// <summary>Writes a document so that two with the same content are the same text.</summary>
public static class ContractText
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The document with the members of every object in order.</summary>
    public static string Ordered(string document) =>
        Ordered(JsonNode.Parse(document))!.ToJsonString(Indented) + "\n";

    private static JsonNode? Ordered(JsonNode? node) =>
        node switch
        {
            JsonObject parts => new JsonObject(
                parts
                    .OrderBy(part => part.Key, StringComparer.Ordinal)
                    .Select(part => KeyValuePair.Create(part.Key, Ordered(part.Value)))
            ),
            JsonArray items => new JsonArray([.. items.Select(Ordered)]),
            _ => node?.DeepClone(),
        };
}
