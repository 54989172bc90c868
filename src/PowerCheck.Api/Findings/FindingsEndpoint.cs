using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Findings;

/// <summary>Every code that a finding can have.</summary>
internal static class FindingsEndpoint
{
    private static readonly FindingKindsAnswer Everything = new()
    {
        Items = [.. FindingCatalogue.All.Select(Write)],
        BatterySafety = SafetyBlock.Plain,
    };

    public static void MapFindings(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet("/v1/findings", Get)
            .WithName("listFindings")
            .WithTags("Reference")
            .WithSummary("Every code that a finding can have")
            .WithDescription(
                "What is held against what, where the limit comes from, and what it means for the builder."
            )
            .Answers(Caching.Hour);

    private static Ok<FindingKindsAnswer> Get() => TypedResults.Ok(Everything);

    private static FindingKindAnswer Write(FindingKind kind) =>
        new()
        {
            Code = kind.Code,
            Part = kind.Part,
            Severity = Words.Of(kind.Severity),
            Effect = Words.Of(kind.Effect),
            Meaning = kind.Meaning,
            LimitFrom = kind.LimitFrom,
            Consequence = kind.Consequence,
            Judged = kind.Judged,
            Since = kind.Since,
            Sources = kind.Sources,
        };
}
