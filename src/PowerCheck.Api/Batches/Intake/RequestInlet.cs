using System.Diagnostics;
using System.IO.Pipelines;
using PowerCheck.Api.Limits;

namespace PowerCheck.Api.Batches.Intake;

/// <summary>What arrives of a request, within the limits of its bytes and of silence.</summary>
/// <param name="body">The request.</param>
/// <param name="limits">How much is taken in.</param>
/// <param name="ending">Ends the batch.</param>
internal sealed class RequestInlet(PipeReader body, BatchLimits limits, Ending ending)
{
    /// <summary>How long a caller may be silent before what is left of the request is no longer waited for, assumed.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(5);

    private long bytes;
    private long arrivedAt = Stopwatch.GetTimestamp();
    private volatile bool isComplete;
    private volatile bool isAnswered;

    /// <summary>For how long nothing has arrived.</summary>
    public TimeSpan Silence => Stopwatch.GetElapsedTime(Volatile.Read(ref arrivedAt));

    /// <summary>Says that the answer is written to its end.</summary>
    public void IsAnswered() => isAnswered = true;

    /// <summary>What arrives next, to be given back with <see cref="Taken"/>; null at the end of the request, or where it broke off.</summary>
    /// <exception cref="OperationCanceledException">The batch ends.</exception>
    public async ValueTask<ReadResult?> Next()
    {
        if (isComplete)
        {
            return null;
        }

        using var quiet = CancellationTokenSource.CreateLinkedTokenSource(ending.Stop);
        quiet.CancelAfter(TimeSpan.FromSeconds(limits.IdleSeconds));
        try
        {
            return await body.ReadAsync(quiet.Token);
        }
        catch (OperationCanceledException)
        {
            // Changes nothing when the batch ends anyway.
            ending.Reach(Reason.Idle(limits));
            throw;
        }
        catch (IOException)
        {
            ending.Note(Reason.CutOff);
            isComplete = true;
            return null;
        }
    }

    /// <summary>Gives back what arrived; it is taken.</summary>
    public void Taken(ReadResult read)
    {
        Volatile.Write(ref arrivedAt, Stopwatch.GetTimestamp());
        bytes += read.Buffer.Length;
        isComplete = read.IsCompleted;
        body.AdvanceTo(read.Buffer.End);
        if (bytes > limits.Bytes)
        {
            ending.Reach(Reason.Bytes(limits));
        }
    }

    /// <summary>Lets what is left of the request pass, until it ends or, once the answer is written, nothing more comes.</summary>
    /// <param name="gone">When nobody waits any more.</param>
    public async Task Discard(CancellationToken gone)
    {
        while (!isComplete)
        {
            using var quiet = CancellationTokenSource.CreateLinkedTokenSource(gone);
            quiet.CancelAfter(Grace);
            try
            {
                Taken(await body.ReadAsync(quiet.Token));
            }
            catch (OperationCanceledException) when (!isAnswered && !gone.IsCancellationRequested)
            {
                // The caller may be waiting for the answer.
            }
            catch (Exception broken) when (broken is OperationCanceledException or IOException)
            {
                return;
            }
        }
    }
}
