using PowerCheck.Api.Door;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>An object of the request, as the rules that tie its members together see it.</summary>
/// <param name="faults">What was found wrong so far.</param>
/// <param name="path">Path of the object.</param>
internal readonly struct Place(Faults faults, string path)
{
    /// <summary>An object within this one.</summary>
    public Place In(string member) => new(faults, Path(member));

    /// <summary>An item of a list within this object.</summary>
    public Place In(string list, int position) => new(faults, $"{Path(list)}.{position}");

    /// <summary>The path of a member.</summary>
    public string Path(string member) => path.Length == 0 ? member : $"{path}.{member}";

    /// <summary>The path of the object itself.</summary>
    public string Here => path;

    /// <summary>Whether a member was given wrongly, so that nothing more can be said of it.</summary>
    public bool Broken(string member) => !faults.None && faults.Touch(Path(member));

    /// <summary>Notes that a member does not go with others of the same object.</summary>
    public void Conflict(string member, string message, params ReadOnlySpan<string> related)
    {
        var paths = new List<string>();
        foreach (var other in related)
        {
            paths.Add(Path(other));
        }

        Add(Path(member), message, paths);
    }

    /// <summary>Notes that the members of this object do not go together.</summary>
    public void Conflict(string message, IEnumerable<string> related) =>
        Add(path, message, [.. related.Select(Path)]);

    /// <summary>A pair of figures of which the second must not be under the first.</summary>
    public void Ordered(string lower, double? low, string upper, double? high)
    {
        if (high < low)
        {
            Conflict(
                lower,
                $"{Path(lower)} is {low} and must not be above {Path(upper)}, which is {high}.",
                upper
            );
        }
    }

    /// <summary>A member that means nothing without another one.</summary>
    public void Needs(string member, bool given, string other, bool otherGiven)
    {
        if (given && !otherGiven && !Broken(other))
        {
            Conflict(
                member,
                $"{Path(member)} says nothing without {Path(other)}. Give {other} too, or leave {member} out.",
                other
            );
        }
    }

    /// <summary>Two members of which only one may be given.</summary>
    public void NotBoth(string member, bool given, string other, bool otherGiven)
    {
        if (given && otherGiven)
        {
            Conflict(
                member,
                $"{Path(member)} and {Path(other)} say the same thing twice. Leave one of them out.",
                other
            );
        }
    }

    private void Add(string at, string message, IReadOnlyList<string> related) =>
        faults.Add(new(at, FaultCode.Conflict, message) { Related = related });
}
