using System.Globalization;
using System.Text.Json;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Paths;

/// <summary>Values that are given by path, as the object, list or value that they make up.</summary>
internal sealed class Branch
{
    private readonly SortedList<string, Branch> parts = new(new ByPosition());

    /// <summary>What gives the value; null for an object or a list.</summary>
    public Leaf? Leaf { get; set; }

    /// <summary>Whether it is a list.</summary>
    public bool IsList { get; init; }

    /// <summary>Whether it is written even where nothing is said of it: a part of a rig may be empty.</summary>
    public bool IsPart { get; set; }

    /// <summary>Path of it.</summary>
    public required string Path { get; init; }

    /// <summary>What it is made up of.</summary>
    public IEnumerable<KeyValuePair<string, Branch>> Parts => parts;

    /// <summary>The branch with a name; made where there is none.</summary>
    public Branch In(string name, bool isList, bool isPart)
    {
        if (!parts.TryGetValue(name, out var branch))
        {
            branch = new()
            {
                Path = Path.Length == 0 ? name : $"{Path}.{name}",
                IsList = isList,
                IsPart = isPart,
            };
            parts.Add(name, branch);
        }

        return branch;
    }

    /// <summary>Writes what a row says, and notes what it leaves out of the middle of a list.</summary>
    public void Write(Utf8JsonWriter json, Row row, Faults faults)
    {
        if (Leaf is { } leaf)
        {
            leaf.Write(json, row, faults);
        }
        else if (IsList)
        {
            WriteList(json, row, faults);
        }
        else
        {
            WriteObject(json, row, faults);
        }
    }

    private void WriteObject(Utf8JsonWriter json, Row row, Faults faults)
    {
        json.WriteStartObject();
        foreach (var (name, part) in parts)
        {
            if (part.IsGiven(row))
            {
                json.WritePropertyName(name);
                part.Write(json, row, faults);
            }
        }

        json.WriteEndObject();
    }

    private void WriteList(Utf8JsonWriter json, Row row, Faults faults)
    {
        json.WriteStartArray();
        Branch? left = null;
        foreach (var (_, item) in parts)
        {
            if (!item.IsGiven(row))
            {
                left ??= item;
            }
            else if (left is null)
            {
                item.Write(json, row, faults);
            }
            else
            {
                faults.Add(Gap(item, left));
                break;
            }
        }

        json.WriteEndArray();
    }

    private bool IsGiven(Row row) =>
        Leaf is { } leaf
            ? row[leaf.Position].Length > 0
            : IsPart || parts.Values.Any(part => part.IsGiven(row));

    private static Fault Gap(Branch item, Branch left) =>
        new(
            item.Path,
            FaultCode.Conflict,
            $"{item.Path} is given and {left.Path} is not. Fill a list from 0 on."
        )
        {
            Related = [left.Path],
        };

    /// <summary>Positions by their number, names as they are.</summary>
    private sealed class ByPosition : IComparer<string>
    {
        public int Compare(string? x, string? y) =>
            int.TryParse(x, NumberStyles.None, CultureInfo.InvariantCulture, out var first)
            && int.TryParse(y, NumberStyles.None, CultureInfo.InvariantCulture, out var second)
                ? first.CompareTo(second)
                : string.CompareOrdinal(x, y);
    }
}
