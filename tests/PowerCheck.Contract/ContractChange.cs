using System.Text.Json;

namespace PowerCheck.Contract;

/// <summary>What callers lose from one document to the next.</summary>
public static class ContractChange
{
    /// <summary>Addresses, methods, members and words that the fresh document has no more.</summary>
    public static IReadOnlyList<string> Removed(string old, string fresh)
    {
        var left = Names(fresh).ToHashSet(StringComparer.Ordinal);
        var gone = Names(old).Where(name => !left.Contains(name)).ToList();
        // Of an address that is gone whole, its methods need no mention.
        return [.. gone.Where(name => !gone.Exists(other => IsWithin(name, other)))];
    }

    /// <summary>Whether the fresh document has a higher version.</summary>
    public static bool Raised(string old, string fresh) => Version(fresh) > Version(old);

    private static bool IsWithin(string name, string other) =>
        name.StartsWith(other + ".", StringComparison.Ordinal);

    private static Version Version(string document)
    {
        using var parsed = JsonDocument.Parse(document);
        return new(parsed.RootElement.GetProperty("info").GetProperty("version").GetString()!);
    }

    private static List<string> Names(string document)
    {
        using var parsed = JsonDocument.Parse(document);
        var root = parsed.RootElement;
        List<string> names = [.. Paths(root.GetProperty("paths"))];
        foreach (
            var schema in root.GetProperty("components").GetProperty("schemas").EnumerateObject()
        )
        {
            names.AddRange(Members(schema));
        }

        return names;
    }

    private static IEnumerable<string> Paths(JsonElement paths) =>
        paths
            .EnumerateObject()
            .SelectMany(path =>
                path.Value.EnumerateObject()
                    .Select(method => $"paths.{path.Name}.{method.Name}")
                    .Prepend($"paths.{path.Name}")
            );

    private static IEnumerable<string> Members(JsonProperty schema) =>
        schema.Value.TryGetProperty("properties", out var members)
            ? members
                .EnumerateObject()
                .SelectMany(member => Words($"schemas.{schema.Name}.{member.Name}", member.Value))
            : [];

    private static IEnumerable<string> Words(string path, JsonElement member) =>
        member.TryGetProperty("enum", out var words)
            ? words.EnumerateArray().Select(word => $"{path} = {word}").Prepend(path)
            : [path];
}
