using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Documents;

/// <summary>Writes units, ranges, words and examples into the schemas, from the attributes that the door reads too.</summary>
internal sealed class SchemaFigures : IOpenApiDocumentTransformer
{
    private const string Requests = "Request";

    private static readonly Dictionary<string, Type> Types = typeof(SchemaFigures)
        .Assembly.GetExportedTypes()
        .Where(type => type is { IsClass: true, IsGenericType: false })
        .ToDictionary(type => type.Name, StringComparer.Ordinal);

    public Task TransformAsync(
        OpenApiDocument document,
        OpenApiDocumentTransformerContext context,
        CancellationToken cancellationToken
    )
    {
        foreach (var (name, schema) in document.Components?.Schemas?.AsEnumerable() ?? [])
        {
            if (schema is OpenApiSchema written && Types.TryGetValue(name, out var type))
            {
                Describe(written, type);
            }
        }

        return Task.CompletedTask;
    }

    private static void Describe(OpenApiSchema schema, Type type)
    {
        schema.Description = MemberSchema.OneLine(schema.Description);
        foreach (var property in type.GetProperties())
        {
            var member = JsonNamingPolicy.CamelCase.ConvertName(property.Name);
            if (schema.Properties?.TryGetValue(member, out var value) is true)
            {
                schema.Properties[member] = MemberSchema.Of(value, property);
            }
        }

        if (PlainAttribute.Of(type)?.GetCustomAttribute<FigureAttribute>() is { } plain)
        {
            schema.Type |= JsonSchemaType.Number;
            schema.Minimum = plain.Minimum.ToString("R", CultureInfo.InvariantCulture);
            schema.Maximum = plain.Maximum.ToString("R", CultureInfo.InvariantCulture);
        }

        if (type.Name.EndsWith(Requests, StringComparison.Ordinal))
        {
            schema.AdditionalPropertiesAllowed = false;
            schema.Required = Marked<MustAttribute>(type);
        }
        else if (Marked<RequiredMemberAttribute>(type) is { Count: > 0 } always)
        {
            schema.Required = always;
        }
    }

    private static HashSet<string> Marked<T>(Type type)
        where T : Attribute =>
        type.GetProperties()
            .Where(property => property.GetCustomAttribute<T>() is not null)
            .Select(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name))
            .ToHashSet(StringComparer.Ordinal);
}
