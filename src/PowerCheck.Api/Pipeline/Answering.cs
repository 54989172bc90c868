using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pipeline;

/// <summary>What an endpoint tells the pipeline about its answers, which are JSON.</summary>
/// <param name="Cache">The Cache-Control header of its answers.</param>
/// <param name="OwnQuery">Whether it reads query parameters itself; the others have none.</param>
internal sealed record Answering(string Cache, bool OwnQuery);

/// <summary>Ways to tell it.</summary>
internal static class AnsweringExtensions
{
    /// <summary>Marks an endpoint as answering with JSON.</summary>
    public static RouteHandlerBuilder Answers(
        this RouteHandlerBuilder endpoint,
        string cache,
        bool ownQuery = false
    ) =>
        endpoint
            .WithMetadata(new Answering(cache, ownQuery))
            .ProducesProblems(
                StatusCodes.Status405MethodNotAllowed,
                StatusCodes.Status406NotAcceptable,
                StatusCodes.Status422UnprocessableEntity,
                StatusCodes.Status500InternalServerError
            );

    /// <summary>Puts problems with these statuses into the document.</summary>
    public static RouteHandlerBuilder ProducesProblems(
        this RouteHandlerBuilder endpoint,
        params ReadOnlySpan<int> statuses
    )
    {
        foreach (var status in statuses)
        {
            endpoint.Produces<Problem>(status, "application/problem+json");
        }

        return endpoint;
    }
}
