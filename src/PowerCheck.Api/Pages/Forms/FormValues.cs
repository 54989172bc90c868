using PowerCheck.Api.Checks;
using PowerCheck.Api.Links;
using PowerCheck.Api.Paths;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>What is typed into the form, by path.</summary>
internal sealed class FormValues
{
    private readonly Dictionary<string, Typed> typed = new(StringComparer.Ordinal);

    /// <summary>Nothing.</summary>
    public static FormValues None => new();

    /// <summary>Every path that says something.</summary>
    public IEnumerable<string> Paths => typed.Keys;

    /// <summary>What is typed, by path.</summary>
    public IEnumerable<KeyValuePair<string, Typed>> All => typed;

    /// <summary>The values of a rig that was read.</summary>
    public static FormValues Of(CheckCall call)
    {
        var values = new FormValues();
        foreach (var (path, text) in RigLink.Members(call.Request))
        {
            values.typed[path] = new(text, Symbol: null, IsRead: true);
        }

        return values;
    }

    /// <summary>The values of a query as they were typed; those that name nothing of a rig are left out.</summary>
    /// <param name="query">The query.</param>
    public static FormValues Of(IQueryCollection query)
    {
        var values = new FormValues();
        foreach (var (name, given) in query)
        {
            var (path, symbol) = RigPath.Split(name);
            var texts = given.Where(one => !string.IsNullOrWhiteSpace(one)).ToArray();
            if (
                texts is [{ } text, ..]
                && RigPath.Walk(new Branch { Path = "" }, path) is { } named
                && (named.Form is not null || text is LinkReader.Empty)
            )
            {
                // Words of a list may come one by one.
                text = named.IsList ? string.Join(',', texts) : text;
                values.typed.TryAdd(path, new(text, symbol, IsRead: false));
            }
        }

        return values;
    }

    /// <summary>What is typed for a path; null where nothing is.</summary>
    public Typed? Of(string path) => typed.GetValueOrDefault(path);

    /// <summary>How many items of a list say something, up to the last that does.</summary>
    /// <param name="path">The list.</param>
    public int Items(string path)
    {
        var start = $"{path}.";
        return typed
            .Keys.Where(key => key.StartsWith(start, StringComparison.Ordinal))
            .Select(key => key[start.Length..].Split('.')[0])
            .Select(step => int.TryParse(step, out var at) ? at + 1 : 0)
            .DefaultIfEmpty(0)
            .Max();
    }
}

/// <summary>A text that was typed.</summary>
/// <param name="Text">The text.</param>
/// <param name="Symbol">The unit behind its name; null where there is none.</param>
/// <param name="IsRead">Whether it was read, and is in the unit of its member.</param>
internal sealed record Typed(string Text, string? Symbol, bool IsRead);
