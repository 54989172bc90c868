using System.Reflection;

namespace PowerCheck.Api.Door;

/// <summary>A member that must be given.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MustAttribute : Attribute;

/// <summary>A list, and how long it may be.</summary>
/// <param name="maximum">Most items allowed.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ItemsAttribute(int maximum) : Attribute
{
    /// <summary>Most items allowed.</summary>
    public int Maximum { get; } = maximum;
}

/// <summary>Free text, and how long it may be.</summary>
/// <param name="maximum">Most characters allowed.</param>
/// <param name="example">An example.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class TextAttribute(int maximum, string example) : Attribute
{
    /// <summary>Most characters allowed.</summary>
    public int Maximum { get; } = maximum;

    /// <summary>An example.</summary>
    public string Example { get; } = example;
}

/// <summary>A yes or no.</summary>
/// <param name="example">An example.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FlagAttribute(bool example) : Attribute
{
    /// <summary>An example.</summary>
    public bool Example { get; } = example;
}

/// <summary>An object whose members are paths of the request, and how many it may have.</summary>
/// <param name="maximum">Most members allowed.</param>
/// <param name="example">An example of a path.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MapAttribute(int maximum, string example) : Attribute
{
    /// <summary>Most members allowed.</summary>
    public int Maximum { get; } = maximum;

    /// <summary>An example of a path.</summary>
    public string Example { get; } = example;
}

/// <summary>An object for which a bare number may stand.</summary>
/// <param name="figure">The figure that the number is.</param>
[AttributeUsage(AttributeTargets.Class)]
public sealed class PlainAttribute(string figure) : Attribute
{
    /// <summary>The figure that the number is.</summary>
    public string Figure { get; } = figure;

    /// <summary>The figure of a type for which a bare number may stand; null when none may.</summary>
    /// <param name="type">The type.</param>
    public static PropertyInfo? Of(Type type) =>
        type.GetCustomAttribute<PlainAttribute>() is { } plain
            ? type.GetProperty(plain.Figure)
            : null;
}
