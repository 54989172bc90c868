using System.Collections.Concurrent;
using System.Reflection;

namespace PowerCheck.Api.Door;

/// <summary>The members of every request type, built once from the types and their attributes.</summary>
internal static class MemberTable
{
    private static readonly ConcurrentDictionary<Type, Shape> Shapes = new();

    /// <summary>The members of a request type.</summary>
    public static Shape Of(Type type) => Shapes.GetOrAdd(type, Build);

    private static Shape Build(Type type) =>
        new(
            () => Activator.CreateInstance(type)!,
            [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Select(Member)]
        );

    private static Member Member(PropertyInfo property) =>
        property.GetCustomAttribute<ItemsAttribute>() is { } items
            ? ListMember(property, items.Maximum)
            : SingleMember(property);

    private static Member SingleMember(PropertyInfo property)
    {
        if (property.GetCustomAttribute<FigureAttribute>() is { } figure)
        {
            return property.PropertyType == typeof(int?)
                ? new WholeMember(property, figure)
                : new FigureMember(property, figure);
        }

        if (property.GetCustomAttribute<WordAttribute>() is { } words)
        {
            return new WordMember(property, words);
        }

        if (property.GetCustomAttribute<TextAttribute>() is { } text)
        {
            return new TextMember(property, text);
        }

        if (property.GetCustomAttribute<MapAttribute>() is { } map)
        {
            var item = property.PropertyType.GetGenericArguments()[1];
            return (Member)
                Activator.CreateInstance(typeof(MapMember<>).MakeGenericType(item), property, map)!;
        }

        return property.GetCustomAttribute<FlagAttribute>() is not null
            ? new FlagMember(property)
            : new PartMember(property);
    }

    private static Member ListMember(PropertyInfo property, int most)
    {
        if (property.GetCustomAttribute<FigureAttribute>() is { } figure)
        {
            return new FiguresMember(property, most, figure);
        }

        if (property.GetCustomAttribute<WordAttribute>() is { } words)
        {
            return new WordsMember(property, most, words);
        }

        var item = property.PropertyType.GetGenericArguments()[0];
        return (Member)
            Activator.CreateInstance(typeof(PartsMember<>).MakeGenericType(item), property, most)!;
    }
}
