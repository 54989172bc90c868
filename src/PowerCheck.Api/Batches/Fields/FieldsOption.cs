using PowerCheck.Api.Door;

namespace PowerCheck.Api.Batches.Fields;

/// <summary>Which members of an answer are wanted, as a query parameter: paths with commas between them.</summary>
internal static class FieldsOption
{
    /// <summary>Its name.</summary>
    public const string Name = "fields";

    private const int Most = 100;

    /// <summary>The paths; null when it is left out, or wrong, which is then noted.</summary>
    /// <param name="query">The parameters.</param>
    /// <param name="onlyValues">Whether each must lead to one value, as a cell needs it.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    public static IReadOnlyList<FieldPath>? Of(
        IQueryCollection query,
        bool onlyValues,
        Faults faults
    )
    {
        var given = query[Name];
        if (given.Count != 1 || given[0] is not { Length: > 0 } text)
        {
            return null;
        }

        var names = text.Split(',', StringSplitOptions.TrimEntries);
        if (names.Length > Most)
        {
            faults.Add(
                new(
                    Name,
                    FaultCode.OutOfRange,
                    $"{Name} names {names.Length} members and may name {Most}."
                )
                {
                    Maximum = Most,
                }
            );
            return null;
        }

        var paths = names.Select(name => Path(name, onlyValues, faults)).ToArray();
        RefuseDoubled(names, faults);
        return faults.None ? [.. paths.OfType<FieldPath>()] : null;
    }

    private static FieldPath? Path(string name, bool onlyValues, Faults faults)
    {
        if (FieldPath.Of(name) is not { } path)
        {
            faults.Add(Unknown(name));
            return null;
        }

        if (onlyValues && !path.IsValue)
        {
            faults.Add(NoValue(name));
        }

        return path;
    }

    private static void RefuseDoubled(string[] names, Faults faults)
    {
        foreach (
            var name in names.CountBy(name => name).Where(pair => pair.Value > 1).Select(p => p.Key)
        )
        {
            faults.Add(
                new(
                    Name,
                    FaultCode.Doubled,
                    $"{Name} names {Walk.Cut(name)} more than once. Name it once."
                )
            );
        }
    }

    private static Fault Unknown(string name)
    {
        var nearest = Nearest.Of(name, FieldPath.All());
        return new(
            Name,
            FaultCode.OutOfRange,
            $"{Name} names \"{Walk.Cut(name)}\", which is no member of an answer. {(nearest is null ? "The document at /openapi/v1.json has them, under CheckReport." : $"Did you mean {nearest}?")}"
        )
        {
            Given = Walk.Cut(name),
            Nearest = nearest,
        };
    }

    private static Fault NoValue(string name)
    {
        var within = FieldPath
            .All()
            .FirstOrDefault(path =>
                path.StartsWith($"{name}.", StringComparison.Ordinal) && FieldPath.Of(path)!.IsValue
            );
        return new(
            Name,
            FaultCode.OutOfRange,
            $"{Name} names {name}, which holds more than one value, and a table has one a cell. Name a value within it, such as {within ?? $"{name}.0"}."
        )
        {
            Given = Walk.Cut(name),
            Nearest = within,
        };
    }
}
