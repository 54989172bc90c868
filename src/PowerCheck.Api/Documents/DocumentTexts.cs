using System.Text.Json;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Documents;

/// <summary>What the document says of the service as a whole.</summary>
internal sealed class DocumentTexts : IOpenApiDocumentTransformer
{
    private static readonly (string Name, string Description)[] Tags =
    [
        ("Checks", "Whether the parts of a rig work together."),
        ("Shortlists", "What a part that is sought must be able to do, and which of some do best."),
        ("Reference", "What findings mean and what the model rests on."),
        ("Safety", "Cautions about batteries."),
        ("Problems", "The kinds of problem."),
        ("Health", "Whether the service runs."),
    ];

    public Task TransformAsync(
        OpenApiDocument document,
        OpenApiDocumentTransformerContext context,
        CancellationToken cancellationToken
    )
    {
        document.Info = new()
        {
            Title = "PowerCheck",
            Version = "1.0.0",
            Contact = new() { Name = "The maintainers of PowerCheck" },
            Summary =
                "Do motor, speed controller, pack and gearing of a small rock crawler work together?",
            Description =
                "A rig goes in, a verdict with its reasons comes out. Names end in their units as the trade prints them. Members and words match exactly; what is not known is refused, what is left out is assumed and listed. In answers nothing is null: what was not computed is absent, and a finding says why. Callers ignore what they do not know: members and codes may be added.",
            Extensions = new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal)
            {
                ["x-batterySafety"] = new JsonNodeExtension(
                    JsonSerializer.SerializeToNode(SafetyBlock.Plain, JsonForm.Options)!
                ),
            },
        };
        // Nothing is behind a key: said, so that nobody has to wonder.
        document.Security = [new()];
        document.Servers =
        [
            new() { Url = "/", Description = "The service that gave this document." },
        ];
        document.Tags = Tags.Select(tag => new OpenApiTag
            {
                Name = tag.Name,
                Description = tag.Description,
            })
            .ToHashSet();
        return Task.CompletedTask;
    }
}
