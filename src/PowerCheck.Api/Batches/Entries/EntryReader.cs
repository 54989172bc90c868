using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>Takes the rigs of a request apart, in the order in which they were sent.</summary>
internal abstract class EntryReader
{
    /// <summary>Where the next entry stands, from 1.</summary>
    protected long Line { get; set; }

    /// <summary>Where the first entry stands, or would.</summary>
    public long FirstLine { get; private set; }

    /// <summary>Reads what stands before the first rig.</summary>
    /// <param name="arrived">What arrived of the request.</param>
    /// <param name="ending">Ends the batch.</param>
    /// <returns>Why no rig can be read; null when they can, or the batch ends.</returns>
    public async ValueTask<ProblemResult?> Begin(PipeReader arrived, Ending ending)
    {
        try
        {
            return await Open(arrived, ending.Stop);
        }
        catch (OperationCanceledException) when (ending.Reason is not null)
        {
            return null;
        }
        finally
        {
            FirstLine = Line + 1;
        }
    }

    /// <summary>Reads what stands before the first rig.</summary>
    protected virtual ValueTask<ProblemResult?> Open(PipeReader arrived, CancellationToken stop) =>
        new((ProblemResult?)null);

    /// <summary>Reads one rig strictly, as a check by itself would; safe for several at once.</summary>
    /// <param name="entry">The rig.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    /// <returns>The request as far as it is right, and why it is not even readable; null when it is.</returns>
    public abstract (CheckRequest? Request, ProblemResult? Problem) Read(
        Entry entry,
        Faults faults
    );

    /// <summary>The rigs, as they arrive.</summary>
    /// <param name="arrived">What arrived of the request.</param>
    /// <param name="isCut">Whether the request ended too early, so that what is left of its end is no entry.</param>
    /// <param name="stop">Ends it.</param>
    public async IAsyncEnumerable<Entry> Entries(
        PipeReader arrived,
        Func<bool> isCut,
        [EnumeratorCancellation] CancellationToken stop
    )
    {
        while (true)
        {
            var read = await arrived.ReadAsync(stop);
            var rest = read.Buffer;
            while (TryTake(ref rest, read.IsCompleted && !isCut(), out var entry))
            {
                if (entry is not null)
                {
                    yield return entry;
                }
            }

            arrived.AdvanceTo(rest.Start, rest.End);
            if (read.IsCompleted)
            {
                yield break;
            }
        }
    }

    /// <summary>Takes what comes next off the buffer.</summary>
    /// <param name="rest">What arrived and was not taken yet.</param>
    /// <param name="isLast">Whether nothing more comes.</param>
    /// <param name="entry">The entry; null for what is none, such as a blank line.</param>
    /// <returns>Whether something was taken; false when more must arrive first.</returns>
    protected abstract bool TryTake(ref ReadOnlySequence<byte> rest, bool isLast, out Entry? entry);

    /// <summary>An entry of its own text.</summary>
    protected static Entry Take(long line, in ReadOnlySequence<byte> text)
    {
        var body = new Body((int)text.Length);
        text.CopyTo(body.Bytes);
        return new(line, body, null);
    }

    /// <summary>An entry that has more bytes than a rig may have.</summary>
    protected static Entry TooLong(long line) => new(line, null, ProblemOf.LineSize(line));

    /// <summary>Whether there is nothing but white space.</summary>
    protected static bool IsBlank(in ReadOnlySequence<byte> text)
    {
        foreach (var piece in text)
        {
            if (piece.Span.ContainsAnyExcept(" \t\r\n"u8))
            {
                return false;
            }
        }

        return true;
    }
}
