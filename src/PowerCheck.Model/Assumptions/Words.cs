using System.Collections.Concurrent;

namespace PowerCheck.Model.Assumptions;

/// <summary>The words of an enumeration as callers write them: the first letter small.</summary>
public static class Words
{
    private static readonly ConcurrentDictionary<object, string> Known = new();

    /// <summary>The word for a value, such as "dragBrake".</summary>
    /// <typeparam name="T">The list of words, or bool.</typeparam>
    /// <param name="value">The value.</param>
    public static string Of<T>(T value)
        where T : struct => Known.GetOrAdd(value, Write);

    private static string Write(object value)
    {
        var name = value.ToString() ?? "";
        // A class of insulation is a capital letter in the trade and stays one.
        return name.Length == 1 ? name : char.ToLowerInvariant(name[0]) + name[1..];
    }
}
