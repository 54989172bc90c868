using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Rules;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Checks;

/// <summary>Reads everything that a call for a check says, and finds everything wrong with it.</summary>
internal sealed class CheckDoor(QueryDoor queries)
{
    private const string Findings = "findings";
    private const string Remedies = "remedies";
    private static readonly string[] Options = [Findings, SpreadOption.Name, Remedies];
    private static readonly string[] FindingsWords = ["all"];
    private static readonly string[] RemediesWords = ["none"];

    /// <summary>Reads body and query parameters.</summary>
    /// <returns>The call, and what is wrong with it; null when nothing is.</returns>
    public (CheckCall Call, ProblemResult? Problem) Read(
        ReadOnlySpan<byte> body,
        IQueryCollection query
    )
    {
        var faults = new Faults();
        queries.RefuseUnknown(query, Options, faults);
        var all = QueryDoor.Word(query, Findings, FindingsWords, faults) is not null;
        var spread = SpreadOption.Of(query, faults);
        var remedies = QueryDoor.Word(query, Remedies, RemediesWords, faults) is null;
        var (request, malformed) = RequestReader.Read<CheckRequest>(body, faults);
        if (malformed is not null)
        {
            return (new(new(), all, spread, remedies), ProblemOf.Reading(malformed));
        }

        if (request is not null)
        {
            CheckRules.Apply(request, faults);
        }

        return (
            new(request ?? new(), all, spread, remedies),
            faults.None ? null : ProblemOf.Request(faults)
        );
    }
}

/// <summary>A call for a check.</summary>
/// <param name="Request">The rig, as far as it was right.</param>
/// <param name="AllFindings">Whether those that hold without a caution are wanted too.</param>
/// <param name="Spread">How the spread of the figures is carried to the limits.</param>
/// <param name="Remedies">Whether it is sought what would make the limits hold that do not.</param>
internal readonly record struct CheckCall(
    CheckRequest Request,
    bool AllFindings,
    SpreadMethod Spread,
    bool Remedies
);
