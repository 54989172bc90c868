using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pipeline;

/// <summary>What an endpoint tells the pipeline about its answers.</summary>
/// <param name="Cache">The Cache-Control header of its answers.</param>
/// <param name="OwnQuery">Whether it reads query parameters itself; the others have none.</param>
internal sealed record Answering(string Cache, bool OwnQuery)
{
    private static readonly string[] Json = ["application/json"];

    /// <summary>The media types in which it answers.</summary>
    public IReadOnlyList<string> Forms { get; init; } = Json;

    /// <summary>Words by which the query may ask for each form, in their order, which then counts instead of the header; empty where it may not.</summary>
    public IReadOnlyList<string> FormWords { get; init; } = [];

    /// <summary>Whether it reads from the query which form is wanted.</summary>
    public bool OwnForm => FormWords.Count > 0;

    /// <summary>The media type that the query of a request asks for; null when it asks for none, or for one that is not offered.</summary>
    public string? Asked(HttpRequest request)
    {
        for (var at = 0; at < FormWords.Count; at++)
        {
            if (
                request.Query[FormOption.Name] is [{ } word]
                && word.Equals(FormWords[at], StringComparison.Ordinal)
            )
            {
                return Forms[at];
            }
        }

        return null;
    }
}

/// <summary>Ways to tell it.</summary>
internal static class AnsweringExtensions
{
    /// <summary>Marks an endpoint as answering with JSON.</summary>
    public static RouteHandlerBuilder Answers(
        this RouteHandlerBuilder endpoint,
        string cache,
        bool ownQuery = false
    ) => endpoint.Answers(new Answering(cache, ownQuery));

    /// <summary>Marks how an endpoint answers.</summary>
    public static RouteHandlerBuilder Answers(
        this RouteHandlerBuilder endpoint,
        Answering answering
    ) =>
        endpoint
            .WithMetadata(answering)
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
