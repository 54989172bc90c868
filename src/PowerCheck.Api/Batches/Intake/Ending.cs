namespace PowerCheck.Api.Batches.Intake;

/// <summary>Ends a batch before its request does, once; or says that nothing can end it any more.</summary>
internal sealed class Ending(CancellationToken gone) : IDisposable
{
    private static readonly Reason None = new("", "");

    private readonly CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(
        gone
    );
    private Reason? reason;

    /// <summary>Why the batch ends, or is not whole; null when nothing is amiss.</summary>
    public Reason? Reason =>
        Volatile.Read(ref reason) is { } why && !ReferenceEquals(why, None) ? why : null;

    /// <summary>Stops what reads the request: the batch ends, or the caller is gone.</summary>
    public CancellationToken Stop => stop.Token;

    /// <summary>Ends the batch; the first reason counts.</summary>
    public void Reach(Reason why)
    {
        Note(why);
        Close();
    }

    /// <summary>Notes why the batch is not whole, and lets what has arrived be answered; the first reason counts.</summary>
    public void Note(Reason why) => Interlocked.CompareExchange(ref reason, why, null);

    /// <summary>Says that all of the request was taken: what is reached from now on changes nothing.</summary>
    public void AllTaken() => Note(None);

    /// <summary>Stops what reads the request.</summary>
    public void Close() => stop.Cancel();

    /// <inheritdoc/>
    public void Dispose() => stop.Dispose();
}
