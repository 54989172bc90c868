using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Documents;

/// <summary>The schema of one member, completed from its attributes.</summary>
internal static class MemberSchema
{
    public static IOpenApiSchema Of(IOpenApiSchema written, PropertyInfo property)
    {
        var schema = WithoutNull(written);
        if (schema is not OpenApiSchema member)
        {
            return schema;
        }

        member.Type &= ~JsonSchemaType.Null;
        member.Description = OneLine(member.Description);
        if (property.GetCustomAttribute<ItemsAttribute>() is { } items)
        {
            member.MaxItems = items.Maximum;
            if (member.Items is OpenApiSchema item)
            {
                Complete(item, property);
            }
        }
        else
        {
            Complete(member, property);
        }

        return member;
    }

    /// <summary>The framework writes a member that may be absent as "null or this"; here absent is simply absent.</summary>
    private static IOpenApiSchema WithoutNull(IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema { OneOf: [_, _] choices } choice)
        {
            return schema;
        }

        var real = choices.OfType<OpenApiSchemaReference>().First();
        return new OpenApiSchemaReference(real.Reference.Id!, null)
        {
            Description = OneLine(choice.Description ?? real.Reference.Description),
        };
    }

    /// <summary>A description without the line ends of its source, which clients put into theirs.</summary>
    public static string? OneLine(string? description) => description?.ReplaceLineEndings(" ");

    private static void Complete(OpenApiSchema member, PropertyInfo property)
    {
        if (property.GetCustomAttribute<FigureAttribute>() is { } figure)
        {
            Figure(member, figure);
        }
        else if (property.GetCustomAttribute<WordAttribute>() is { } words)
        {
            member.Type = JsonSchemaType.String;
            member.Enum = [.. words.Allowed.Select(word => JsonValue.Create(word))];
            member.Examples = [JsonValue.Create(words.Example)];
        }
        else if (property.GetCustomAttribute<TextAttribute>() is { } text)
        {
            member.MaxLength = text.Maximum;
            member.Examples = [JsonValue.Create(text.Example)];
        }
        else if (property.GetCustomAttribute<MapAttribute>() is { } map)
        {
            member.MaxProperties = map.Maximum;
            member.Examples = [new JsonObject { [map.Example] = 0.1 }];
        }
        else if (property.GetCustomAttribute<FlagAttribute>() is { } flag)
        {
            member.Examples = [JsonValue.Create(flag.Example)];
        }
    }

    private static void Figure(OpenApiSchema member, FigureAttribute figure)
    {
        member.Minimum = figure.Minimum.ToString("R", CultureInfo.InvariantCulture);
        member.Maximum = figure.Maximum.ToString("R", CultureInfo.InvariantCulture);
        member.Examples = [JsonValue.Create(figure.Example)];
        (member.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal))[
            "x-unit"
        ] = new JsonNodeExtension(
            JsonValue.Create(figure.Unit.Symbol.Length == 0 ? "1" : figure.Unit.Symbol)
        );
    }
}
