using System.Collections.Frozen;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>A request type as the door sees it: how to make one, and its members.</summary>
internal sealed class Shape
{
    private const int MostName = 64;

    private readonly Func<object> create;
    private readonly Member[] members;
    private readonly FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> positions;

    public Shape(Func<object> create, Member[] members)
    {
        // What was seen of an object is kept in the bits of one word.
        if (members.Length > 64)
        {
            throw new ArgumentException("more members than bits", nameof(members));
        }

        this.create = create;
        this.members = members;
        positions = members
            .Index()
            .ToFrozenDictionary(pair => pair.Item.Name, pair => pair.Index, StringComparer.Ordinal)
            .GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Names of the members.</summary>
    public IEnumerable<string> Names => members.Select(member => member.Name);

    /// <summary>The member with a name; null when there is none.</summary>
    public Member? Of(string name) => positions.TryGetValue(name, out var at) ? members[at] : null;

    /// <summary>Reads the object in hand; what is wrong with it is noted and left out.</summary>
    public object Read(ref Walk walk)
    {
        var owner = create();
        var seen = new Seen();
        while (walk.Reader.Read() && walk.Token != JsonTokenType.EndObject)
        {
            if (Find(ref walk) is var at and >= 0)
            {
                ReadMember(ref walk, owner, at, ref seen);
            }
            else
            {
                PassUnknown(ref walk, ref seen);
            }
        }

        NoteMissing(ref walk, seen);
        return owner;
    }

    private int Find(ref Walk walk)
    {
        if (walk.Reader.ValueIsEscaped)
        {
            return positions.TryGetValue(walk.Text(), out var escaped) ? escaped : -1;
        }

        if (walk.Reader.ValueSpan.Length > MostName)
        {
            return -1;
        }

        Span<char> name = stackalloc char[MostName];
        var length = walk.Reader.CopyString(name);
        return positions.TryGetValue(name[..length], out var at) ? at : -1;
    }

    private void ReadMember(ref Walk walk, object owner, int at, ref Seen seen)
    {
        var member = members[at];
        var bit = 1UL << at;
        walk.Reader.Read();
        walk.Path.Enter(member.Name);
        if ((seen.Named & bit) != 0)
        {
            NoteDoubled(ref walk);
        }
        else if (walk.Token != JsonTokenType.Null)
        {
            seen.Given |= bit;
            member.Read(ref walk, owner);
        }

        seen.Named |= bit;
        walk.Path.Leave();
    }

    private void PassUnknown(ref Walk walk, ref Seen seen)
    {
        var name = walk.Text();
        walk.Reader.Read();
        seen.Strange ??= new(StringComparer.Ordinal);
        walk.Path.Enter(Walk.Cut(name));
        if (seen.Strange.Add(name))
        {
            walk.Skip();
            NoteUnknown(ref walk, name);
        }
        else
        {
            NoteDoubled(ref walk);
        }

        walk.Path.Leave();
    }

    /// <summary>Notes that the member in hand was met before, and passes over it.</summary>
    public static void NoteDoubled(ref Walk walk)
    {
        var path = walk.Path.ToString();
        walk.Skip();
        walk.Faults.Add(
            new(path, FaultCode.Doubled, $"{path} is given more than once. Give it once.")
        );
    }

    /// <summary>Paths of the members with a name, in this object and within.</summary>
    public IEnumerable<string> Find(string name, string prefix = "")
    {
        foreach (var member in members)
        {
            var path = prefix + member.Name;
            if (string.Equals(member.Name, name, StringComparison.Ordinal))
            {
                yield return path;
            }

            foreach (var inner in member.Inner?.Find(name, $"{path}{member.Step}.") ?? [])
            {
                yield return inner;
            }
        }
    }

    private void NoteUnknown(ref Walk walk, string name)
    {
        if (walk.Faults.Full)
        {
            walk.Faults.Truncate();
            return;
        }

        var path = walk.Path.ToString();
        string[] elsewhere = [.. walk.Root.Find(name)];
        var nearest = elsewhere.Length == 0 ? Nearest.Of(name, Names) : null;
        var cure =
            elsewhere.Length > 0 ? $"It belongs at {string.Join(" or ", elsewhere)}."
            : nearest is not null ? $"Did you mean {nearest}?"
            : "Leave it out, or correct its name to one that is allowed.";
        walk.Faults.Add(
            new(path, FaultCode.UnknownMember, $"{path} is not known. {cure}")
            {
                Nearest = nearest,
                Related = elsewhere.Length == 0 ? null : elsewhere,
                Allowed = nearest is null && elsewhere.Length == 0 ? [.. Names] : null,
            }
        );
    }

    private void NoteMissing(ref Walk walk, Seen seen)
    {
        for (var at = 0; at < members.Length; at++)
        {
            var member = members[at];
            if (member.Required && (seen.Given & (1UL << at)) == 0)
            {
                var path = walk.Path.Of(member.Name);
                walk.Faults.Add(
                    new(path, FaultCode.Missing, $"{path} is missing. It must be {member.Wanted}.")
                );
            }
        }
    }

    /// <summary>What was met of one object so far.</summary>
    private struct Seen
    {
        /// <summary>Members named, one bit each.</summary>
        public ulong Named;

        /// <summary>Members given with anything but null, one bit each.</summary>
        public ulong Given;

        /// <summary>Unknown names met.</summary>
        public HashSet<string>? Strange;
    }
}
