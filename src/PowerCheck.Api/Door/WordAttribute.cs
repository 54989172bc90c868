using PowerCheck.Model.Assumptions;

namespace PowerCheck.Api.Door;

/// <summary>The words that a member may say.</summary>
[AttributeUsage(AttributeTargets.Property)]
public abstract class WordAttribute : Attribute
{
    /// <summary>The words, exactly as they must be written.</summary>
    public abstract IReadOnlyList<string> Allowed { get; }

    /// <summary>One of them.</summary>
    public abstract string Example { get; }
}

/// <summary>The words of an enumeration of the model.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
/// <param name="example">One of its words.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class WordAttribute<T>(string example) : WordAttribute
    where T : struct, Enum
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Allowed { get; } =
    [.. Enum.GetValues<T>().Select(value => Words.Of(value))];

    /// <inheritdoc/>
    public override string Example { get; } = example;
}
