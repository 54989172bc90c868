using System.Collections.Frozen;
using PowerCheck.Model.Assumptions;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns a word, already found to be an allowed one, into the model's value.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal static class Word<T>
    where T : struct, Enum
{
    private static readonly FrozenDictionary<string, T> Values = Enum.GetValues<T>()
        .ToFrozenDictionary(value => Words.Of(value), StringComparer.Ordinal);

    /// <summary>The value of a word; null for no word.</summary>
    public static T? Of(string? word) => word is null ? null : Values[word];
}
