using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Rules;
using PowerCheck.Api.Door;
using PowerCheck.Model.Checks;

namespace PowerCheck.Api.Checks;

/// <summary>Reads everything that a call for a check says, and finds everything wrong with it.</summary>
internal sealed class CheckDoor(QueryDoor queries)
{
    /// <summary>Reads body and query parameters.</summary>
    /// <param name="body">The body.</param>
    /// <param name="query">The query.</param>
    /// <param name="others">Names of the options that are read elsewhere.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    /// <returns>The call, and where the body stopped being JSON; null when all of it was.</returns>
    public (CheckCall Call, Malformed? Malformed) Read(
        ReadOnlySpan<byte> body,
        IQueryCollection query,
        IReadOnlyList<string> others,
        Faults faults
    )
    {
        queries.RefuseUnknown(query, [.. CheckOptions.Names, .. others], faults);
        return Read(body, CheckOptions.Of(query, faults), faults);
    }

    /// <summary>Reads a body.</summary>
    /// <param name="body">The body.</param>
    /// <param name="options">The options.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    /// <returns>The call, and where the body stopped being JSON; null when all of it was.</returns>
    public static (CheckCall Call, Malformed? Malformed) Read(
        ReadOnlySpan<byte> body,
        CheckOptions options,
        Faults faults
    )
    {
        var (request, malformed) = RequestReader.Read<CheckRequest>(body, faults);
        if (request is not null && malformed is null)
        {
            CheckRules.Apply(request, faults);
        }

        return (new(request ?? new(), options), malformed);
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
