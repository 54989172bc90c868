using System.Text.Json;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Paths;

/// <summary>A value that is given as text, in a row of them.</summary>
/// <param name="path">The member.</param>
/// <param name="position">Where in the row it stands, from 0.</param>
internal abstract class Leaf(string path, int position)
{
    /// <summary>The member.</summary>
    public string Path => path;

    /// <summary>Where in the row it stands, from 0.</summary>
    public int Position => position;

    /// <summary>Writes the value as the JSON of its member; notes what cannot be written.</summary>
    public abstract void Write(Utf8JsonWriter json, Row row, Faults faults);
}

/// <summary>Texts of values.</summary>
/// <param name="texts">The texts, each as it was given.</param>
internal sealed class Row(IReadOnlyList<string> texts)
{
    /// <summary>How many there are.</summary>
    public int Count => texts.Count;

    /// <summary>The text at a position without the blanks around it; empty where it says nothing.</summary>
    public string this[int position] => texts[position].Trim();

    /// <summary>The text at a position as it was given.</summary>
    public string Given(int position) => texts[position];
}
