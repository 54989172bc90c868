using System.Reflection;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>A member of a request object: how it is called, and how its value is read.</summary>
internal abstract class Member(PropertyInfo property)
{
    /// <summary>Its name in JSON.</summary>
    public string Name { get; } = JsonNamingPolicy.CamelCase.ConvertName(property.Name);

    /// <summary>Whether it must be given.</summary>
    public bool Required { get; } = property.GetCustomAttribute<MustAttribute>() is not null;

    /// <summary>What it should be, in words that finish "must be …".</summary>
    public abstract string Wanted { get; }

    /// <summary>The objects within it; null when it holds values.</summary>
    public virtual Shape? Inner => null;

    /// <summary>What stands between its name and those of the members within: a list position, or nothing.</summary>
    public virtual string Step => "";

    /// <summary>How its value may come as text; null when it only holds other members or items.</summary>
    public virtual TextForm? Text => null;

    /// <summary>How one of its items, or of the values that paths within it name, may come as text; null when there are none.</summary>
    public virtual TextForm? ItemText => null;

    /// <summary>The objects that paths within it name; null when its members have fixed names, or there are none.</summary>
    public virtual Shape? Entries => null;

    /// <summary>Most items that it lists; null when it is no list.</summary>
    public virtual int? MostItems => null;

    /// <summary>Reads the value in hand into its owner, or notes what is wrong with it.</summary>
    public abstract void Read(ref Walk walk, object owner);
}
