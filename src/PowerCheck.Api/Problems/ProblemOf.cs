using PowerCheck.Api.Door;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Problems;

/// <summary>Makes the problems that the service answers with.</summary>
internal static class ProblemOf
{
    private static readonly string[] JsonOnly = ["application/json"];

    /// <summary>A body that is not JSON text.</summary>
    public static ProblemResult Reading(Malformed malformed) =>
        new(
            ProblemKinds.Malformed,
            $"Line {malformed.Line}, column {malformed.Column}: {malformed.Reason}."
        )
        {
            Malformed = malformed,
        };

    /// <summary>A request that could be read but is wrong.</summary>
    public static ProblemResult Request(Faults faults) =>
        new(
            ProblemKinds.Invalid,
            faults.All.Count == 1
                ? "One thing is wrong; see errors."
                : $"{(faults.Truncated ? "More than " : "")}{faults.All.Count} things are wrong; see errors."
        )
        {
            Faults = faults,
        };

    /// <summary>An Accept header that rules out what the address offers.</summary>
    public static ProblemResult Accept() =>
        new(
            ProblemKinds.NotAcceptable,
            "The address answers as application/json, which the Accept header rules out."
        )
        {
            Forms = JsonOnly,
        };

    /// <summary>A body in a form that is not read.</summary>
    public static ProblemResult MediaType() =>
        new(
            ProblemKinds.UnsupportedMediaType,
            "The body must be application/json in UTF-8, not compressed, and Content-Type must say so."
        )
        {
            Forms = JsonOnly,
        };

    /// <summary>A body with too many bytes.</summary>
    public static ProblemResult Size() =>
        new(ProblemKinds.TooLarge, $"The body may have {BodyReader.MostBytes} bytes and has more.");

    /// <summary>A status that the server or the framework set.</summary>
    public static ProblemResult Status(HttpContext context) =>
        context.Response.StatusCode switch
        {
            StatusCodes.Status404NotFound => new(
                ProblemKinds.NotFound,
                $"Nothing is at {context.Request.Path.ToUriComponent()}. The document at /openapi/v1.json lists the addresses."
            ),
            StatusCodes.Status405MethodNotAllowed => new(
                ProblemKinds.MethodNotAllowed,
                $"The address answers {HeadAsGet.Allowed(context.Response.Headers)}."
            ),
            StatusCodes.Status413PayloadTooLarge => Size(),
            StatusCodes.Status415UnsupportedMediaType => MediaType(),
            var status => new(ProblemKinds.Of(status), ProblemKinds.Of(status).Meaning),
        };
}
