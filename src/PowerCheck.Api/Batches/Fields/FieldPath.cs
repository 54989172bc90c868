using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using PowerCheck.Api.Checks.Answers;

namespace PowerCheck.Api.Batches.Fields;

/// <summary>A path into the answer of a check, and how to get there.</summary>
internal sealed class FieldPath
{
    private readonly Func<object, object?>[] steps;

    private FieldPath(string text, Type type, Func<object, object?>[] steps)
    {
        Text = text;
        Type = type;
        this.steps = steps;
    }

    /// <summary>The path as the caller writes it.</summary>
    public string Text { get; }

    /// <summary>The type of what it leads to.</summary>
    public Type Type { get; }

    /// <summary>Whether it leads to one value, not to an object or a list.</summary>
    public bool IsValue => IsSingle(Type);

    /// <summary>Where a path leads; null when it leads nowhere.</summary>
    public static FieldPath? Of(string text)
    {
        var type = typeof(CheckReport);
        var way = new List<Func<object, object?>>();
        foreach (var name in text.Split('.'))
        {
            if (Step(type, name) is not { } step)
            {
                return null;
            }

            way.Add(step.Get);
            type = step.Type;
        }

        return new(text, type, [.. way]);
    }

    /// <summary>What an answer says there; null when it says nothing.</summary>
    public object? In(CheckReport report)
    {
        object? at = report;
        foreach (var step in steps)
        {
            if (at is null)
            {
                return null;
            }

            at = step(at);
        }

        return at;
    }

    /// <summary>Every path of an answer that leads to something, positions as 0.</summary>
    public static IEnumerable<string> All() => Within(typeof(CheckReport), "");

    private static (Func<object, object?> Get, Type Type)? Step(Type type, string name)
    {
        if (Item(type) is { } item)
        {
            return int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var at)
                ? (list => ((IList)list) is var items && at < items.Count ? items[at] : null, item)
                : null;
        }

        return Members(type).FirstOrDefault(member => Named(member, name)) is { } found
            ? (found.GetValue, Nullable.GetUnderlyingType(found.PropertyType) ?? found.PropertyType)
            : null;
    }

    private static IEnumerable<string> Within(Type type, string prefix)
    {
        foreach (var member in Members(type))
        {
            var path = prefix + JsonNamingPolicy.CamelCase.ConvertName(member.Name);
            yield return path;
            var inner = Item(member.PropertyType) is { } item ? item : member.PropertyType;
            var step = inner == member.PropertyType ? "." : ".0.";
            foreach (var further in Within(inner, path + step))
            {
                yield return further;
            }
        }
    }

    private static IEnumerable<PropertyInfo> Members(Type type) =>
        IsSingle(type) || Item(type) is not null
            ? []
            : type.GetProperties(BindingFlags.Public | BindingFlags.Instance);

    private static bool Named(PropertyInfo member, string name) =>
        string.Equals(
            JsonNamingPolicy.CamelCase.ConvertName(member.Name),
            name,
            StringComparison.Ordinal
        );

    private static Type? Item(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>)
            ? type.GetGenericArguments()[0]
            : null;

    private static bool IsSingle(Type type) =>
        type == typeof(string) || (Nullable.GetUnderlyingType(type) ?? type).IsPrimitive;
}
