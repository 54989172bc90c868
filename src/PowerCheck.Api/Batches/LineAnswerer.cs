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
internal sealed class LineAnswerer(
    EntryReader entries,
    CheckOptions options,
    CheckLimits limits,
    ILogger log
)
{
    /// <summary>Checks the rig, or says why not.</summary>
    /// <param name="entry">The line.</param>
    /// <param name="gone">When nobody waits any more.</param>
    public Outcome Answer(Entry entry, CancellationToken gone)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(gone);
        stop.CancelAfter(TimeSpan.FromSeconds(limits.Seconds));
        try
        {
            return Answered(entry, stop.Token);
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            return Problem(entry, null, ProblemOf.TooLong(limits.Seconds));
        }
        // A fault of ours in one line must not cost the others their answers.
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            log.LogError(failure, "Line {Line} could not be answered", entry.Line);
            return Problem(entry, null, ProblemOf.Internal());
        }
    }

    private Outcome Answered(Entry entry, CancellationToken stop)
    {
        if (entry.Problem is { } unreadable)
        {
            return Problem(entry, null, unreadable);
        }

        var faults = new Faults();
        var (request, problem) = entries.Read(entry, faults);
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

        var result = new CheckCall(request, options).Run(stop);
        var report = AnswerWriter.Report(request.Id, result, options.AllFindings);
        return new(entry.Line, request.Id, report, null);
    }

    private static Outcome Problem(Entry entry, CheckRequest? request, ProblemResult problem) =>
        new(entry.Line, request?.Id, null, problem.Report());
}
