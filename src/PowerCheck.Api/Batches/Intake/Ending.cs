namespace PowerCheck.Api.Batches.Intake;

/// <summary>Ends a batch before its request does, once.</summary>
internal sealed class Ending(CancellationToken gone) : IDisposable
{
    private readonly CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(
        gone
    );
    private Reason? reason;

    /// <summary>Why the batch ends, or is not whole; null when nothing is amiss.</summary>
    public Reason? Reason => Volatile.Read(ref reason);

    /// <summary>Stops what reads the request: the batch ends, or the caller is gone.</summary>
    public CancellationToken Stop => stop.Token;

    /// <summary>Ends the batch; the first reason counts.</summary>
    public void Reach(Reason why)
    {
        Note(why);
        stop.Cancel();
    }

    /// <summary>Notes why the batch is not whole, and lets what has arrived be answered; the first reason counts.</summary>
    public void Note(Reason why) => Interlocked.CompareExchange(ref reason, why, null);

    /// <inheritdoc/>
    public void Dispose() => stop.Dispose();
}
