using PowerCheck.Api.Door;

namespace PowerCheck.Api.Batches.Tables;

/// <summary>Reads the header of a table: paths, each with the unit of its figures in square brackets where it is another.</summary>
internal static class TableHeader
{
    /// <summary>Most columns of a table.</summary>
    private const int MostColumns = 1000;

    /// <summary>The columns as the rig that they make up; what is wrong is noted.</summary>
    public static Branch Read(string[] header, Faults faults)
    {
        var root = new Branch { Path = "" };
        if (header.Length > MostColumns)
        {
            faults.Add(
                new(
                    "",
                    FaultCode.OutOfRange,
                    $"The header has {header.Length} columns and may have {MostColumns}."
                )
                {
                    Maximum = MostColumns,
                }
            );
            return root;
        }

        for (var at = 0; at < header.Length; at++)
        {
            // Spreadsheets leave columns without a name behind; a cell in one is refused when it comes.
            if (header[at].Trim() is { Length: > 0 } name)
            {
                Add(root, name, at, faults);
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

        return root;
    }

    private static void Add(Branch root, string name, int position, Faults faults)
    {
        var (path, symbol) = Split(name);
        if (ColumnPath.Walk(root, path) is not { } found)
        {
            faults.Add(Unknown(path));
        }
        else if (found.Branch.Column is not null)
        {
            faults.Add(
                new(
                    Walk.Cut(path),
                    FaultCode.Doubled,
                    $"The header names {path} more than once. Name it once."
                )
            );
        }
        else if (Convert(found.Form, symbol) is { Works: true } unit)
        {
            found.Branch.Column = new(path, position, found.Form, unit.Convert);
        }
        else
        {
            faults.Add(WrongUnit(path, symbol!, found.Form));
        }
    }

    private static (string Path, string? Symbol) Split(string name) =>
        name.EndsWith(']') && name.IndexOf('[', StringComparison.Ordinal) is var at and >= 0
            ? (name[..at].TrimEnd(), name[(at + 1)..^1].Trim())
            : (name, null);

    private static (bool Works, Func<double, double>? Convert) Convert(
        TextForm form,
        string? symbol
    )
    {
        if (symbol is null)
        {
            return (true, null);
        }

        var convert = form.Unit is { } own ? HeaderUnits.From(own, symbol) : null;
        return (convert is not null, convert);
    }

    private static Fault Unknown(string path)
    {
        var nearest = ColumnPath.Nearest(path);
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
            form.Unit is { Symbol.Length: > 0 } own
                ? $"The header gives {path} in [{Walk.Cut(symbol)}], which is no unit for it. Give it in [{own.Symbol}] or another unit of the same kind."
                : $"The header gives {path} in [{Walk.Cut(symbol)}], and it has no unit. Leave the brackets out."
        )
        {
            Given = Walk.Cut(symbol),
        };

    private static void RefuseGaps(Branch branch, Faults faults)
    {
        if (branch is { Column: not null } && branch.Parts.Any())
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
