namespace PowerCheck.Model.Tests.Specs;

/// <summary>The model document, as the repository has it.</summary>
internal static class ModelDocument
{
    public static string Text { get; } =
        File.ReadAllText(Path.Combine(Root(AppContext.BaseDirectory), "specs", "model.md"));

    /// <summary>The cells of each row of the table whose heading begins so.</summary>
    /// <param name="heading">How the table's first line begins.</param>
    public static IReadOnlyList<string[]> Rows(string heading) =>
        [
            .. Text[Text.IndexOf(heading, StringComparison.Ordinal)..]
                .Split('\n')
                .Skip(2)
                .TakeWhile(line => line.StartsWith('|'))
                .Select(line =>
                    line.Trim('|')
                        .Split('|')
                        .Select(cell => cell.Trim().Replace("`", "", StringComparison.Ordinal))
                        .ToArray()
                ),
        ];

    private static string Root(string folder) =>
        File.Exists(Path.Combine(folder, "PowerCheck.sln"))
            ? folder
            : Root(
                Path.GetDirectoryName(folder)
                    ?? throw new InvalidOperationException(
                        "The tests run outside of the repository."
                    )
            );
}
