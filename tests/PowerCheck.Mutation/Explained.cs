namespace PowerCheck.Mutation;

/// <summary>Reads which changes are explained: a heading a file, below it a line a change with its reason.</summary>
internal static class Explained
{
    /// <summary>The names of the changes that are explained with a reason: a line excuses one change.</summary>
    /// <param name="document">The document's text.</param>
    public static IReadOnlyList<string> Of(string document)
    {
        var names = new List<string>();
        var file = "";
        foreach (var line in document.Split('\n'))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                file = line[3..].Trim();
            }

            // - `before` → `after`: reason
            var end = line.LastIndexOf("`: ", StringComparison.Ordinal);
            if (
                line.StartsWith("- `", StringComparison.Ordinal)
                && end > 0
                && line[(end + 3)..].Trim().Length > 0
            )
            {
                names.Add($"{file}: {line[2..(end + 1)]}");
            }
        }

        return names;
    }
}
