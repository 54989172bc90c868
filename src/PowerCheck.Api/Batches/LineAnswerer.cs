using System.Buffers;
using PowerCheck.Api.Batches.Entries;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Rules;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Door;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches;

/// <summary>Answers one line of many; for several at once. Whatever is wrong with a line is its own problem.</summary>
/// <param name="call">The call.</param>
/// <param name="limits">How long a rig may take.</param>
/// <param name="log">Is told of faults of ours.</param>
internal sealed class LineAnswerer(BatchCall call, CheckLimits limits, ILogger log)
{
    /// <summary>Checks the rig, or says why not.</summary>
    /// <param name="entry">The line.</param>
    /// <param name="text">Where to write what became of it.</param>
    /// <param name="gone">When nobody waits any more.</param>
    /// <returns>The verdict; null for a problem.</returns>
    public string? Answer(Entry entry, ArrayBufferWriter<byte> text, CancellationToken gone)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(gone);
        stop.CancelAfter(TimeSpan.FromSeconds(limits.Seconds));
        try
        {
            var outcome = Answered(entry, stop.Token);
            call.Outcomes.Write(text, outcome);
            return outcome.Report?.Verdict;
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            Instead(entry, text, ProblemOf.TooLong(limits.Seconds));
        }
        // A fault of ours in one line must not cost the others their answers.
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            log.LogError(failure, "Line {Line} could not be answered", entry.Line);
            Instead(entry, text, ProblemOf.Internal());
        }

        return null;
    }

    private void Instead(Entry entry, ArrayBufferWriter<byte> text, ProblemResult problem)
    {
        text.ResetWrittenCount();
        call.Outcomes.Write(text, Problem(entry, null, problem));
    }

    private Outcome Answered(Entry entry, CancellationToken stop)
    {
        if (entry.Problem is { } unreadable)
        {
            return Problem(entry, null, unreadable);
        }

        var faults = new Faults();
        var (request, problem) = call.Entries.Read(entry, faults);
        if (problem is not null)
        {
            return Problem(entry, request, problem);
        }

        if (request is not null)
        {
            CheckRules.Apply(request, faults);
        }

        if (request is null || !faults.None)
        {
            return Problem(entry, request, ProblemOf.Request(faults));
        }

        var result = new CheckCall(request, call.Options).Run(stop);
        var report = AnswerWriter.Report(request.Id, result, call.Options.AllFindings);
        return new(entry.Line, request.Id, report, null);
    }

    private static Outcome Problem(Entry entry, CheckRequest? request, ProblemResult problem) =>
        new(entry.Line, request?.Id, null, problem.Report());
}
