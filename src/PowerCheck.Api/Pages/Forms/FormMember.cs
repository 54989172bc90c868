using System.Reflection;
using System.Text.Json;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>A member of a rig as the form sees it: read from the request types, so that none is forgotten.</summary>
internal sealed class FormMember
{
    private FormMember(PropertyInfo property)
    {
        Name = JsonNamingPolicy.CamelCase.ConvertName(property.Name);
        Figure = property.GetCustomAttribute<FigureAttribute>();
        Words = property.GetCustomAttribute<WordAttribute>()?.Allowed;
        IsFlag = property.GetCustomAttribute<FlagAttribute>() is not null;
        IsMap = property.GetCustomAttribute<MapAttribute>() is not null;
        IsRequired = property.GetCustomAttribute<MustAttribute>() is not null;
        MostItems = property.GetCustomAttribute<ItemsAttribute>()?.Maximum;
        var type = MostItems is null
            ? property.PropertyType
            : property.PropertyType.GetGenericArguments()[0];
        IsWhole = type == typeof(int?);
        Inner = type.Assembly == typeof(CheckRequest).Assembly && !IsMap ? Of(type) : [];
    }

    /// <summary>The members of a whole rig.</summary>
    public static IReadOnlyList<FormMember> Rig { get; } = Of(typeof(CheckRequest));

    /// <summary>Its name in links.</summary>
    public string Name { get; }

    /// <summary>Unit and range; null when it is no figure.</summary>
    public FigureAttribute? Figure { get; }

    /// <summary>The words that it may say; null when it says none.</summary>
    public IReadOnlyList<string>? Words { get; }

    /// <summary>Whether it is a yes or no.</summary>
    public bool IsFlag { get; }

    /// <summary>Whether it holds values by path.</summary>
    public bool IsMap { get; }

    /// <summary>Whether it must be given.</summary>
    public bool IsRequired { get; }

    /// <summary>Whether it is a whole number.</summary>
    public bool IsWhole { get; }

    /// <summary>Most items that it lists; null when it is no list.</summary>
    public int? MostItems { get; }

    /// <summary>What it, or each of its items, is made up of.</summary>
    public IReadOnlyList<FormMember> Inner { get; }

    /// <summary>Whether it is a list that has a row an item; words in a list are one value.</summary>
    public bool IsRows => MostItems is not null && Words is null;

    private static FormMember[] Of(Type type) =>
        [
            .. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Select(property => new FormMember(property)),
        ];
}
