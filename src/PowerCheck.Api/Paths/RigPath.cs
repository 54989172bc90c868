using System.Globalization;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Paths;

/// <summary>Finds what a path names, as the headings of tables and the parameters of links have it.</summary>
internal static class RigPath
{
    private static readonly Shape Root = MemberTable.Of(typeof(CheckRequest));

    private const string Share = "relative";

    /// <summary>Every path of a value, positions as 0.</summary>
    private static readonly string[] All = [.. Paths(Root, "")];

    /// <summary>A path and the unit in square brackets behind it; null where there is none.</summary>
    public static (string Path, string? Symbol) Split(string name) =>
        name.EndsWith(']') && name.IndexOf('[', StringComparison.Ordinal) is var at and >= 0
            ? (name[..at].TrimEnd(), name[(at + 1)..^1].Trim())
            : (name, null);

    /// <summary>Walks down a path, making branches.</summary>
    /// <param name="root">The branch of the whole rig.</param>
    /// <param name="path">The path.</param>
    /// <returns>What it names; null when there is nothing.</returns>
    public static Named? Walk(Branch root, string path)
    {
        var names = path.Split('.');
        var (branch, shape) = (root, Root);
        for (var at = 0; at < names.Length; at++)
        {
            if (shape.Of(names[at]) is not { } member)
            {
                return null;
            }

            branch = branch.In(
                names[at],
                member.MostItems is not null && at + 1 < names.Length,
                member.Required && member.Inner is not null
            );
            var rest = names[(at + 1)..];
            if (rest.Length == 0)
            {
                return new(branch, member.Text, member.MostItems is not null);
            }

            if (member.Entries is { } entries)
            {
                return Entry(branch, rest, member, entries);
            }

            if (member.MostItems is { } most)
            {
                if (!IsPosition(rest[0], most))
                {
                    return null;
                }

                branch = branch.In(rest[0], isList: false, isPart: false);
                at++;
                if (rest.Length == 1)
                {
                    return new(branch, member.ItemText, IsList: false);
                }
            }

            if (member.Inner is not { } inner)
            {
                return null;
            }

            shape = inner;
        }

        return null;
    }

    /// <summary>Whether a path names a value of a rig.</summary>
    public static bool Names(string path) => Walk(new() { Path = "" }, path)?.Form is not null;

    /// <summary>The path that comes closest to one that is not known; null when none does.</summary>
    public static string? Nearest(string path)
    {
        var name = path[(path.LastIndexOf('.') + 1)..];
        string[] elsewhere = [.. Root.Find(name).Intersect(All, StringComparer.Ordinal)];
        return elsewhere.Length == 1 ? elsewhere[0] : Door.Nearest.Of(path, All);
    }

    // A path within a path: all of what is left, but for the last name where that says in which way.
    private static Named? Entry(Branch branch, string[] names, Member member, Shape entries)
    {
        if (names.Length > 1 && entries.Of(names[^1]) is { Text: { } text } way)
        {
            var key = branch.In(string.Join('.', names[..^1]), isList: false, isPart: false);
            // The others are in the unit of the path that they speak of, which a header cannot turn into another.
            var isShare = string.Equals(way.Name, Share, StringComparison.Ordinal);
            return new(
                key.In(way.Name, isList: false, isPart: false),
                isShare ? text : text with { Unit = null },
                IsList: false
            );
        }

        return member.ItemText is { } form
            ? new(
                branch.In(string.Join('.', names), isList: false, isPart: false),
                form,
                IsList: false
            )
            : null;
    }

    private static bool IsPosition(string name, int most) =>
        int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var position)
        && position < most
        && string.Equals(
            name,
            position.ToString(CultureInfo.InvariantCulture),
            StringComparison.Ordinal
        );

    private static IEnumerable<string> Paths(Shape shape, string prefix)
    {
        foreach (var member in shape.Names.Select(name => shape.Of(name)!))
        {
            var path = prefix + member.Name;
            if (member.Text is not null)
            {
                yield return path;
            }

            if (member is { MostItems: not null, ItemText: not null })
            {
                yield return $"{path}.0";
            }

            foreach (var inner in Inner(member, path))
            {
                yield return inner;
            }
        }
    }

    private static IEnumerable<string> Inner(Member member, string path) =>
        member.Inner is { } shape ? Paths(shape, $"{path}{member.Step}.") : [];
}

/// <summary>What a path names.</summary>
/// <param name="Branch">Its place in the rig.</param>
/// <param name="Form">How its value may come as text; null for an object, and for a list of anything but words.</param>
/// <param name="IsList">Whether it is a list.</param>
internal sealed record Named(Branch Branch, TextForm? Form, bool IsList);
