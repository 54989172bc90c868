using System.Diagnostics;
using System.IO.Pipelines;
using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Limits;

namespace PowerCheck.Api.Batches;

/// <summary>Sends an answer; notices a caller who does not read it, and hangs up on one who never will.</summary>
/// <param name="answer">Where the answer is written.</param>
/// <param name="inlet">The request, which may still arrive.</param>
/// <param name="intake">Is told whether the caller reads.</param>
/// <param name="limits">How long an answer may stay unread.</param>
/// <param name="hangUp">Hangs up.</param>
internal sealed class AnswerSender(
    PipeWriter answer,
    RequestInlet inlet,
    RequestIntake intake,
    BatchLimits limits,
    Action hangUp
)
{
    /// <summary>From when on an answer that is not sent counts as unread, assumed.</summary>
    private static readonly TimeSpan Blocked = TimeSpan.FromSeconds(1);

    private readonly TimeSpan most = TimeSpan.FromSeconds(limits.UnreadSeconds);

    /// <summary>Where to write what is sent next.</summary>
    public PipeWriter Answer => answer;

    /// <summary>Sends what is written, as fast as the caller reads.</summary>
    /// <param name="gone">When nobody waits any more.</param>
    public async ValueTask Send(CancellationToken gone)
    {
        var flush = answer.FlushAsync(gone);
        if (flush.IsCompleted)
        {
            await flush;
            return;
        }

        var sending = flush.AsTask();
        var since = Stopwatch.GetTimestamp();
        while (await Task.WhenAny(sending, Task.Delay(Blocked)) != sending)
        {
            intake.IsUnread();
            // Who still sends may read when all is sent.
            if (Stopwatch.GetElapsedTime(since) > most && inlet.Silence > most)
            {
                hangUp();
            }
        }

        await sending;
        intake.IsRead();
    }
}
