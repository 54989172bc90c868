using PowerCheck.Api.Display;
using PowerCheck.Api.Links;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>Makes fields from members, with what is typed, assumed and wrong.</summary>
internal sealed class FieldMaker(
    FormValues values,
    Assumed assumed,
    FieldMistakes mistakes,
    DisplayUnits units
)
{
    /// <summary>The list of which can be said that there is nothing in it.</summary>
    public const string Accessories = "accessories";

    private static readonly string[] Flags = ["true", "false"];
    private readonly HashSet<string> made = new(StringComparer.Ordinal);

    /// <summary>Values that no field was made for.</summary>
    public IEnumerable<KeyValuePair<string, string>> Left =>
        values
            .All.Where(pair => !made.Contains(pair.Key))
            .Select(pair => KeyValuePair.Create(NameOf(pair.Key, pair.Value), pair.Value.Text));

    /// <summary>The field of a member.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="member">The member.</param>
    public FieldView Make(string path, FormMember member)
    {
        made.Add(path);
        var other = member.Figure is { } figure ? Instead(figure.Unit, path) : null;
        var (text, beside) = Text(path, member, other);
        return new()
        {
            Path = path,
            Name = other is null ? path : $"{path}[{other.Name}]",
            Label = Labels.Of(path),
            Value = text,
            Beside = beside is null ? null : $"About {beside}; a bare number is {other!.Words}.",
            Unit = beside is not null ? "" : other?.Symbol ?? member.Figure?.Unit.Symbol ?? "",
            Words = WordsOf(member, text),
            Keys = Keys(member),
            Assumed = assumed.Of(path),
            IsRequired = member.IsRequired && !path.Contains(".0.", StringComparison.Ordinal),
            Mistakes = mistakes.Take(path, withItems: member.Words is not null),
        };
    }

    /// <summary>The field of a tolerance.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="of">The member that it speaks of.</param>
    /// <param name="way">In which way; empty for a share.</param>
    public FieldView MakeTolerance(string path, string of, string way)
    {
        made.Add(path);
        return new()
        {
            Path = path,
            Name = path,
            Label = new(
                $"{Labels.Whole(of)}{(way.Length == 0 ? "" : $", {way}")}",
                way.Length == 0 ? null : $"As {path} in links."
            ),
            Value = values.Of(path)?.Text ?? "",
            Unit = way.Length == 0 ? "of it" : "",
            Keys = "decimal",
            Mistakes = mistakes.Take(path),
        };
    }

    /// <summary>The field that says that there is nothing in a list.</summary>
    /// <param name="path">The list.</param>
    public FieldView MakeNothing(string path)
    {
        made.Add(path);
        return new()
        {
            Path = path,
            Name = path,
            Label = new("Nothing else draws current"),
            Value = values.Of(path)?.Text ?? "",
            IsCheck = true,
            Mistakes = mistakes.Take(path),
        };
    }

    private OtherUnit? Instead(Unit own, string path) =>
        // Gears are cut in millimetres of module everywhere.
        path.EndsWith("moduleMm", StringComparison.Ordinal)
            ? null
            : units.Instead(own);

    private (string Text, string? Beside) Text(string path, FormMember member, OtherUnit? other)
    {
        if (values.Of(path) is not { } typed)
        {
            return ("", null);
        }

        if (typed.IsRead)
        {
            return other is null
                ? (typed.Text, null)
                : units.Field(typed.Text, member.Figure!.Unit);
        }

        // What was typed under another unit keeps it.
        var symbol = typed.Symbol ?? (other is null ? null : member.Figure?.Unit.Symbol);
        var isOwn = string.Equals(symbol, other?.Name, StringComparison.Ordinal);
        return (
            symbol is null || isOwn || !IsBare(typed.Text) ? typed.Text : $"{typed.Text} {symbol}",
            null
        );
    }

    private static bool IsBare(string text) => char.IsAsciiDigit(text.TrimEnd()[^1]);

    private static IReadOnlyList<string>? WordsOf(FormMember member, string text)
    {
        var words = member switch
        {
            { IsFlag: true } => Flags,
            { Words: { } allowed, MostItems: not null } => [.. allowed, string.Join(',', allowed)],
            { Words: { } allowed } => allowed,
            _ => null,
        };
        return words is null || text.Length == 0 || words.Contains(text, StringComparer.Ordinal)
            ? words
            : [.. words, text];
    }

    // Decimal keys of some phones have no minus.
    private static string Keys(FormMember member) =>
        member.Figure is not { } figure ? "text"
        : figure.Minimum < 0 ? "text"
        : member.IsWhole ? "numeric"
        : "decimal";

    private static string NameOf(string path, Typed typed) =>
        typed.Symbol is null || typed.Text is LinkReader.Empty ? path : $"{path}[{typed.Symbol}]";
}
