using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Door;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Checks;

/// <summary>The main job: check a rig.</summary>
internal static class ChecksEndpoint
{
    public static void MapChecks(this IEndpointRouteBuilder routes) =>
        routes
            .MapPost("/v1/checks", Post)
            .WithName("checkRig")
            .WithTags("Checks")
            .WithSummary("Check a rig")
            .WithDescription(
                "Computes whether motor, speed controller, pack and gearing work together, and says why. A rig that would burn is an answer with findings, not a problem."
            )
            .Accepts<CheckRequest>("application/json")
            .Answers(Caching.None, ownQuery: true)
            .Limited(LimitsSetup.Checks)
            .ProducesProblems(
                StatusCodes.Status400BadRequest,
                StatusCodes.Status413PayloadTooLarge,
                StatusCodes.Status415UnsupportedMediaType,
                StatusCodes.Status503ServiceUnavailable
            );

    private static Task<Results<Ok<CheckAnswer>, ProblemResult>> Post(
        HttpContext context,
        CheckDoor door
    ) => PostedBody.Answer(context, door.Read, Answer);

    private static CheckAnswer Answer(CheckCall call, CancellationToken stop) =>
        AnswerWriter.Write(call.Request.Id, call.Run(stop), call.Options.AllFindings);
}
