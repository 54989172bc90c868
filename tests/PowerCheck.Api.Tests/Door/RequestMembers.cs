using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>Every figure, word, text and flag of a check, by its path; lists by their first item.</summary>
internal static class RequestMembers
{
    public static IReadOnlyList<RequestMember> All { get; } = [.. Of(typeof(CheckRequest), "")];

    public static RequestMember Of(string path) => All.Single(member => member.Path == path);

    /// <summary>The smallest body in which the member's object can stand; what it requires is not at its example.</summary>
    public static JsonObject Frame(string path)
    {
        var body = Rigs.Smallest();
        var owner = path.Contains('.') ? path[..(path.LastIndexOf('.') + 1)] : "";
        foreach (var other in All.Where(member => member.Required))
        {
            if (owner.Length > 0 && other.Path.StartsWith(owner, StringComparison.Ordinal))
            {
                body.With(other.Path, other.Other);
            }
        }

        return body;
    }

    private static IEnumerable<RequestMember> Of(Type type, string prefix) =>
        type.GetProperties()
            .Where(property => property.GetCustomAttribute<MapAttribute>() is null)
            .SelectMany(property => Of(property, prefix));

    private static IEnumerable<RequestMember> Of(PropertyInfo property, string prefix)
    {
        var path = prefix + JsonNamingPolicy.CamelCase.ConvertName(property.Name);
        var list = property.GetCustomAttribute<ItemsAttribute>() is not null;
        var type = list ? property.PropertyType.GetGenericArguments()[0] : property.PropertyType;
        if (list)
        {
            path += ".0";
        }

        return type.Namespace == typeof(CheckRequest).Namespace
            ? Of(type, path + ".")
            : [new(path, property)];
    }
}

/// <summary>A leaf of a request.</summary>
internal sealed record RequestMember(string Path, PropertyInfo Property)
{
    public FigureAttribute? Figure { get; } = Property.GetCustomAttribute<FigureAttribute>();

    public WordAttribute? Words { get; } = Property.GetCustomAttribute<WordAttribute>();

    public bool Whole { get; } = Property.PropertyType == typeof(int?);

    public bool Required { get; } = Property.GetCustomAttribute<MustAttribute>() is not null;

    /// <summary>Names are read and not used.</summary>
    public bool Unused { get; } = Property.GetCustomAttribute<TextAttribute>() is not null;

    public JsonNode Example =>
        Figure is { } figure ? figure.Example
        : Words is { } words ? words.Example
        : Property.GetCustomAttribute<TextAttribute>() is { } text ? text.Example
        : Property.GetCustomAttribute<FlagAttribute>()!.Example;

    /// <summary>Another value than the example.</summary>
    public JsonNode Other =>
        Figure is { } figure ? figure.Maximum : Words!.Allowed.First(word => word != Words.Example);

    /// <summary>What the model should get for the example.</summary>
    public string Expected =>
        Path.EndsWith(".diametral", StringComparison.Ordinal)
            ? (0.0254 / Figure!.Example).ToString("R", CultureInfo.InvariantCulture)
        : Figure is { } figure
            ? figure.Unit.ToSi(figure.Example).ToString("R", CultureInfo.InvariantCulture)
        : Example.ToString();
}
