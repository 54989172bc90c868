using PowerCheck.Api.Door;
using PowerCheck.Api.Paths;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Batches.Tables;

/// <summary>The header of a table: paths, each with the unit of its figures in square brackets where it is another.</summary>
/// <param name="rig">The columns as the rig that they make up.</param>
/// <param name="headings">The headings.</param>
internal sealed class TableHeader(Branch rig, string[] headings)
{
    /// <summary>Most columns of a table.</summary>
    private const int MostColumns = 1000;

    /// <summary>The header of no table.</summary>
    public static readonly TableHeader Empty = new(new() { Path = "" }, []);

    /// <summary>The columns as the rig that they make up.</summary>
    public Branch Rig => rig;

    /// <summary>How many cells a row has.</summary>
    public int Width => headings.Length;

    /// <summary>Reads a header; what is wrong is noted.</summary>
    /// <param name="headings">The headings.</param>
    /// <param name="isDecimalComma">Whether the figures below may be written with a comma.</param>
    /// <param name="faults">Where to note it.</param>
    public static TableHeader Read(string[] headings, bool isDecimalComma, Faults faults)
    {
        var root = new Branch { Path = "" };
        if (headings.Length > MostColumns)
        {
            faults.Add(TooWide(headings.Length));
            return Empty;
        }

        for (var at = 0; at < headings.Length; at++)
        {
            // Spreadsheets leave columns without a name behind.
            if (headings[at].Trim() is { Length: > 0 } name)
            {
                Add(root, name, (at, isDecimalComma), faults);
            }
        }

        if (faults.None)
        {
            RefuseGaps(root, faults);
        }

        if (faults.None && !root.Parts.Any())
        {
            faults.Add(new("", FaultCode.Missing, "The header names nothing."));
        }

        return new(root, headings);
    }

    /// <summary>Notes cells too many or too few, and those that stand under no heading.</summary>
    public void RefuseShape(Row row, Faults faults)
    {
        if (row.Count != headings.Length)
        {
            faults.Add(
                new(
                    "",
                    FaultCode.Conflict,
                    $"The row has {row.Count} cells and the header {headings.Length}. Give a cell a column, empty where nothing is known, and put a cell in quotes that has the separator in it."
                )
            );
            return;
        }

        for (var at = 0; at < headings.Length; at++)
        {
            if (string.IsNullOrWhiteSpace(headings[at]) && row[at].Length > 0)
            {
                faults.Add(Nameless(at, row[at]));
            }
        }
    }

    private static Fault Nameless(int column, string text) =>
        new(
            "",
            FaultCode.UnknownMember,
            $"Column {column + 1} says \"{Walk.Cut(text)}\" and has no heading. Name the member in the header, or leave the cell empty."
        )
        {
            Given = Walk.Cut(text),
        };

    private static Fault TooWide(int columns) =>
        new(
            "",
            FaultCode.OutOfRange,
            $"The header has {columns} columns and may have {MostColumns}."
        )
        {
            Maximum = MostColumns,
        };

    private static void Add(
        Branch root,
        string name,
        (int Position, bool IsDecimalComma) cells,
        Faults faults
    )
    {
        if (faults.Full)
        {
            faults.Truncate();
            return;
        }

        var (path, symbol) = RigPath.Split(name);
        if (RigPath.Walk(root, path) is not { Form: { } form } found)
        {
            faults.Add(Unknown(path));
        }
        else if (found.Branch.Leaf is not null)
        {
            faults.Add(
                new(
                    Walk.Cut(path),
                    FaultCode.Doubled,
                    $"The header names {path} more than once. Name it once."
                )
            );
        }
        else if (Convert(form, symbol) is { Works: true } unit)
        {
            found.Branch.Leaf = new Column(
                path,
                cells.Position,
                form,
                unit.Convert,
                cells.IsDecimalComma
            );
        }
        else
        {
            faults.Add(WrongUnit(path, symbol!, form));
        }
    }

    private static (bool Works, Func<double, double>? Convert) Convert(
        TextForm form,
        string? symbol
    )
    {
        if (symbol is null)
        {
            return (true, null);
        }

        var convert = form.Unit is { } own ? OtherUnits.From(own, symbol) : null;
        return (convert is not null, convert);
    }

    private static Fault Unknown(string path)
    {
        var nearest = RigPath.Nearest(path);
        var cure = nearest is null
            ? "The document at /openapi/v1.json has the members of a rig; a header is their names joined by dots."
            : $"Did you mean {nearest}?";
        return new(
            Walk.Cut(path),
            FaultCode.UnknownMember,
            $"The header names {Walk.Cut(path)}, which is no value of a rig. {cure}"
        )
        {
            Nearest = nearest,
        };
    }

    private static Fault WrongUnit(string path, string symbol, TextForm form) =>
        new(
            path,
            FaultCode.OutOfRange,
            $"The header gives {path} in [{Walk.Cut(symbol)}], {Cure(form.Unit)}"
        )
        {
            Given = Walk.Cut(symbol),
        };

    private static string Cure(Unit? own) =>
        own is null ? "which has no unit in a header. Leave the brackets out."
        : own.Symbol.Length == 0 ? "which is a plain number. Leave the brackets out, or write [%]."
        : OtherUnits.HasOthers(own)
            ? $"which is no unit for it. Give it in [{own.Symbol}] or another unit of the same kind, spelled exactly."
        : $"which is no unit for it. Give it in [{own.Symbol}].";

    private static void RefuseGaps(Branch branch, Faults faults)
    {
        if (branch is { Leaf: not null } && branch.Parts.Any())
        {
            faults.Add(
                new(
                    branch.Path,
                    FaultCode.Doubled,
                    $"The header names {branch.Path} and also what is within it. Name one or the other."
                )
            );
        }

        foreach (var (at, (name, part)) in branch.Parts.Index())
        {
            if (branch.IsList && !string.Equals(name, $"{at}", StringComparison.Ordinal))
            {
                faults.Add(
                    new(
                        part.Path,
                        FaultCode.Missing,
                        $"The header names {part.Path} but nothing of {branch.Path}.{at}. Number the items of a list from 0 on."
                    )
                );
                return;
            }

            RefuseGaps(part, faults);
        }
    }
}
