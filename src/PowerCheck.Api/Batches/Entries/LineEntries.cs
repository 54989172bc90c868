using System.Buffers;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>A rig a line (NDJSON). Blank lines are passed over but counted.</summary>
internal sealed class LineEntries : EntryReader
{
    private bool isPassing;

    /// <inheritdoc/>
    public override (CheckRequest? Request, ProblemResult? Problem) Read(Entry entry, Faults faults)
    {
        var (request, malformed) = RequestReader.Read<CheckRequest>(entry.Text!.Bytes, faults);
        return (
            request,
            malformed is null
                ? null
                : ProblemOf.Reading(
                    malformed with
                    {
                        Line = (int)Math.Min(entry.Line, int.MaxValue),
                    }
                )
        );
    }

    /// <inheritdoc/>
    protected override bool TryTake(ref ReadOnlySequence<byte> rest, bool isLast, out Entry? entry)
    {
        entry = null;
        var end = rest.PositionOf((byte)'\n');
        if (end is null && !isLast)
        {
            return PassTooLong(ref rest, out entry);
        }

        if (end is null && rest.IsEmpty)
        {
            return false;
        }

        var line = rest.Slice(0, end ?? rest.End);
        rest = end is { } at ? rest.Slice(rest.GetPosition(1, at)) : rest.Slice(rest.End);
        entry = isPassing ? null : Whole(line);
        isPassing = false;
        return true;
    }

    private Entry? Whole(in ReadOnlySequence<byte> line)
    {
        Line++;
        return line.Length > BodyReader.MostBytes ? TooLong(Line)
            : IsBlank(line) ? null
            : Take(Line, line);
    }

    /// <summary>Passes over what is too long already without waiting for its end.</summary>
    private bool PassTooLong(ref ReadOnlySequence<byte> rest, out Entry? entry)
    {
        entry = null;
        if (isPassing)
        {
            rest = rest.Slice(rest.End);
            return false;
        }

        if (rest.Length <= BodyReader.MostBytes)
        {
            return false;
        }

        entry = TooLong(++Line);
        isPassing = true;
        rest = rest.Slice(rest.End);
        return true;
    }
}
