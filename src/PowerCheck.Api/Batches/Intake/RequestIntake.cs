using System.Buffers;
using System.Diagnostics;
using System.IO.Pipelines;
using PowerCheck.Api.Limits;

namespace PowerCheck.Api.Batches.Intake;

/// <summary>
/// Takes in a request: hands on what arrives, no faster than it is wanted. When something is not wanted for a while, because the
/// caller does not read the answer or the rigs take long, it takes in everything at once and puts aside what is not wanted yet,
/// so that a caller who sends all before reading never stalls, and one who hangs up is noticed.
/// </summary>
/// <param name="inlet">The request.</param>
/// <param name="limits">How much is put aside.</param>
/// <param name="ending">Ends the batch.</param>
internal sealed class RequestIntake(RequestInlet inlet, BatchLimits limits, Ending ending)
{
    private const int PieceBytes = 64 * 1024;

    /// <summary>How long a piece may wait before the rest of the request is put aside, assumed: well under the second in which a hang-up is to be noticed.</summary>
    private static readonly TimeSpan Wait = TimeSpan.FromSeconds(0.5);

    /// <summary>How long the answer may stay unread once all room for what is put aside is taken, assumed.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly Pipe pipe = new(
        new(
            pauseWriterThreshold: 4 * PieceBytes,
            resumeWriterThreshold: 2 * PieceBytes,
            minimumSegmentSize: PieceBytes,
            useSynchronizationContext: false
        )
    );
    private long unreadSince;

    /// <summary>What arrived, in order.</summary>
    public PipeReader Arrived => pipe.Reader;

    /// <summary>Says that the caller does not read the answer; counted from the first time on.</summary>
    public void IsUnread() =>
        Interlocked.CompareExchange(ref unreadSince, Stopwatch.GetTimestamp(), 0);

    /// <summary>Says that the caller reads.</summary>
    public void IsRead() => Volatile.Write(ref unreadSince, 0);

    /// <summary>
    /// Takes in the request until all of it is handed on or the batch ends, and then lets the rest of it pass, so that a caller
    /// who sends all before reading gets to the answer.
    /// </summary>
    /// <param name="gone">When nobody waits any more.</param>
    public async Task Run(CancellationToken gone)
    {
        try
        {
            if (await HandOn() is { } waiting)
            {
                await TakeInAtOnce(waiting, gone);
            }
        }
        catch (OperationCanceledException)
        {
            // The batch ends: what was handed on is all that counts.
        }
        finally
        {
            await pipe.Writer.CompleteAsync();
        }

        await inlet.Discard(gone);
    }

    /// <summary>Hands on piece by piece.</summary>
    /// <returns>The piece that was not wanted for a while; null at the end of the request.</returns>
    private async Task<Task<FlushResult>?> HandOn()
    {
        while (await inlet.Next() is { } read)
        {
            foreach (var piece in read.Buffer)
            {
                pipe.Writer.Write(piece.Span);
            }

            inlet.Taken(read);
            var waiting = pipe.Writer.FlushAsync(ending.Stop).AsTask();
            if (!await Ends(waiting))
            {
                return waiting;
            }
        }

        return null;
    }

    private static async ValueTask<bool> Ends(Task waiting)
    {
        if (!waiting.IsCompleted)
        {
            await Task.WhenAny(waiting, Task.Delay(Wait));
        }

        return waiting.IsCompleted;
    }

    private async Task TakeInAtOnce(Task<FlushResult> waiting, CancellationToken gone)
    {
        using var file = Open();
        if (file is null)
        {
            ending.Note(Reason.Aside(limits));
            await waiting;
            return;
        }

        var handingOn = HandOn(file, waiting);
        try
        {
            if (!await PutAside(file))
            {
                ending.Note(Reason.Aside(limits));
                file.End();
                await inlet.Discard(gone);
            }
        }
        finally
        {
            file.End();
            await handingOn;
        }
    }

    private AsideFile? Open()
    {
        try
        {
            return new(limits.AsideBytes);
        }
        catch (Exception noFile) when (noFile is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Puts all aside that arrives.</summary>
    /// <returns>False when there is no room for it.</returns>
    private async ValueTask<bool> PutAside(AsideFile file)
    {
        while (await inlet.Next() is { } read)
        {
            try
            {
                if (!await PutAside(file, read.Buffer))
                {
                    return false;
                }
            }
            catch (IOException)
            {
                // No room on the disk: as if the bound were reached.
                return false;
            }
            finally
            {
                inlet.Taken(read);
            }
        }

        return true;
    }

    private async ValueTask<bool> PutAside(AsideFile file, ReadOnlySequence<byte> buffer)
    {
        foreach (var piece in buffer)
        {
            for (var rest = piece; rest.Length > 0; )
            {
                var count = await file.Write(rest, ending.Stop);
                rest = rest[count..];
                if (count == 0 && !await file.Freed(Patience, ending.Stop) && IsStuck())
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Hands on what is put aside.</summary>
    private async Task HandOn(AsideFile file, Task<FlushResult> waiting)
    {
        try
        {
            await waiting;
            while (
                await file.Read(pipe.Writer.GetMemory(PieceBytes), ending.Stop) is var count and > 0
            )
            {
                pipe.Writer.Advance(count);
                await pipe.Writer.FlushAsync(ending.Stop);
            }
        }
        catch (OperationCanceledException)
        {
            // The batch ends: what was handed on is all that counts.
        }
        catch (IOException)
        {
            ending.Reach(Reason.Aside(limits));
        }
        finally
        {
            // Whoever answers need not wait until the caller ends the request.
            await pipe.Writer.CompleteAsync();
        }
    }

    private bool IsStuck() =>
        Volatile.Read(ref unreadSince) is var since and > 0
        && Stopwatch.GetElapsedTime(since) >= Patience;
}
