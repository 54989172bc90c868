using System.Text.Json;

namespace PowerCheck.Api.Tests.Documents;

/// <summary>Holds JSON against a schema of the document: as much of JSON Schema as the document uses, and strictly.</summary>
internal static class SchemaCheck
{
    public static IEnumerable<string> Faults(
        JsonElement document,
        string schema,
        JsonElement value
    ) =>
        Faults(
            document.GetProperty("components").GetProperty("schemas"),
            Named(document, schema),
            value,
            schema
        );

    private static JsonElement Named(JsonElement document, string schema) =>
        document.GetProperty("components").GetProperty("schemas").GetProperty(schema);

    private static IEnumerable<string> Faults(
        JsonElement schemas,
        JsonElement schema,
        JsonElement value,
        string path
    )
    {
        if (schema.TryGetProperty("$ref", out var reference))
        {
            var name = reference.GetString()!.Split('/')[^1];
            return Faults(schemas, schemas.GetProperty(name), value, path);
        }

        return schema.GetProperty("type").GetString() switch
        {
            "object" => Object(schemas, schema, value, path),
            "array" => List(schemas, schema, value, path),
            "string" => Text(schema, value, path),
            "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False
                ? []
                : [$"{path} is no yes or no"],
            _ => Number(schema, value, path),
        };
    }

    private static IEnumerable<string> Object(
        JsonElement schemas,
        JsonElement schema,
        JsonElement value,
        string path
    )
    {
        var members = schema.GetProperty("properties");
        foreach (var member in value.EnumerateObject())
        {
            var known = members.TryGetProperty(member.Name, out var inner);
            var faults = known
                ? Faults(schemas, inner, member.Value, $"{path}.{member.Name}")
                : [$"{path}.{member.Name} is not in the document"];
            foreach (var fault in faults)
            {
                yield return fault;
            }
        }

        foreach (
            var name in schema.TryGetProperty("required", out var required)
                ? required.EnumerateArray()
                : default
        )
        {
            if (!value.TryGetProperty(name.GetString()!, out _))
            {
                yield return $"{path}.{name} is missing";
            }
        }
    }

    private static IEnumerable<string> List(
        JsonElement schemas,
        JsonElement schema,
        JsonElement value,
        string path
    )
    {
        if (value.GetArrayLength() > schema.GetProperty("maxItems").GetInt32())
        {
            yield return $"{path} is too long";
        }

        foreach (var (i, item) in value.EnumerateArray().Index())
        {
            foreach (var fault in Faults(schemas, schema.GetProperty("items"), item, $"{path}.{i}"))
            {
                yield return fault;
            }
        }
    }

    private static IEnumerable<string> Text(JsonElement schema, JsonElement value, string path)
    {
        var text = value.GetString()!;
        if (schema.TryGetProperty("enum", out var words))
        {
            return words.EnumerateArray().Any(word => word.GetString() == text)
                ? []
                : [$"{path} is {text}, none of the words"];
        }

        return text.Length <= schema.GetProperty("maxLength").GetInt32()
            ? []
            : [$"{path} has {text.Length} characters"];
    }

    private static IEnumerable<string> Number(JsonElement schema, JsonElement value, string path)
    {
        var figure = value.GetDouble();
        return
            figure >= schema.GetProperty("minimum").GetDouble()
            && figure <= schema.GetProperty("maximum").GetDouble()
            ? []
            : [$"{path} is {figure}, out of range"];
    }
}
