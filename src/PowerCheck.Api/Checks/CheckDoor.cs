using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Rules;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;
using PowerCheck.Model.Checks;

namespace PowerCheck.Api.Checks;

/// <summary>Reads everything that a call for a check says, and finds everything wrong with it.</summary>
internal sealed class CheckDoor(QueryDoor queries)
{
    /// <summary>Reads body and query parameters.</summary>
    /// <returns>The call, and what is wrong with it; null when nothing is.</returns>
    public (CheckCall Call, ProblemResult? Problem) Read(
        ReadOnlySpan<byte> body,
        IQueryCollection query
    )
    {
        var faults = new Faults();
        queries.RefuseUnknown(query, CheckOptions.Names, faults);
        var options = CheckOptions.Of(query, faults);
        var (request, malformed) = RequestReader.Read<CheckRequest>(body, faults);
        if (malformed is not null)
        {
            return (new(new(), options), ProblemOf.Reading(malformed));
        }

        if (request is not null)
        {
            CheckRules.Apply(request, faults);
        }

        return (new(request ?? new(), options), faults.None ? null : ProblemOf.Request(faults));
    }
}

/// <summary>A call for a check.</summary>
/// <param name="Request">The rig, as far as it was right.</param>
/// <param name="Options">How it is checked and what of it is told.</param>
internal readonly record struct CheckCall(CheckRequest Request, CheckOptions Options)
{
    /// <summary>Checks the rig.</summary>
    /// <param name="stop">Stops it when nobody waits any more.</param>
    public CheckResult Run(CancellationToken stop) =>
        Check.Run(RigMapper.Map(Request), Options.Spread, Options.Remedies, stop);
}
