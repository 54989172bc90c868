using System.Net;
using System.Text.Json;
using PowerCheck.Api.Tests.Door;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Contract;

namespace PowerCheck.Api.Tests.Documents;

/// <summary>The document says everything that a caller needs, and says it as it is.</summary>
public class DocumentTests
{
    private static readonly string[] Closed = ["verdict", "outcome", "severity", "confidence"];

    [Fact]
    public async Task The_document_is_the_one_that_was_agreed()
    {
        var agreed = await File.ReadAllTextAsync(
            Path.Combine(Repository.Root, "specs", "openapi", "v1.json")
        );
        var served = (await Service.Get("/openapi/v1.json")).Text;

        // When this fails and the change is meant: tests/accept-contract, and have the change reviewed.
        Assert.Equal(ContractText.Ordered(agreed), ContractText.Ordered(served));
    }

    [Fact]
    public async Task Every_member_has_a_description_and_every_value_an_example()
    {
        foreach (var (path, member) in await Members())
        {
            Assert.True(Has(member, "description"), $"{path} has no description");
            if (Value(member) is { } value)
            {
                Assert.True(Has(value, "examples"), $"{path} has no example");
            }
        }
    }

    [Fact]
    public async Task Every_figure_has_a_unit_and_a_range_that_holds_its_example()
    {
        foreach (var (path, value) in await Values("number", "integer"))
        {
            Assert.True(Has(value, "x-unit"), $"{path} has no unit");
            Assert.True(Has(value, "minimum") && Has(value, "maximum"), $"{path} has no range");
            Assert.InRange(
                value.GetProperty("examples")[0].GetDouble(),
                value.GetProperty("minimum").GetDouble(),
                value.GetProperty("maximum").GetDouble()
            );
        }
    }

    [Fact]
    public async Task Every_text_has_a_length_or_a_list_of_words_that_holds_its_example()
    {
        foreach (var (path, value) in await Values("string"))
        {
            var example = value.GetProperty("examples")[0].GetString()!;
            if (value.TryGetProperty("enum", out var words))
            {
                Assert.Contains(example, words.EnumerateArray().Select(word => word.GetString()));
            }
            else
            {
                Assert.True(Has(value, "maxLength"), $"{path} has no length");
                Assert.InRange(example.Length, 1, value.GetProperty("maxLength").GetInt32());
            }
        }
    }

    [Fact]
    public async Task No_description_has_a_line_end_which_clients_would_swallow()
    {
        foreach (var (path, member) in await Members())
        {
            Assert.DoesNotContain('\n', member.GetProperty("description").GetString()!);
        }

        foreach (var schema in (await Schemas()).EnumerateObject())
        {
            Assert.DoesNotContain('\n', schema.Value.GetProperty("description").GetString()!);
        }
    }

