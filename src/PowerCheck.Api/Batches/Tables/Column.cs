using System.Text.Json;
using System.Text.RegularExpressions;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Batches.Tables;

/// <summary>A column of a table: what its cells say.</summary>
/// <param name="Path">The member.</param>
/// <param name="Position">Where it stands, from 0.</param>
/// <param name="Form">How a cell is written as JSON.</param>
/// <param name="Convert">Turns its figures into the unit of the member; null where they are in it.</param>
internal sealed record Column(
    string Path,
    int Position,
    TextForm Form,
    Func<double, double>? Convert
)
{
    /// <summary>A larger figure is out of range in any unit, and might not be one in another.</summary>
    private const double MostConverted = 1e15;

    /// <summary>Writes a cell as the JSON of its member; notes a figure that may mean two.</summary>
    public void Write(Utf8JsonWriter json, Row row, Faults faults)
    {
        if (!Form.IsFigure)
        {
            Form.Write(json, row[Position]);
        }
        else if (row.IsUnclear(Position))
        {
            faults.Add(Unclear(row[Position]));
            json.WriteNullValue();
        }
        else
        {
            WriteFigure(json, row.Number(Position));
        }
    }

    private void WriteFigure(Utf8JsonWriter json, string text)
    {
        if (
            Convert is not null
            && TextForm.TryParse(text, out var figure)
            && Math.Abs(figure) <= MostConverted
        )
        {
            json.WriteNumberValue(Convert(figure));
        }
        else
        {
            Form.Write(json, text);
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
}

/// <summary>A row of a table.</summary>
/// <param name="cells">Its cells.</param>
/// <param name="isDecimalComma">Whether its figures may be written with a comma.</param>
internal sealed partial class Row(string[] cells, bool isDecimalComma)
{
    /// <summary>How many cells it has.</summary>
    public int Count => cells.Length;

    /// <summary>The text of a cell; empty where it says nothing.</summary>
    public string this[int position] => cells[position].Trim();

    /// <summary>Whether the point of a figure may part thousands as well as decimals.</summary>
    public bool IsUnclear(int position) => isDecimalComma && Thousands().IsMatch(this[position]);

    /// <summary>The text of a cell with a figure, with a decimal point.</summary>
    public string Number(int position) =>
        isDecimalComma ? this[position].Replace(',', '.') : this[position];

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}\.\d{3}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Thousands();
}
