using System.Text.Json.Nodes;
using PowerCheck.Api.Checks;

namespace PowerCheck.Api.Tests.Host;

/// <summary>Bodies for checks.</summary>
internal static class Rigs
{
    /// <summary>The smallest body that the door lets pass.</summary>
    public const string Least =
        """{"motor":{},"controller":{},"battery":{},"vehicle":{"massKg":3}}""";

    public static JsonObject Example() => JsonNode.Parse(ExampleRig.Json)!.AsObject();

    public static JsonObject Smallest() => JsonNode.Parse(Least)!.AsObject();

    /// <summary>Sets a member by its path; missing objects and list items on the way are made.</summary>
    public static JsonObject With(this JsonObject body, string path, JsonNode? value)
    {
        JsonNode at = body;
        var steps = path.Split('.');
        for (var i = 0; i < steps.Length - 1; i++)
        {
            at = Enter(at, steps[i], isList: char.IsAsciiDigit(steps[i + 1][0]));
        }

        Put(at, steps[^1], value);
        return body;
    }

    private static JsonNode Enter(JsonNode at, string step, bool isList)
    {
        var inner = at is JsonArray list ? list.ElementAtOrDefault(int.Parse(step)) : at[step];
        if (inner is null)
        {
            inner = isList ? new JsonArray() : new JsonObject();
            Put(at, step, inner);
        }

        return inner;
    }

    private static void Put(JsonNode at, string step, JsonNode? value)
    {
        if (at is not JsonArray list)
        {
            at[step] = value;
        }
        else if (int.Parse(step) < list.Count)
        {
            list[int.Parse(step)] = value;
        }
        else
        {
            list.Add(value);
        }
    }
}
