using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using PowerCheck.Api.Batches;
using PowerCheck.Api.Batches.Fields;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;
using PowerCheck.Api.Shortlists;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Documents;

/// <summary>Says of every operation what the framework cannot read from its handler.</summary>
internal sealed class OperationTexts : IOpenApiOperationTransformer
{
    public Task TransformAsync(
        OpenApiOperation operation,
        OpenApiOperationTransformerContext context,
        CancellationToken cancellationToken
    )
    {
        Statuses(operation);
        switch (operation.OperationId)
        {
            case "checkRig":
                Check(operation);
                break;
            case "checkRigByLink":
                Checked(operation);
                Forms(operation);
                CheckTexts.NotModified(operation);
                break;
            case "checkRigs":
                Batch(operation, context.Document);
                break;
            case "rankParts":
                Shortlist(operation);
                break;
            case "getProblem":
                Slug(operation);
                break;
            default:
                break;
        }

        return Task.CompletedTask;
    }

    private static void Statuses(OpenApiOperation operation)
    {
        var sorted = new OpenApiResponses();
        foreach (
            var (status, response) in (operation.Responses ?? []).OrderBy(
                pair => pair.Key,
                StringComparer.Ordinal
            )
        )
        {
            response.Description =
                string.Equals(status, "200", StringComparison.Ordinal) ? "The answer."
                : status is "503" && operation.OperationId is not "isReady"
                    ? "The service is busy, or the answer would take too long; type says which. Retry-After says when to try again."
                : ProblemKinds.Of(int.Parse(status)).Title + ".";
            Headers(response);
            sorted[status] = response;
        }

        operation.Responses = sorted;
    }

    private static void Headers(IOpenApiResponse response)
    {
        if (response is not OpenApiResponse written)
        {
            return;
        }

        written.Headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal)
        {
            ["X-Trace-Id"] = Header("The request's trace id.", "4bf92f3577b34da6a3ce929d0e0e4736"),
            ["Link"] = Header("Leads to the cautions about batteries.", TraceHeaders.Link),
        };
    }

    private static OpenApiHeader Header(string description, string example) =>
        new()
        {
            Description = description,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            Example = JsonValue.Create(example),
        };

    private static void Check(OpenApiOperation operation)
    {
        Checked(operation);
        Forms(operation);
        Body(operation, "The rig.", ExampleRig.Json);
    }

    private static void Forms(OpenApiOperation operation)
    {
        operation.Parameters!.Add(
            Option(
                FormOption.Name,
                "In which form to answer, whatever the Accept header says; when neither says, as JSON.",
                CheckForms.Words,
                CheckForms.Words[0]
            )
        );
        CheckTexts.Answer(operation);
    }

    private static void Batch(OpenApiOperation operation, OpenApiDocument? document)
    {
        Checked(operation);
        operation.Parameters!.Add(Fields());
        operation.Parameters.Add(
            Option(
                FormOption.Name,
                "In which form to answer, whatever the Accept header says; when neither says, in the form of the request.",
                BatchDoor.FormWords
            )
        );
        BatchTexts.Request(operation, document);
        BatchTexts.Answer(operation, document);
    }

    private static OpenApiParameter Fields() =>
        new()
        {
            Name = FieldsOption.Name,
            In = ParameterLocation.Query,
            Description =
                "Paths of the members wanted of each answer, with commas between them; when left out, all of it, or in a table verdict, summary and the deciding limit. A table takes paths of single values.",
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = 4000 },
            Example = JsonValue.Create("verdict,endurance.minutes,findings.0.code"),
        };

    private static void Checked(OpenApiOperation operation)
    {
        operation.Parameters ??= [];
        operation.Parameters.Add(
            Option("findings", "all: list the findings that hold without a caution too.", ["all"])
        );
        operation.Parameters.Add(Spread());
        operation.Parameters.Add(
            Option(
                "remedies",
                "none: do not seek what would make the limits hold that do not, which takes most of the time.",
                ["none"]
            )
        );
    }

    private static void Shortlist(OpenApiOperation operation)
    {
        operation.Parameters ??= [];
        operation.Parameters.Add(Spread());
        Body(
            operation,
            "The rig without the part, and what could take its place.",
            ExampleSearch.Json
        );
    }

    private static OpenApiParameter Spread() =>
        Option(
            "spread",
            "How the spread of the figures is carried to the limits: linear (each input by itself, Monte Carlo where "
                + "that would mislead; when left out), montecarlo, or none (the best estimates alone, at once).",
            [.. Enum.GetValues<SpreadMethod>().Select(Words.Of)]
        );

    private static void Body(OpenApiOperation operation, string description, string example)
    {
        if (operation.RequestBody is OpenApiRequestBody body)
        {
            body.Required = true;
            body.Description = description;
            body.Content!.Remove("*/*");
            body.Content["application/json"].Example = JsonNode.Parse(example);
        }
    }

    private static OpenApiParameter Option(
        string name,
        string description,
        IReadOnlyList<string> words,
        string? example = null
    ) =>
        new()
        {
            Name = name,
            In = ParameterLocation.Query,
            Description = description,
            Schema = new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Enum = [.. words.Select(word => JsonValue.Create(word))],
            },
            Example = JsonValue.Create(example ?? words[^1]),
        };

    private static void Slug(OpenApiOperation operation)
    {
        if (operation.Parameters is [OpenApiParameter slug, ..])
        {
            slug.Description = "Short name of the kind.";
            slug.Example = JsonValue.Create(ProblemKinds.Invalid.Slug);
        }
    }
}
