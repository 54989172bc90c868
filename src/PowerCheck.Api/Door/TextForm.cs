using System.Globalization;
using System.Text.Json;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Door;

/// <summary>
/// How a value that comes as text, as in a table, is written as the JSON that the door reads. What it should not be stays text,
/// which the door then refuses.
/// </summary>
/// <param name="Write">Writes it.</param>
/// <param name="IsFigure">Whether it is a figure.</param>
/// <param name="Unit">The unit of its figure; null when it has none that could be another.</param>
/// <param name="Wanted">What a figure should be, in words that finish "must be …"; empty for other forms.</param>
internal sealed record TextForm(
    Action<Utf8JsonWriter, string> Write,
    bool IsFigure = false,
    Unit? Unit = null,
    string Wanted = ""
)
{
    /// <summary>A word or free text.</summary>
    public static readonly TextForm Plain = new((json, text) => json.WriteStringValue(text));

    /// <summary>True or false; spreadsheets write both in capitals.</summary>
    public static readonly TextForm Flag = new(WriteFlag);

    /// <summary>Words with commas between them.</summary>
    public static readonly TextForm Words = new(WriteWords);

    /// <summary>A list that is there with nothing in it.</summary>
    public static readonly TextForm NoItems = new(
        (json, _) =>
        {
            json.WriteStartArray();
            json.WriteEndArray();
        }
    );

    /// <summary>A figure.</summary>
    public static TextForm Figure(FigureAttribute figure) =>
        new(WriteFigure, IsFigure: true, figure.Unit, $"a number {figure.Range}");

    /// <summary>The figure that a text says, with a decimal point.</summary>
    public static bool TryParse(string text, out double figure) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out figure)
        && double.IsFinite(figure);

    /// <summary>A larger figure is out of range in any unit, and might not be one in another.</summary>
    private const double MostConverted = 1e15;

    /// <summary>Writes a figure that may be in another unit.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="text">The figure, with a decimal point.</param>
    /// <param name="convert">Turns it into the unit of the member; null where it is in it.</param>
    public void WriteFigure(Utf8JsonWriter json, string text, Func<double, double>? convert)
    {
        if (
            convert is not null
            && TryParse(text, out var figure)
            && Math.Abs(figure) <= MostConverted
        )
        {
            json.WriteNumberValue(convert(figure));
        }
        else
        {
            Write(json, text);
        }
    }

    private static void WriteFigure(Utf8JsonWriter json, string text)
    {
        if (TryParse(text, out var figure))
        {
            json.WriteNumberValue(figure);
        }
        else
        {
            json.WriteStringValue(text);
        }
    }

    private static void WriteFlag(Utf8JsonWriter json, string text)
    {
        if (bool.TryParse(text, out var flag))
        {
            json.WriteBooleanValue(flag);
        }
        else
        {
            json.WriteStringValue(text);
        }
    }

    private static void WriteWords(Utf8JsonWriter json, string text)
    {
        json.WriteStartArray();
        foreach (var word in text.Split(',', StringSplitOptions.TrimEntries))
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }
}
