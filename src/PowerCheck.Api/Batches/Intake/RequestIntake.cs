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
/// <param name="body">The request.</param>
/// <param name="limits">How much is taken in.</param>
/// <param name="ending">Ends the batch.</param>
internal sealed class RequestIntake(PipeReader body, BatchLimits limits, Ending ending)
{
    private const int PieceBytes = 64 * 1024;

    /// <summary>How long a piece may wait before the rest of the request is put aside.</summary>
    private static readonly TimeSpan Wait = TimeSpan.FromSeconds(0.5);

    /// <summary>How long the answer may stay unread once all room for what is put aside is taken.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly Pipe pipe = new(
        new(
            pauseWriterThreshold: 4 * PieceBytes,
            resumeWriterThreshold: 2 * PieceBytes,
            minimumSegmentSize: PieceBytes,
            useSynchronizationContext: false
        )
    );
    private long bytes;
    private long unreadSince;
    private volatile bool isComplete;

    /// <summary>What arrived, in order.</summary>
    public PipeReader Arrived => pipe.Reader;

    /// <summary>Whether all of the request has been taken in.</summary>
    public bool IsComplete => isComplete;

    /// <summary>Says that the caller does not read the answer; counted from the first time on.</summary>
    public void IsUnread() =>
        Interlocked.CompareExchange(ref unreadSince, Stopwatch.GetTimestamp(), 0);

    /// <summary>Says that the caller reads.</summary>
    public void IsRead() => Volatile.Write(ref unreadSince, 0);

    /// <summary>
    /// Takes in the request until all of it is handed on or the batch ends, and then lets the rest of it pass, so that a caller
    /// who sends all before reading gets to the answer.
    /// </summary>
    /// <param name="finished">When the answer is written.</param>
    public async Task Run(CancellationToken finished)
    {
        var putAside = Task.CompletedTask;
        try
        {
            if (await HandOn() is { } waiting)
            {
                putAside = await TakeInAtOnce(waiting);
            }
        }
        catch (OperationCanceledException)
        {
            // The batch ends: what was handed on is all that counts.
        }
        catch (IOException)
        {
            ending.Reach(Reason.CutOff);
        }

        await Task.WhenAll(Complete(putAside), Discard(finished));
    }

    private async Task Complete(Task putAside)
    {
        await putAside;
        await pipe.Writer.CompleteAsync();
    }

    /// <summary>Hands on piece by piece.</summary>
    /// <returns>The piece that was not wanted for a while; null at the end of the request.</returns>
    private async Task<Task<FlushResult>?> HandOn()
    {
        while (!isComplete)
        {
            var read = await Next();
            foreach (var piece in read.Buffer)
            {
                pipe.Writer.Write(piece.Span);
            }

            Taken(read);
            var wanted = pipe.Writer.FlushAsync(ending.Stop);
            if (!wanted.IsCompletedSuccessfully)
            {
                var waiting = wanted.AsTask();
                if (!await Ends(waiting))
                {
                    return waiting;
                }
            }
        }

        return null;
    }

    private async Task<Task> TakeInAtOnce(Task<FlushResult> waiting)
    {
        if (Open() is not { } file)
        {
            ending.Note(Reason.Aside(limits));
            return waiting;
        }

        var handingOn = HandOn(file, waiting);
        try
        {
            while (!isComplete)
            {
                var read = await Next();
                var isRoom = await PutAside(file, read.Buffer);
                Taken(read);
                if (!isRoom)
                {
                    ending.Note(Reason.Aside(limits));
                    break;
                }
            }
        }
        finally
        {
            file.End();
        }

        return handingOn;
    }

    private static async Task<bool> Ends(Task waiting)
    {
        try
        {
            await waiting.WaitAsync(Wait);
            return true;
        }
        catch (TimeoutException)
        {
            return false;
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

    private async ValueTask<bool> PutAside(AsideFile file, ReadOnlySequence<byte> buffer)
    {
        try
        {
            return await Put(file, buffer);
        }
        catch (IOException)
        {
            // No room on the disk: as if the bound were reached.
            return false;
        }
    }

    private async ValueTask<bool> Put(AsideFile file, ReadOnlySequence<byte> buffer)
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
        using (file)
        {
            try
            {
                await waiting;
                while (
                    await file.Read(pipe.Writer.GetMemory(PieceBytes), ending.Stop)
                        is var count
                            and > 0
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
        }
    }

    private async ValueTask<ReadResult> Next()
    {
        using var quiet = CancellationTokenSource.CreateLinkedTokenSource(ending.Stop);
        quiet.CancelAfter(TimeSpan.FromSeconds(limits.IdleSeconds));
        try
        {
            return await body.ReadAsync(quiet.Token);
        }
        catch (OperationCanceledException)
        {
            // Has no effect when the batch ends anyway.
            ending.Reach(Reason.Idle(limits));
            throw;
        }
    }

    private void Taken(ReadResult read)
    {
        bytes += read.Buffer.Length;
        isComplete = read.IsCompleted;
        body.AdvanceTo(read.Buffer.End);
        if (bytes > limits.Bytes)
        {
            ending.Reach(Reason.Bytes(limits));
        }
    }

    private bool IsStuck() =>
        Volatile.Read(ref unreadSince) is var since and > 0
        && Stopwatch.GetElapsedTime(since) >= Patience;

    private async Task Discard(CancellationToken finished)
    {
        try
        {
            while (!isComplete)
            {
                var read = await body.ReadAsync(finished);
                body.AdvanceTo(read.Buffer.End);
                isComplete = read.IsCompleted;
            }
        }
        catch (Exception broken) when (broken is OperationCanceledException or IOException)
        {
            // The answer is written, or the caller is gone.
        }
    }
}
