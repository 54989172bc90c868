using System.Globalization;
using System.Text.Json;

namespace PowerCheck.Api.Tests.Host;

/// <summary>
/// Finds a value by its path: member names and list positions joined by dots, and <c>list[member=value,…]</c> for the
/// first item that has these members.
/// </summary>
internal static class JsonPath
{
    /// <summary>The value as text; null when there is none.</summary>
    public static string? Text(JsonElement root, string path) =>
        Find(root, path) is { } found
            ? found.ValueKind == JsonValueKind.String
                ? found.GetString()
                : found.GetRawText()
            : null;

    public static JsonElement? Find(JsonElement root, string path)
    {
        JsonElement? at = root;
        foreach (var step in Steps(path))
        {
            at = at is { } here ? Step(here, step) : null;
        }

        return at;
    }

    /// <summary>Splits at the dots outside of brackets.</summary>
    public static IEnumerable<string> Steps(string path)
    {
        var start = 0;
        var depth = 0;
        for (var at = 0; at < path.Length; at++)
        {
            depth += path[at] switch
            {
                '[' => 1,
                ']' => -1,
                _ => 0,
            };
            if (path[at] == '.' && depth == 0)
            {
                yield return path[start..at];
                start = at + 1;
            }
        }

        yield return path[start..];
    }

    private static JsonElement? Step(JsonElement at, string step)
    {
        var bracket = step.IndexOf('[');
        if (bracket >= 0)
        {
            var list = bracket == 0 ? at : Step(at, step[..bracket]);
            return list is { } items ? Select(items, step[(bracket + 1)..^1]) : null;
        }

        return at.ValueKind switch
        {
            JsonValueKind.Object when at.TryGetProperty(step, out var member) => member,
            JsonValueKind.Array when int.TryParse(step, CultureInfo.InvariantCulture, out var i) =>
                i < at.GetArrayLength() ? at[i] : null,
            _ => null,
        };
    }

    private static JsonElement? Select(JsonElement items, string conditions)
    {
        var wanted = conditions.Split(',').Select(condition => condition.Split('=', 2)).ToArray();
        foreach (var item in items.EnumerateArray())
        {
            if (wanted.All(pair => Text(item, pair[0]) == pair[1]))
            {
                return item;
            }
        }

        return null;
    }
}
