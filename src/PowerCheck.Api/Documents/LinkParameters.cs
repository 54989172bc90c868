using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Links;

namespace PowerCheck.Api.Documents;

/// <summary>Writes the members of a rig as the parameters of a link, from the schemas that describe a body.</summary>
internal sealed class LinkParameters : IOpenApiDocumentTransformer
{
    private const string First = "0";

    public Task TransformAsync(
        OpenApiDocument document,
        OpenApiDocumentTransformerContext context,
        CancellationToken cancellationToken
    )
    {
        if (document.Paths[CheckLinks.Checks].Operations?[HttpMethod.Get] is { } operation)
        {
            IOpenApiParameter[] options = [.. operation.Parameters ?? []];
            operation.Parameters =
            [
                .. Values(document, nameof(CheckRequest), "", isRequired: true),
                .. options,
            ];
        }

        return Task.CompletedTask;
    }

    private static IEnumerable<IOpenApiParameter> Values(
        OpenApiDocument document,
        string type,
        string prefix,
        bool isRequired
    )
    {
        var schema = document.Components!.Schemas![type];
        return schema.Properties!.SelectMany(member =>
            Values(
                document,
                member.Value,
                prefix + member.Key,
                isRequired && schema.Required?.Contains(member.Key) is true
            )
        );
    }

    private static IEnumerable<IOpenApiParameter> Values(
        OpenApiDocument document,
        IOpenApiSchema schema,
        string path,
        bool isRequired
    ) =>
        schema switch
        {
            OpenApiSchemaReference part => Values(
                document,
                part.Reference.Id!,
                $"{path}.",
                isRequired
            ),
            { AdditionalProperties: not null } => [],
            { Items: OpenApiSchemaReference item } => Values(
                document,
                item.Reference.Id!,
                $"{path}.{First}.",
                isRequired: false
            ),
            { Items: { Enum: not null } words } => [Words(schema, words, path)],
            { Items: { } item } =>
            [
                Value(item, $"{path}.{First}", schema.Description, isRequired: false),
            ],
            _ => [Value(schema, path, schema.Description, isRequired)],
        };

    private static OpenApiParameter Value(
        IOpenApiSchema schema,
        string path,
        string? description,
        bool isRequired
    )
    {
        var isFigure = schema.Extensions?.ContainsKey("x-unit") is true;
        return new()
        {
            Name = path,
            In = ParameterLocation.Query,
            Description = description,
            Required = isRequired,
            Schema = isFigure ? Figure(schema) : Plain(schema),
            Example = isFigure
                ? JsonValue.Create(schema.Examples![0].ToJsonString())
                : schema.Examples![0].DeepClone(),
        };
    }

    // A figure may carry a unit and is text then; its range is that of the member, in the unit of its name.
    private static OpenApiSchema Figure(IOpenApiSchema schema) =>
        new()
        {
            Type = JsonSchemaType.Number | JsonSchemaType.String,
            MaxLength = 40,
            Extensions = schema.Extensions is { } known
                ? new Dictionary<string, IOpenApiExtension>(known, StringComparer.Ordinal)
                {
                    ["x-minimum"] = Number(schema.Minimum),
                    ["x-maximum"] = Number(schema.Maximum),
                }
                : null,
        };

    private static JsonNodeExtension Number(string? figure) => new(JsonNode.Parse(figure!)!);

    private static OpenApiSchema Plain(IOpenApiSchema schema) =>
        new()
        {
            Type = schema.Type,
            Enum = schema.Enum,
            MaxLength = schema.MaxLength,
        };

    private static OpenApiParameter Words(IOpenApiSchema list, IOpenApiSchema words, string path) =>
        new()
        {
            Name = path,
            In = ParameterLocation.Query,
            Description =
                $"{list.Description} Several with commas between them, or each by itself.",
            Style = ParameterStyle.Form,
            Explode = false,
            Schema = new OpenApiSchema
            {
                Type = JsonSchemaType.Array,
                MaxItems = list.MaxItems,
                Items = Plain(words),
            },
            Example = new JsonArray(words.Examples![0].DeepClone()),
        };
}
