using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Documents;

/// <summary>Says of the operation for many rigs in which forms it reads and answers, which the framework cannot declare side by side.</summary>
internal static class BatchTexts
{
    private const string Rows = """
        id,motor.kind,motor.kvRpmPerVolt,motor.resistanceMilliohm,motor.massG,controller.motorKinds,controller.maxCells,controller.continuousCurrentA,battery.seriesCells,battery.capacityMah,vehicle.massKg[lb],vehicle.drivetrain.overallRatio
        rig-7,brushed,1500,80,160,brushed,3,60,2,2200,5.5,45

        """;

    private const string Verdicts = """
        kind,line,id,verdict,problem
        check,2,rig-7,suitable,
        tally,1,,,

        """;

    /// <summary>Writes the forms of the request.</summary>
    public static void Request(OpenApiOperation operation, OpenApiDocument? document)
    {
        if (operation.RequestBody is not OpenApiRequestBody body)
        {
            return;
        }

        var rig = JsonNode.Parse(ExampleRig.Json)!;
        var list = body.Content!["application/json"];
        list.Example = new JsonArray(rig.DeepClone());
        body.Required = true;
        body.Description =
            "The rigs: one a line, one an item, or one a row of a table whose header names members by path, with the unit in square brackets where it is another. A table with semicolons may have decimal commas.";
        body.Content = new Dictionary<string, OpenApiMediaType>(StringComparer.Ordinal)
        {
            [LineOutcomes.Type] = new()
            {
                Schema = new OpenApiSchemaReference(nameof(CheckRequest), document),
                Example = rig,
            },
            [ListOutcomes.Type] = list,
            [TableOutcomes.Type] = Text(Rows),
        };
    }

    /// <summary>Writes the forms of the answer.</summary>
    public static void Answer(OpenApiOperation operation, OpenApiDocument? document)
    {
        if (operation.Responses?["200"] is not OpenApiResponse answer)
        {
            return;
        }

        answer.Description =
            "The outcomes, in the order of the lines; as lines or rows the last is the tally.";
        answer.Content![LineOutcomes.Type] = new()
        {
            Schema = new OpenApiSchemaReference(nameof(OutcomeAnswer), document),
            Example = JsonNode.Parse(
                """{ "kind": "check", "line": 1, "id": "rig-7", "fields": { "verdict": "suitable" } }"""
            ),
        };
        answer.Content[TableOutcomes.Type] = Text(Verdicts);
    }

    private static OpenApiMediaType Text(string example) =>
        new()
        {
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            Example = JsonValue.Create(example),
        };
}
