using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using PowerCheck.Api.Faces;

namespace PowerCheck.Api.Documents;

/// <summary>Says of the checks in which forms they answer, which the framework cannot declare side by side.</summary>
internal static class CheckTexts
{
    private const string Lines = """
        PowerCheck 1.7.0 of rig-7: suitable, confidence high. All judged limits hold.
        Climb: motor 17 A, battery 2 A at 0.3 m/s.
        Battery: Stop using a pack that smells, leaks, makes an odd noise, changes color or shape, or gets too hot.
        http://localhost:5080/?vehicle.massKg=2.5

        """;

    /// <summary>Writes the forms of the answer.</summary>
    public static void Answer(OpenApiOperation operation)
    {
        if (operation.Responses?["200"] is not OpenApiResponse { Content: { } forms })
        {
            return;
        }

        forms[CheckForms.Text] = Text(Lines);
        forms[CheckForms.Svg] = Text("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"/>");
        forms[CheckForms.Html] = Text("<!DOCTYPE html><title>Suitable</title>");
        forms[CheckForms.Png] = new()
        {
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = "binary" },
        };
    }

    /// <summary>Writes what a caller who has an answer already gets.</summary>
    public static void NotModified(OpenApiOperation operation) =>
        operation.Responses!["304"] = new OpenApiResponse
        {
            Description = "The answer that the caller has, by its If-None-Match, is still right.",
        };

    private static OpenApiMediaType Text(string example) =>
        new()
        {
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            Example = JsonValue.Create(example),
        };
}
