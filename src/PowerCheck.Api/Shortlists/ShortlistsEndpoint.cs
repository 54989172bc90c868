using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Door;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;
using PowerCheck.Model.Shortlists;

namespace PowerCheck.Api.Shortlists;

/// <summary>Choosing a part.</summary>
internal static class ShortlistsEndpoint
{
    public static void MapShortlists(this IEndpointRouteBuilder routes) =>
        routes
            .MapPost("/v1/shortlists", Post)
            .WithName("rankParts")
            .WithTags("Shortlists")
            .WithSummary("Choose a part")
            .WithDescription(
                "Computes what a motor, speed controller, pack or pinion must be able to do in a rig, with the limit that sets each figure, and ranks candidates by checking the rig with each."
            )
            .Accepts<ShortlistRequest>("application/json")
            .Answers(Caching.None, ownQuery: true)
            .Limited(LimitsSetup.Shortlists)
            .ProducesProblems(
                StatusCodes.Status400BadRequest,
                StatusCodes.Status413PayloadTooLarge,
                StatusCodes.Status415UnsupportedMediaType,
                StatusCodes.Status503ServiceUnavailable
            );

    private static Task<Results<Ok<ShortlistAnswer>, ProblemResult>> Post(
        HttpContext context,
        ShortlistDoor door
    ) =>
        PostedBody.Answer<ShortlistCall, ShortlistAnswer>(
            context,
            door.Read,
            (call, stop) => Answer(context.Request, call, stop)
        );

    private static ShortlistAnswer Answer(
        HttpRequest request,
        ShortlistCall call,
        CancellationToken stop
    )
    {
        var open = ShortlistMapper.Open(call.Request, call.Seek);
        var shortlist = Shortlist.Of(
            open,
            call.Seek,
            call.Request.Fitted is { } fitted ? ShortlistMapper.With(open, fitted) : null,
            ShortlistMapper.Candidates(call.Request, open),
            Word<ShortlistOrder>.Of(call.Request.Order) ?? default,
            call.Spread,
            stop
        );
        return ShortlistWriter.Write(
            shortlist,
            call.Request.Limit ?? int.MaxValue,
            id => CandidateLinks.Of(request, call, id)
        );
    }
}
