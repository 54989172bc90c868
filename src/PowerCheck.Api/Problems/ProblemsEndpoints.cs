using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Problems;

/// <summary>The kinds of problem, so that the address in a problem's type leads somewhere.</summary>
internal static class ProblemsEndpoints
{
    public static void MapProblems(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/v1/problems", List)
            .WithName("listProblems")
            .WithTags("Problems")
            .WithSummary("Every kind of problem")
            .WithDescription("What a problem's type can be, with what it means.")
            .Answers(Caching.None);
        routes
            .MapGet("/problems/{slug}", Get)
            .WithName("getProblem")
            .WithTags("Problems")
            .WithSummary("One kind of problem")
            .WithDescription("The address that a problem gives in type.")
            .Answers(Caching.None)
            .ProducesProblems(StatusCodes.Status404NotFound);
    }

    private static Ok<ProblemKindsAnswer> List() =>
        TypedResults.Ok(
            new ProblemKindsAnswer { Items = ProblemKinds.All, BatterySafety = SafetyBlock.Plain }
        );

    private static Results<Ok<ProblemKindAnswer>, ProblemResult> Get(string slug) =>
        ProblemKinds.All.FirstOrDefault(kind =>
            string.Equals(kind.Slug, slug, StringComparison.Ordinal)
        )
            is { } kind
            ? TypedResults.Ok(
                new ProblemKindAnswer { Kind = kind, BatterySafety = SafetyBlock.Plain }
            )
            : new ProblemResult(
                ProblemKinds.NotFound,
                "No kind of problem has this name. /v1/problems lists them."
            );
}
