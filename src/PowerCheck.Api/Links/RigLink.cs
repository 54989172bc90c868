using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Links;

/// <summary>
/// Writes a rig as the parameters of a link: members in the order of the document, figures in the units of their names. The same
/// rig has the same link, however it was given.
/// </summary>
internal static class RigLink
{
    private const string Tolerances = "tolerances";
    private const string Share = "relative";

    /// <summary>The parameters, joined, without the question mark.</summary>
    public static string Query(CheckCall call) => Joined(Parameters(call));

    /// <summary>Parameters, joined, without the question mark.</summary>
    /// <param name="parameters">Each with its text.</param>
    public static string Joined(IEnumerable<(string Path, string Text)> parameters) =>
        string.Join('&', parameters.Select(pair => $"{Escaped(pair.Path)}={Escaped(pair.Text)}"));

    /// <summary>Members and options, each with its text.</summary>
    public static IEnumerable<(string Path, string Text)> Parameters(CheckCall call) =>
        Members(call.Request).Concat(CheckOptions.Said(call.Options));

    /// <summary>The members by path, each with its text.</summary>
    public static IEnumerable<(string Path, string Text)> Members(CheckRequest rig) =>
        JsonSerializer
            .SerializeToNode(rig, JsonForm.Options)!
            .AsObject()
            .SelectMany(member => Values(member.Key, member.Value!, LinkReader.IsPart(member.Key)));

    private static IEnumerable<(string Path, string Text)> Values(
        string path,
        JsonNode value,
        bool isPart = false
    ) =>
        value switch
        {
            JsonObject { Count: 0 } => isPart ? [] : [(path, LinkReader.Empty)],
            JsonObject shares when IsShare(path, shares) => [(path, Text(shares[Share]!))],
            JsonObject members => Ordered(path, members)
                .SelectMany(member => Values($"{path}.{member.Key}", member.Value!)),
            JsonArray { Count: 0 } => [(path, LinkReader.Empty)],
            JsonArray words when words.All(IsWord) =>
            [
                (path, string.Join(',', words.Select(Text!))),
            ],
            JsonArray items => items.SelectMany(
                (item, at) => Values($"{path}.{at.ToString(CultureInfo.InvariantCulture)}", item!)
            ),
            _ => [(path, Text(value))],
        };

    // Paths within a path have no order of their own.
    private static IEnumerable<KeyValuePair<string, JsonNode?>> Ordered(
        string path,
        JsonObject members
    ) =>
        path is Tolerances
            ? members.OrderBy(member => member.Key, StringComparer.Ordinal)
            : members;

    private static bool IsShare(string path, JsonObject spread) =>
        path.StartsWith($"{Tolerances}.", StringComparison.Ordinal)
        && spread.Count == 1
        && spread.ContainsKey(Share);

    private static bool IsWord(JsonNode? item) => item!.GetValueKind() == JsonValueKind.String;

    private static string Text(JsonNode value) =>
        value.GetValueKind() switch
        {
            JsonValueKind.String => value.GetValue<string>(),
            JsonValueKind.Number => value
                .GetValue<double>()
                .ToString("R", CultureInfo.InvariantCulture),
            JsonValueKind.True => "true",
            _ => "false",
        };

    // What a query may hold as it is stays readable (RFC 3986, 3.4).
    private static string Escaped(string text) =>
        new StringBuilder(Uri.EscapeDataString(text))
            .Replace("%2C", ",")
            .Replace("%3A", ":")
            .Replace("%2F", "/")
            .ToString();
}
