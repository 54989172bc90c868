using System.Buffers;
using System.IO.Pipelines;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using PowerCheck.Api.Batches.Tables;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Paths;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>A rig a row of a table (CSV), paths as headers. Blank rows are passed over but counted.</summary>
internal sealed class RowEntries : EntryReader
{
    private bool isPassing;
    private TableHeader header = TableHeader.Empty;

    /// <summary>How the table is written.</summary>
    public TableStyle Style { get; private set; } = TableStyle.Plain;

    /// <inheritdoc/>
    protected override async ValueTask<ProblemResult?> Open(
        PipeReader arrived,
        CancellationToken stop
    )
    {
        while (true)
        {
            var read = await arrived.ReadAsync(stop);
            var (isRead, problem) = Header(read.Buffer, read.IsCompleted, out var consumed);
            // What is left of the buffer is to be looked at again only where something was taken off it.
            var isTaken = isRead || !consumed.Equals(read.Buffer.Start);
            arrived.AdvanceTo(consumed, isTaken ? consumed : read.Buffer.End);
            if (isRead)
            {
                return problem;
            }
        }
    }

    /// <inheritdoc/>
    public override (CheckRequest? Request, ProblemResult? Problem) Read(Entry entry, Faults faults)
    {
        if (!Utf8.IsValid(entry.Text!.Bytes))
        {
            return (null, ProblemOf.NotUtf8(entry.Line));
        }

        if (TableText.Cells(entry.Text.Bytes, Style.Delimiter) is not { } cells)
        {
            return (null, ProblemOf.LineEnds(entry.Line));
        }

        var row = new Row(cells);
        header.RefuseShape(row, faults);
        return faults.None ? (Request(row, faults), null) : (null, null);
    }

    /// <inheritdoc/>
    protected override bool TryTake(ref ReadOnlySequence<byte> rest, bool isLast, out Entry? entry)
    {
        entry = null;
        if (rest.IsEmpty)
        {
            return false;
        }

        if (isPassing)
        {
            return Pass(ref rest);
        }

        var (state, length) = RowEnd.Find(rest, (byte)Style.Delimiter, header.Width, isLast);
        if (state == RowState.Whole)
        {
            entry = Whole(rest.Slice(0, length));
            rest = rest.Slice(length);
            return true;
        }

        // A quote that is never closed, or not where a cell ends, spoils its own line and none after it.
        var line = rest.PositionOf((byte)'\n');
        var isSpoilt = state == RowState.Broken || rest.Length > BodyReader.MostBytes;
        if (isSpoilt && (line is not null || isLast))
        {
            entry = new(++Line, null, ProblemOf.Quotes(Line));
            rest = line is { } end ? rest.Slice(rest.GetPosition(1, end)) : rest.Slice(rest.End);
            return true;
        }

        return rest.Length > BodyReader.MostBytes && TakeTooLong(ref rest, out entry);
    }

    private bool TakeTooLong(ref ReadOnlySequence<byte> rest, out Entry? entry)
    {
        entry = TooLong(++Line);
        isPassing = true;
        return Pass(ref rest);
    }

    /// <summary>Passes over the rest of a line that is too long.</summary>
    private bool Pass(ref ReadOnlySequence<byte> rest)
    {
        var line = rest.PositionOf((byte)'\n');
        isPassing = line is null;
        rest = line is { } end ? rest.Slice(rest.GetPosition(1, end)) : rest.Slice(rest.End);
        return true;
    }

    private Entry? Whole(in ReadOnlySequence<byte> row)
    {
        var first = ++Line;
        Line += Math.Max(0, Lines(row) - 1);
        return row.Length > BodyReader.MostBytes ? TooLong(first)
            : IsBlankRow(row) ? null
            : Take(first, row) with { LastLine = Line };
    }

    private bool IsBlankRow(in ReadOnlySequence<byte> row)
    {
        ReadOnlySpan<byte> blank = [(byte)Style.Delimiter, .. " \t\r\n"u8];
        foreach (var piece in row)
        {
            if (piece.Span.ContainsAnyExcept(blank))
            {
                return false;
            }
        }

        return true;
    }

    private static long Lines(in ReadOnlySequence<byte> row)
    {
        var lines = 0L;
        foreach (var piece in row)
        {
            lines += piece.Span.Count((byte)'\n');
        }

        return lines;
    }

    private CheckRequest? Request(Row row, Faults faults)
    {
        var text = new ArrayBufferWriter<byte>(1024);
        using (var json = new Utf8JsonWriter(text))
        {
            header.Rig.Write(json, row, faults);
        }

        return RequestReader.Read<CheckRequest>(text.WrittenSpan, faults).Request;
    }

    /// <summary>Reads the header, once it has arrived.</summary>
    private (bool IsRead, ProblemResult? Problem) Header(
        in ReadOnlySequence<byte> arrived,
        bool isLast,
        out SequencePosition consumed
    )
    {
        consumed = arrived.Start;
        var line = arrived.PositionOf((byte)'\n');
        if (line is null && !isLast)
        {
            return arrived.Length > BodyReader.MostBytes ? (true, ProblemOf.Size()) : (false, null);
        }

        var end = line is { } at ? arrived.GetPosition(1, at) : arrived.End;
        var bytes = arrived.Slice(0, end).ToArray();
        consumed = end;
        Line++;
        return bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || !Utf8.IsValid(bytes)
            ? (true, ProblemOf.NotUtf8(Line))
            : Header(Encoding.UTF8.GetString(bytes), line is null);
    }

    private (bool IsRead, ProblemResult? Problem) Header(string text, bool isLast)
    {
        if (Line == 1 && text.StartsWith('\uFEFF'))
        {
            Style = Style with { HasMark = true };
            text = text[1..];
        }

        if (text.StartsWith("sep=", StringComparison.Ordinal) || text.Trim(",;\t\r\n ").Length == 0)
        {
            return isLast ? (true, ProblemOf.NoHeader()) : (false, null);
        }

        Style = Style with { Delimiter = TableStyle.DelimiterOf(text) };
        if (TableText.Cells(Encoding.UTF8.GetBytes(text), Style.Delimiter) is not { } headings)
        {
            return (true, ProblemOf.LineEnds(Line));
        }

        var faults = new Faults();
        header = TableHeader.Read(headings, Style.IsDecimalComma, faults);
        return (true, faults.None ? null : ProblemOf.Request(faults));
    }
}
