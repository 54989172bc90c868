using System.Text.Json;
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
    /// <summary>Writes a cell as the JSON of its member.</summary>
    public void Write(Utf8JsonWriter json, Row row)
    {
        var text = Form.Unit is null ? row[Position] : row.Number(Position);
        if (Convert is not null && TextForm.TryParse(text, out var figure))
        {
            json.WriteNumberValue(Convert(figure));
        }
        else
        {
            Form.Write(json, text);
        }
    }
}

/// <summary>A row of a table.</summary>
/// <param name="cells">Its cells.</param>
/// <param name="isDecimalComma">Whether its figures may be written with a comma.</param>
internal sealed class Row(string[] cells, bool isDecimalComma)
{
    /// <summary>How many cells it has.</summary>
    public int Count => cells.Length;

    /// <summary>The text of a cell; empty where it says nothing.</summary>
    public string this[int position] => cells[position].Trim();

    /// <summary>The text of a cell with a figure, with a decimal point.</summary>
    public string Number(int position) =>
        isDecimalComma ? this[position].Replace(',', '.') : this[position];
}
