using System.Buffers;
using System.Threading.Tasks.Dataflow;
using Microsoft.Extensions.ObjectPool;
using PowerCheck.Api.Batches.Entries;
using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Limits;

namespace PowerCheck.Api.Batches;

/// <summary>
/// Answers many lines in their order while they arrive, several at once: entries come from the intake, outcomes go into the
/// answer, and no more are in work than the limit, so that a slow reader slows the work.
/// </summary>
internal sealed class Batch(
    BatchCall call,
    LineAnswerer answerer,
    BatchLimits limits,
    RequestIntake intake,
    AnswerSender sender,
    Ending ending
)
{
    private const int FlushBytes = 64 * 1024;

    private static readonly ObjectPool<ArrayBufferWriter<byte>> Texts = ObjectPool.Create(
        new TextPolicy()
    );

    private readonly Tally tally = new();

    /// <summary>Answers all lines and writes the tally.</summary>
    /// <param name="gone">When nobody waits any more.</param>
    public async Task Run(CancellationToken gone)
    {
        var work = new TransformBlock<Entry, Written>(
            entry => Work(entry, gone),
            new()
            {
                MaxDegreeOfParallelism = Environment.ProcessorCount,
                BoundedCapacity = limits.InFlight,
                EnsureOrdered = true,
                SingleProducerConstrained = true,
                CancellationToken = gone,
            }
        );
        call.Outcomes.Begin(sender.Answer);
        await sender.Send(gone);
        var taking = Take(work, gone);
        try
        {
            await Deliver(work, gone);
        }
        finally
        {
            await taking;
        }

        call.Outcomes.End(sender.Answer, tally.Write(ending.Reason, call.Entries.FirstLine));
        await sender.Send(gone);
    }

    private async Task Take(TransformBlock<Entry, Written> work, CancellationToken gone)
    {
        var most = Math.Min(limits.Lines, call.Outcomes.MostLines ?? long.MaxValue);
        var count = 0L;
        try
        {
            var entries = call.Entries.Entries(intake.Arrived, IsCut, ending.Stop);
            await foreach (var entry in entries)
            {
                if (ending.Stop.IsCancellationRequested)
                {
                    // What has arrived and is not in work yet is not answered any more.
                    entry.Dispose();
                    return;
                }

                if (++count > most)
                {
                    entry.Dispose();
                    ending.Reach(Reason.Lines(most));
                    break;
                }

                if (!await work.SendAsync(entry, gone))
                {
                    entry.Dispose();
                    return;
                }
            }

            ending.AllTaken();
        }
        catch (OperationCanceledException)
        {
            // The batch ends: what is in work is still answered.
        }
        finally
        {
            work.Complete();
        }
    }

    private bool IsCut() => ending.Reason is not null;

    private Written Work(Entry entry, CancellationToken gone)
    {
        using (entry)
        {
            var text = Texts.Get();
            return new(entry.LastLine, answerer.Answer(entry, text, gone), text);
        }
    }

    private async Task Deliver(TransformBlock<Entry, Written> work, CancellationToken gone)
    {
        var isFirst = true;
        while (await work.OutputAvailableAsync(gone))
        {
            while (work.TryReceive(out var written))
            {
                Put(written, isFirst);
                isFirst = false;
                if (sender.Answer.UnflushedBytes >= FlushBytes)
                {
                    await sender.Send(gone);
                }
            }

            await sender.Send(gone);
        }

        await work.Completion;
    }

    private void Put(Written written, bool isFirst)
    {
        if (!isFirst)
        {
            call.Outcomes.Between(sender.Answer);
        }

        sender.Answer.Write(written.Text.WrittenSpan);
        tally.Count(written.Line, written.Verdict);
        Texts.Return(written.Text);
    }

    /// <summary>An outcome as it will be sent.</summary>
    private sealed record Written(long Line, string? Verdict, ArrayBufferWriter<byte> Text);

    /// <summary>Keeps buffers for the next outcome, but not very large ones.</summary>
    private sealed class TextPolicy : PooledObjectPolicy<ArrayBufferWriter<byte>>
    {
        private const int MostKept = 1024 * 1024;

        public override ArrayBufferWriter<byte> Create() => new(FlushBytes);

        public override bool Return(ArrayBufferWriter<byte> obj)
        {
            obj.ResetWrittenCount();
            return obj.Capacity <= MostKept;
        }
    }
}
