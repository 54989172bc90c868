using System.Text.Json;

namespace PowerCheck.Api.Tests.Readme;

/// <summary>Compares an answer with one that is shown shortened: a mark stands where something is left out.</summary>
internal static class Shortened
{
    private const string Mark = "…";

    /// <summary>Every difference, by path; none when the shown answer is the real one, shortened where marked.</summary>
    public static IEnumerable<string> Differences(
        JsonElement shown,
        JsonElement real,
        string path = "$"
    ) =>
        shown.ValueKind switch
        {
            JsonValueKind.Object when real.ValueKind == JsonValueKind.Object => Members(
                shown,
                real,
                path
            ),
            JsonValueKind.Array when real.ValueKind == JsonValueKind.Array => Items(
                shown,
                real,
                path
            ),
            _ => shown.ToString() == real.ToString() && shown.ValueKind == real.ValueKind
                ? []
                : [$"{path}: shown {shown}, is {real}"],
        };

    private static IEnumerable<string> Members(JsonElement shown, JsonElement real, string path)
    {
        var open = shown.TryGetProperty(Mark, out _);
        foreach (var member in shown.EnumerateObject().Where(member => member.Name != Mark))
        {
            if (!real.TryGetProperty(member.Name, out var value))
            {
                yield return $"{path}.{member.Name}: shown, but not there";
                continue;
            }

            foreach (var found in Differences(member.Value, value, $"{path}.{member.Name}"))
            {
                yield return found;
            }
        }

        foreach (
            var member in real.EnumerateObject()
                .Where(member => !open && !shown.TryGetProperty(member.Name, out _))
        )
        {
            yield return $"{path}.{member.Name}: left out without a mark";
        }
    }

    // Shown items must come in the real order; a mark lets any number be skipped.
    private static IEnumerable<string> Items(JsonElement shown, JsonElement real, string path)
    {
        var items = shown.EnumerateArray().ToArray();
        var open = items.Any(IsMark);
        var from = 0;
        foreach (var item in items.Where(item => !IsMark(item)))
        {
            var at = from;
            while (open && at < real.GetArrayLength() && Differences(item, real[at], path).Any())
            {
                at++;
            }

            if (at >= real.GetArrayLength())
            {
                yield return $"{path}: shown, but not there: {item}";
                yield break;
            }

            foreach (var found in Differences(item, real[at], $"{path}.{at}"))
            {
                yield return found;
            }

            from = at + 1;
        }

        if (!open && from < real.GetArrayLength())
        {
            yield return $"{path}: items left out without a mark";
        }
    }

    private static bool IsMark(JsonElement item) =>
        item.ValueKind == JsonValueKind.String && item.GetString() == Mark;
}
