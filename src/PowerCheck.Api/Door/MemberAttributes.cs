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
/// <param name="plain">Which figure of the objects within a bare number stands for.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MapAttribute(int maximum, string plain) : Attribute
{
    /// <summary>Most members allowed.</summary>
    public int Maximum { get; } = maximum;

    /// <summary>Which figure of the objects within a bare number stands for.</summary>
    public string Plain { get; } = plain;
}
