using System.Buffers;
using System.IO.Pipelines;
using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>
/// The items of one JSON list; the line of an item is its position, from 1. An item ends where its brackets close, whatever
/// stands between them, so that a bad one does not spoil the next.
/// </summary>
/// <param name="ending">Is told when the list is not closed.</param>
internal sealed class ListEntries(Ending ending) : EntryReader
{
    private readonly Brackets brackets = new();
    private bool isPassing;
    private bool isClosed;
    private bool isAfter;
    private long looked;

    /// <inheritdoc/>
    protected override async ValueTask<ProblemResult?> Open(
        PipeReader arrived,
        CancellationToken stop
    )
    {
        while (true)
        {
            var read = await arrived.ReadAsync(stop);
            var rest = Trim(read.Buffer);
            if (!rest.IsEmpty)
            {
                var isList = rest.FirstSpan[0] == (byte)'[';
                arrived.AdvanceTo(isList ? rest.GetPosition(1) : rest.End);
                return isList ? null : ProblemOf.NoList();
            }

            arrived.AdvanceTo(read.Buffer.Start, read.Buffer.End);
            if (read.IsCompleted)
            {
                return ProblemOf.Reading(Malformed.Empty);
            }
        }
    }

    /// <inheritdoc/>
    public override (CheckRequest? Request, ProblemResult? Problem) Read(Entry entry, Faults faults)
    {
        var (request, malformed) = RequestReader.Read<CheckRequest>(entry.Text!.Bytes, faults);
        return (request, malformed is null ? null : ProblemOf.Reading(malformed, entry.Line));
    }

    /// <inheritdoc/>
    protected override bool TryTake(ref ReadOnlySequence<byte> rest, bool isLast, out Entry? entry)
    {
        entry = null;
        if (isClosed)
        {
            return TakeAfter(ref rest, out entry);
        }

        var fresh = new SequenceReader<byte>(rest);
        fresh.Advance(looked);
        if (brackets.TryClose(ref fresh, out var isEnd))
        {
            isClosed = isEnd;
            entry = Whole(rest.Slice(0, fresh.Consumed - 1), isEnd);
            rest = rest.Slice(fresh.Position);
            looked = 0;
            isPassing = false;
            return true;
        }

        looked = rest.Length;
        return isLast ? TakeUnclosed(ref rest, out entry) : PassTooLong(ref rest, out entry);
    }

    private Entry? Whole(in ReadOnlySequence<byte> item, bool isEnd)
    {
        if (isPassing)
        {
            return null;
        }

        if (IsBlank(item))
        {
            // Nothing stands in an empty list, and after a last comma there is nothing to answer but the comma.
            return isEnd && Line == 0 ? null : new(++Line, null, ProblemOf.EmptyItem(Line));
        }

        Line++;
        return item.Length > BodyReader.MostBytes ? TooLong(Line) : Take(Line, item);
    }

    private bool TakeUnclosed(ref ReadOnlySequence<byte> rest, out Entry? entry)
    {
        ending.Note(Reason.CutOff);
        entry = isPassing || IsBlank(rest) ? null : Whole(rest, isEnd: false);
        isClosed = isAfter = true;
        rest = rest.Slice(rest.End);
        return entry is not null;
    }

    private bool TakeAfter(ref ReadOnlySequence<byte> rest, out Entry? entry)
    {
        entry = isAfter || IsBlank(rest) ? null : new(++Line, null, ProblemOf.AfterList());
        if (entry is not null)
        {
            isAfter = true;
            ending.Note(Reason.AfterList);
        }

        rest = rest.Slice(rest.End);
        return entry is not null;
    }

    private bool PassTooLong(ref ReadOnlySequence<byte> rest, out Entry? entry)
    {
        entry = null;
        if (rest.Length <= BodyReader.MostBytes)
        {
            return false;
        }

        entry = isPassing ? null : TooLong(++Line);
        isPassing = true;
        rest = rest.Slice(rest.End);
        looked = 0;
        return entry is not null;
    }

    private static ReadOnlySequence<byte> Trim(in ReadOnlySequence<byte> text)
    {
        var reader = new SequenceReader<byte>(text);
        reader.IsNext("\uFEFF"u8, advancePast: true);
        reader.AdvancePastAny(" \t\r\n"u8);
        return reader.UnreadSequence;
    }
}
