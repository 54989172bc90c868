using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsvHelper;
using CsvHelper.Configuration;

namespace PowerCheck.Api.Tests.Host;

/// <summary>Many checks in one request.</summary>
internal static class Fleet
{
    public const string Lines = "application/x-ndjson";
    public const string List = "application/json";
    public const string Table = "text/csv";

    /// <summary>The best estimates alone and no remedies, which takes the least time.</summary>
    public const string Quick = "?spread=none&remedies=none";

    /// <summary>The example as one line, under an id.</summary>
    public static string Rig(string id)
    {
        var rig = Rigs.Example();
        rig["id"] = id;
        return rig.ToJsonString();
    }

    public static Task<Answer> Send(string body, string type = Lines, string query = Quick) =>
        Send(Encoding.UTF8.GetBytes(body), type, query);

    public static Task<Answer> Send(byte[] body, string type = Lines, string query = Quick) =>
        Service.Send(Request(body, type, query));

    public static HttpRequestMessage Request(byte[] body, string type, string query = Quick) =>
        new(HttpMethod.Post, "/v1/checks/batch" + query)
        {
            Content = new ByteArrayContent(body)
            {
                Headers = { ContentType = MediaTypeHeaderValue.Parse(type) },
            },
        };

    /// <summary>The objects of an answer of lines; the last is the tally.</summary>
    public static JsonElement[] Outcomes(this Answer answer)
    {
        Assert.True(answer.Status == System.Net.HttpStatusCode.OK, answer.Text);
        return
        [
            .. answer
                .Text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => JsonDocument.Parse(line).RootElement),
        ];
    }

    /// <summary>Kind and line of each outcome but the tally.</summary>
    public static string[] Kinds(this JsonElement[] outcomes) =>
        [
            .. outcomes[..^1]
                .Select(outcome => $"{outcome.Text("kind")} {outcome.GetProperty("line")}"),
        ];

    /// <summary>What is wrong with the only problem among the outcomes.</summary>
    public static JsonElement Problem(this JsonElement[] outcomes) =>
        Assert
            .Single(outcomes, outcome => outcome.Text("kind") == "problem")
            .GetProperty("problem");

    public static string? Text(this JsonElement element, string name) =>
        element.GetProperty(name).GetString();

    /// <summary>The rows of a table, cells by heading.</summary>
    public static Dictionary<string, string>[] Rows(this Answer answer, string delimiter = ",")
    {
        Assert.True(answer.Status == System.Net.HttpStatusCode.OK, answer.Text);
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = delimiter,
        };
        using var csv = new CsvReader(
            new StringReader(answer.Text.TrimStart('\uFEFF')),
            configuration
        );
        return
        [
            .. csv.GetRecords<dynamic>()
                .Select(row =>
                    ((IDictionary<string, object>)row).ToDictionary(
                        cell => cell.Key,
                        cell => (string)cell.Value
                    )
                ),
        ];
    }

    /// <summary>Every value of a rig by its path.</summary>
    public static IEnumerable<(string Path, string Value)> Cells(JsonNode? rig, string path = "") =>
        rig switch
        {
            JsonObject parts => parts.SelectMany(part => Cells(part.Value, Join(path, part.Key))),
            JsonArray items => items.SelectMany(
                (item, at) => Cells(item, Join(path, at.ToString(CultureInfo.InvariantCulture)))
            ),
            _ => [(path, rig!.ToString())],
        };

    private static string Join(string path, string step) =>
        path.Length == 0 ? step : $"{path}.{step}";
}
