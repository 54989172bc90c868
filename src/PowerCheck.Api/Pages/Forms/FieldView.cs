namespace PowerCheck.Api.Pages.Forms;

/// <summary>One field of the form.</summary>
public sealed record FieldView
{
    /// <summary>The member.</summary>
    public required string Path { get; init; }

    /// <summary>Name of the parameter that it sends: the path, with the unit where that is another.</summary>
    public required string Name { get; init; }

    /// <summary>Its label.</summary>
    public required Label Label { get; init; }

    /// <summary>What is typed or chosen; empty where nothing is.</summary>
    public required string Value { get; init; }

    /// <summary>The unit printed behind it; empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What helps to read a figure that keeps its own unit among others; null where none does.</summary>
    public string? Beside { get; init; }

    /// <summary>What may be chosen; null where it is typed.</summary>
    public IReadOnlyList<string>? Words { get; init; }

    /// <summary>Whether it is ticked or not.</summary>
    public bool IsCheck { get; init; }

    /// <summary>Which keys a phone offers.</summary>
    public string Keys { get; init; } = "text";

    /// <summary>What is assumed while it is empty; null where nothing is.</summary>
    public AssumedView? Assumed { get; init; }

    /// <summary>Whether it must be filled in.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What is wrong with it.</summary>
    public IReadOnlyList<string> Mistakes { get; init; } = [];

    /// <summary>Its anchor in the page.</summary>
    public string Id => IdOf(Path);

    /// <summary>Whether it says something.</summary>
    public bool IsGiven => Value.Length > 0;

    /// <summary>The anchor of the field of a path.</summary>
    public static string IdOf(string path) =>
        $"f-{string.Concat(path.Select(letter => char.IsAsciiLetterOrDigit(letter) ? $"{letter}" : letter is '.' ? "-" : $"_{(int)letter:x}"))}";
}

/// <summary>What is assumed in place of a figure or word.</summary>
/// <param name="Figure">The figure with its unit, or the word.</param>
/// <param name="Spread">How wide it may lie; empty where it is counted and not measured.</param>
/// <param name="Basis">Why.</param>
public sealed record AssumedView(string Figure, string Spread, string Basis);

/// <summary>Fields that belong together within a group.</summary>
/// <param name="Path">The object or list that they make up; empty for members of the group itself.</param>
/// <param name="Title">Its title; empty for none.</param>
/// <param name="Help">What helps to fill it in; null for nothing.</param>
/// <param name="Fields">The fields of an object.</param>
/// <param name="Rows">The items of a list, one blank row last.</param>
public sealed record SectionView(
    string Path,
    string Title,
    string? Help,
    IReadOnlyList<FieldView> Fields,
    IReadOnlyList<IReadOnlyList<FieldView>> Rows
)
{
    /// <summary>All fields.</summary>
    public IEnumerable<FieldView> All => Fields.Concat(Rows.SelectMany(row => row));
}

/// <summary>A group of fields as a builder thinks of them.</summary>
/// <param name="Plan">What it is called.</param>
/// <param name="Open">Fields that everybody sees.</param>
/// <param name="More">Fields a tap away.</param>
public sealed record GroupView(
    GroupPlan Plan,
    IReadOnlyList<FieldView> Open,
    IReadOnlyList<SectionView> More
)
{
    /// <summary>All fields.</summary>
    public IEnumerable<FieldView> All => Open.Concat(More.SelectMany(section => section.All));

    /// <summary>How many of those a tap away say something.</summary>
    public int Given => More.Sum(section => section.All.Count(one => one.IsGiven));

    /// <summary>Whether one of those a tap away is wrong.</summary>
    public bool HasMistakes => More.Any(section => section.All.Any(one => one.Mistakes.Count > 0));
}

/// <summary>The form.</summary>
/// <param name="Groups">Its groups.</param>
/// <param name="Hidden">Parameters without a field of their own, name and value.</param>
public sealed record FormView(
    IReadOnlyList<GroupView> Groups,
    IReadOnlyList<KeyValuePair<string, string>> Hidden
)
{
    /// <summary>All fields.</summary>
    public IEnumerable<FieldView> Fields => Groups.SelectMany(group => group.All);
}
