using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>What is wrong, by the field at which it is told.</summary>
internal sealed class FieldMistakes
{
    private readonly IReadOnlyList<ProblemError> errors;
    private readonly Dictionary<string, string> fields = new(StringComparer.Ordinal);
    private readonly HashSet<ProblemError> told = [];

    /// <summary>Sorts mistakes by field.</summary>
    /// <param name="errors">The mistakes.</param>
    public FieldMistakes(IReadOnlyList<ProblemError> errors) => this.errors = errors;

    /// <summary>Nothing is wrong.</summary>
    public static FieldMistakes None => new([]);

    /// <summary>The mistakes, each with the path of the field at which it is told; null where there is none.</summary>
    public IEnumerable<(ProblemError Error, string? Path)> All =>
        errors.Select(error => (error, fields.GetValueOrDefault(error.Path)));

    /// <summary>
    /// The mistakes of the field in hand, fields taken in their order: those of its own path, and those of an object or a list
    /// that no field before it stands in, and those of an item of its own list.
    /// </summary>
    /// <param name="path">The path of the field.</param>
    /// <param name="withItems">Whether it says all items of a list.</param>
    public IReadOnlyList<string> Take(string path, bool withItems = false)
    {
        var mine = errors
            .Where(error => !told.Contains(error) && Covers(error.Path, path, withItems))
            .ToArray();
        foreach (var error in mine)
        {
            told.Add(error);
            fields[error.Path] = path;
        }

        return [.. mine.Select(error => error.Message)];
    }

    private static bool Covers(string error, string path, bool withItems) =>
        error.Length > 0 && (IsWithin(path, error) || (withItems && IsWithin(error, path)));

    private static bool IsWithin(string inner, string outer) =>
        inner.StartsWith(outer, StringComparison.Ordinal)
        && (inner.Length == outer.Length || inner[outer.Length] == '.');
}
