using System.Text.Json;
using System.Text.RegularExpressions;
using PowerCheck.Api.Door;
using PowerCheck.Api.Paths;

namespace PowerCheck.Api.Batches.Tables;

/// <summary>A column of a table: what its cells say.</summary>
/// <param name="path">The member.</param>
/// <param name="position">Where it stands, from 0.</param>
/// <param name="form">How a cell is written as JSON.</param>
/// <param name="convert">Turns its figures into the unit of the member; null where they are in it.</param>
/// <param name="isDecimalComma">Whether its figures may be written with a comma.</param>
internal sealed partial class Column(
    string path,
    int position,
    TextForm form,
    Func<double, double>? convert,
    bool isDecimalComma
) : Leaf(path, position)
{
    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, Row row, Faults faults)
    {
        var text = row[Position];
        if (!form.IsFigure)
        {
            form.Write(json, text);
        }
        else if (!isDecimalComma)
        {
            form.WriteFigure(json, text, convert);
        }
        else if (Thousands().IsMatch(text))
        {
            faults.Add(Unclear(text));
            json.WriteNullValue();
        }
        else
        {
            form.WriteFigure(json, text.Replace(',', '.'), convert);
        }
    }

    private Fault Unclear(string text) =>
        new(
            Path,
            FaultCode.WrongType,
            $"{Path} is {text}, and where semicolons stand between cells its point may part thousands or decimals. Write decimals with a comma, and nothing between thousands."
        )
        {
            Given = text,
        };

    // The point may part thousands as well as decimals.
    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}\.\d{3}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Thousands();
}