    [Fact]
    public async Task A_link_has_a_parameter_for_every_value_of_a_rig()
    {
        var parameters = (await Service.Get("/openapi/v1.json"))
            .Json.GetProperty("paths")
            .GetProperty("/v1/checks")
            .GetProperty("get")
            .GetProperty("parameters")
            .EnumerateArray()
            .Select(parameter => parameter.GetProperty("name").GetString());

        // Words of a list have one parameter for all of them.
        var members = RequestMembers.All.Select(member =>
            member.Path is "controller.motorKinds.0" ? "controller.motorKinds" : member.Path
        );
        Assert.Equal(
            members
                .Concat(["findings", "spread", "remedies", "form"])
                .Order(StringComparer.Ordinal),
            parameters.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public async Task Every_list_has_a_length()
    {
        foreach (var (path, member) in await Members())
        {
            Assert.True(
                Type(member) != "array" || Has(member, "maxItems"),
                $"{path} has no length"
            );
        }
    }

    [Fact]
    public async Task Only_closed_lists_of_words_are_closed_in_answers()
    {
        foreach (var (path, value) in await Values("string"))
        {
            var (schema, member) = (path.Split('.')[0], path.Split('.')[1]);
            if (!schema.EndsWith("Request", StringComparison.Ordinal) && Has(value, "enum"))
            {
                Assert.Contains(member, Closed);
            }
        }
    }

    [Fact]
    public async Task Requests_are_closed_and_answers_are_open()
    {
        foreach (var schema in (await Schemas()).EnumerateObject())
        {
            var closed =
                schema.Value.TryGetProperty("additionalProperties", out var more)
                && more.ValueKind == JsonValueKind.False;
            Assert.Equal(schema.Name.EndsWith("Request", StringComparison.Ordinal), closed);
        }
    }

    [Theory]
    [InlineData("\"oneOf\"")]
    [InlineData("\"anyOf\"")]
    [InlineData("\"null\"")]
    [InlineData("\"pattern\"")]
    [InlineData("System.")]
    public async Task The_document_is_free_of_what_spoils_clients(string text) =>
        Assert.DoesNotContain(text, (await Service.Get("/openapi/v1.json")).Text);

    [Fact]
    public async Task Every_operation_has_a_name_a_tag_a_summary_and_its_statuses()
    {
        var document = (await Service.Get("/openapi/v1.json")).Json;
        var tags = document
            .GetProperty("tags")
            .EnumerateArray()
            .Select(tag => tag.GetProperty("name").GetString());
        foreach (var (path, operation) in Operations(document))
        {
            Assert.True(Has(operation, "operationId"), path);
            Assert.True(Has(operation, "summary"), path);
            Assert.Contains(operation.GetProperty("tags")[0].GetString(), tags);
            var responses = operation.GetProperty("responses");
            Assert.True(
                Has(responses, "200") && Has(responses, "406") && Has(responses, "500"),
                path
            );
        }
    }

    [Fact]
    public async Task Every_address_with_an_example_answers_as_the_document_says()
    {
        var document = (await Service.Get("/openapi/v1.json")).Json;
        foreach (var (path, operation) in Operations(document))
        {
            var answer = await Ask(path, operation);

            Assert.True(answer.Status == HttpStatusCode.OK, $"{path}: {answer.Text}");
            Assert.Equal("application/json", answer.MediaType);
        }
    }

    private static Task<Answer> Ask(string path, JsonElement operation)
    {
        var address = path;
        if (operation.TryGetProperty("parameters", out var parameters))
        {
            foreach (var parameter in parameters.EnumerateArray().Where(IsAsked))
            {
                var name = parameter.GetProperty("name").GetString();
                var example = parameter.GetProperty("example").GetString();
                address =
                    parameter.GetProperty("in").GetString() == "path"
                        ? address.Replace($"{{{name}}}", example)
                        : $"{address}{(address.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{name}={example}";
            }
        }

        return operation.TryGetProperty("requestBody", out var body)
            ? Service.Post(
                address,
                body.GetProperty("content")
                    .GetProperty("application/json")
                    .GetProperty("example")
                    .GetRawText()
            )
            : Service.Get(address);
    }

    // Not all members of a rig go together; the required ones and the options do.
    private static bool IsAsked(JsonElement parameter) =>
        parameter.GetProperty("example").ValueKind == JsonValueKind.String
        && (
            Has(parameter, "required")
            || !parameter.GetProperty("name").GetString()!.Contains('.', StringComparison.Ordinal)
        );

    private static IEnumerable<(string Path, JsonElement Operation)> Operations(
        JsonElement document
    ) =>
        document
            .GetProperty("paths")
            .EnumerateObject()
            .SelectMany(path =>
                path.Value.EnumerateObject().Select(operation => (path.Name, operation.Value))
            );

    private static async Task<JsonElement> Schemas() =>
        (await Service.Get("/openapi/v1.json"))
            .Json.GetProperty("components")
            .GetProperty("schemas");

    private static async Task<List<(string Path, JsonElement Member)>> Members()
    {
        var members = (await Schemas())
            .EnumerateObject()
            .SelectMany(schema =>
                schema
                    .Value.GetProperty("properties")
                    .EnumerateObject()
                    .Select(member => ($"{schema.Name}.{member.Name}", member.Value))
            )
            .ToList();
        Assert.True(members.Count > 200, "the document has lost its members");
        return members;
    }

    private static async Task<List<(string Path, JsonElement Value)>> Values(params string[] types)
    {
        var values = (await Members())
            .Select(member => (member.Path, Value: Value(member.Member)))
            .Where(member => member.Value is { } value && types.Contains(Type(value)))
            .Select(member => (member.Path, member.Value!.Value))
            .ToList();
        Assert.NotEmpty(values);
        return values;
    }

    /// <summary>The member itself, or the items of a list, where they are values and not objects.</summary>
    private static JsonElement? Value(JsonElement member) =>
        Has(member, "$ref") ? null
        : Type(member) == "array" ? Value(member.GetProperty("items"))
        : member;

    private static string? Type(JsonElement schema) =>
        schema.TryGetProperty("type", out var type) ? type.GetString() : null;

    private static bool Has(JsonElement element, string name) =>
        element.TryGetProperty(name, out _);
}
