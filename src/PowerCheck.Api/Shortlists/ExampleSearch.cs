using System.Text.Json.Nodes;
using PowerCheck.Api.Checks;

namespace PowerCheck.Api.Shortlists;

/// <summary>The example rig with its controller sought: the document's example.</summary>
internal static class ExampleSearch
{
    private const string Fitted = """
        { "controller": { "motorKinds": ["brushless"], "continuousCurrentA": 25 } }
        """;

    private const string Candidates = """
        [
          {
            "id": "small",
            "controller": {
              "motorKinds": ["brushless"], "sensorInput": true, "minCells": 2, "maxCells": 3, "continuousCurrentA": 25
            }
          },
          {
            "id": "large",
            "controller": {
              "motorKinds": ["brushless"], "sensorInput": true, "minCells": 2, "maxCells": 4, "continuousCurrentA": 80,
              "burstCurrentA": 300, "burstSeconds": 1
            }
          }
        ]
        """;

    /// <summary>The search as a request body.</summary>
    public static string Json { get; } = Search().ToJsonString();

    private static JsonObject Search()
    {
        var check = JsonNode.Parse(ExampleRig.Json)!.AsObject();
        check.Remove("controller");
        return new()
        {
            ["check"] = check,
            ["seek"] = "controller",
            ["fitted"] = JsonNode.Parse(Fitted),
            ["candidates"] = JsonNode.Parse(Candidates),
        };
    }
}
