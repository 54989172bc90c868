using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Shortlists;

/// <summary>Reads everything that a call for a shortlist says, and finds everything wrong with it.</summary>
internal sealed class ShortlistDoor(QueryDoor queries)
{
    private static readonly string[] Options = [SpreadOption.Name];

    /// <summary>Reads body and query parameters.</summary>
    /// <returns>The call, and what is wrong with it; null when nothing is.</returns>
    public (ShortlistCall Call, ProblemResult? Problem) Read(
        ReadOnlySpan<byte> body,
        IQueryCollection query
    )
    {
        var faults = new Faults();
        queries.RefuseUnknown(query, Options, faults);
        var spread = SpreadOption.Of(query, faults);
        var (request, malformed) = RequestReader.Read<ShortlistRequest>(body, faults);
        if (malformed is not null)
        {
            return (new(new(), default, spread), ProblemOf.Reading(malformed));
        }

        var seek = faults.Touch("seek") ? null : Word<SoughtPart>.Of(request?.Seek);
        if (request is not null)
        {
            ShortlistRules.Apply(request, seek, faults);
        }

        return (
            new(request ?? new(), seek ?? default, spread),
            faults.None ? null : ProblemOf.Request(faults)
        );
    }
}

/// <summary>A call for a shortlist.</summary>
/// <param name="Request">The search, as far as it was right.</param>
/// <param name="Seek">The part that is sought.</param>
/// <param name="Spread">How the spread of the figures is carried to the limits.</param>
internal readonly record struct ShortlistCall(
    ShortlistRequest Request,
    SoughtPart Seek,
    SpreadMethod Spread
);
