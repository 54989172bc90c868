using System.Text.Json;

namespace PowerCheck.Mutation;

/// <summary>A small change of the model, and what the tests made of it.</summary>
/// <param name="File">File, relative to the model's folder.</param>
/// <param name="Line">Line.</param>
/// <param name="Before">What stands there, on one line.</param>
/// <param name="After">What it was changed into, on one line.</param>
/// <param name="Status">Killed, Timeout, Survived, NoCoverage, Ignored or CompileError.</param>
internal sealed record Change(string File, int Line, string Before, string After, string Status)
{
    /// <summary>Whether it says anything of the tests: it was made, and it compiled.</summary>
    public bool Counts => Status is not ("Ignored" or "CompileError");

    public bool Noticed => Status is "Killed" or "Timeout";

    public string Room => File.Split('/')[0];

    /// <summary>How the list of explained changes names it.</summary>
    public string Name => $"{File}: `{Before}` → `{After}`";

    /// <summary>Every change of a report.</summary>
    /// <param name="report">The report, JSON.</param>
    public static IReadOnlyList<Change> Of(string report)
    {
        using var document = JsonDocument.Parse(report);
        return
        [
            .. document
                .RootElement.GetProperty("files")
                .EnumerateObject()
                .SelectMany(file => Of(file.Name, file.Value)),
        ];
    }

    private static IEnumerable<Change> Of(string path, JsonElement file)
    {
        const string Folder = "src/PowerCheck.Model/";
        var unix = path.Replace('\\', '/');
        var at = unix.LastIndexOf(Folder, StringComparison.Ordinal);
        var name = at < 0 ? unix : unix[(at + Folder.Length)..];
        var lines = (file.GetProperty("source").GetString() ?? "").Split('\n');
        foreach (var mutant in file.GetProperty("mutants").EnumerateArray())
        {
            var place = mutant.GetProperty("location");
            var (start, end) = (place.GetProperty("start"), place.GetProperty("end"));
            yield return new(
                name,
                start.GetProperty("line").GetInt32(),
                OneLine(Cut(lines, start, end)),
                OneLine(mutant.GetProperty("replacement").GetString() ?? ""),
                mutant.GetProperty("status").GetString() ?? ""
            );
        }
    }

    private static string Cut(string[] lines, JsonElement start, JsonElement end)
    {
        var (from, to) = (LineAt(start), LineAt(end));
        var text = string.Join('\n', lines[from..(to + 1)]);
        var tail = lines[to].Length - ColumnAt(end);
        return text[ColumnAt(start)..Math.Max(ColumnAt(start), text.Length - tail)];
    }

    private static int LineAt(JsonElement place) => place.GetProperty("line").GetInt32() - 1;

    private static int ColumnAt(JsonElement place) => place.GetProperty("column").GetInt32() - 1;

    private static string OneLine(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
