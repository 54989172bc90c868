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

    /// <summary>An item of a list that is not JSON text; line and column are counted within it.</summary>
    public static ProblemResult Reading(Malformed malformed, long item) =>
        new(
            ProblemKinds.Malformed,
            $"Item {item}, its line {malformed.Line}, column {malformed.Column}: {malformed.Reason}."
        )
        {
            Malformed = malformed,
        };

    /// <summary>An item of a list with nothing in it.</summary>
    public static ProblemResult EmptyItem(long item) =>
        new(ProblemKinds.Malformed, $"Item {item} is empty: a comma is one too many.");

    /// <summary>A body that should be a list.</summary>
    public static ProblemResult NoList() =>
        new(
            ProblemKinds.Malformed,
            "The body must be a list of rigs in square brackets. One rig by itself goes to /v1/checks, a rig a line is application/x-ndjson."
        );

    /// <summary>Something behind the end of a list.</summary>
    public static ProblemResult AfterList() =>
        new(ProblemKinds.Malformed, "Text follows the end of the list; it is not read.");

    /// <summary>A table without a header.</summary>
    public static ProblemResult NoHeader() =>
        new(
            ProblemKinds.Malformed,
            "The table is empty. Its first row names members of a rig, such as vehicle.massKg."
        );

    /// <summary>A line of a table whose quotes do not match.</summary>
    public static ProblemResult Quotes(long line) =>
        new(
            ProblemKinds.Malformed,
            $"Line {line}: a quote is not closed where the cell ends. Write a quote within a cell twice, and the cell in quotes."
        );

    /// <summary>A row with a line end that is none.</summary>
    public static ProblemResult LineEnds(long line) =>
        new(
            ProblemKinds.Malformed,
            $"Line {line} has a carriage return in it that does not stand before a line feed. Save the table with line feeds at the line ends, and put a cell in quotes that has a line end in it."
        );

    /// <summary>A line of many that has too many bytes.</summary>
    public static ProblemResult LineSize(long line) =>
        new(
            ProblemKinds.TooLarge,
            $"A rig may have {BodyReader.MostBytes} bytes and line {line} has more."
        );

    /// <summary>A line of a table that is not UTF-8.</summary>
    public static ProblemResult NotUtf8(long line) =>
        new(
            ProblemKinds.Malformed,
            $"Line {line} is not valid UTF-8 text. Save the table as CSV in UTF-8."
        );

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
    public static ProblemResult Accept(IReadOnlyList<string> forms) =>
        new(
            ProblemKinds.NotAcceptable,
            $"The address answers as {string.Join(" or ", forms)}, which the Accept header rules out."
        )
        {
            Forms = forms,
        };

    /// <summary>A body in a form that is not read.</summary>
    public static ProblemResult MediaType() => MediaType(JsonOnly);

    /// <summary>A body in a form that is none of those that are read.</summary>
    public static ProblemResult MediaType(IReadOnlyList<string> forms) =>
        new(
            ProblemKinds.UnsupportedMediaType,
            $"The body must be {string.Join(" or ", forms)} in UTF-8, not compressed, and Content-Type must say so."
        )
        {
            Forms = forms,
        };

    /// <summary>More requests at once than the service takes on.</summary>
    public static ProblemResult Busy(int retryAfterSeconds) =>
        new(
            ProblemKinds.Busy,
            $"The service works on as many requests of this kind as it takes on. Try again after {retryAfterSeconds} s."
        )
        {
            RetryAfterSeconds = retryAfterSeconds,
        };

    /// <summary>A rig that takes longer than the service computes.</summary>
    public static ProblemResult TooLong(double seconds) =>
        new(
            ProblemKinds.TookTooLong,
            $"The answer would have taken more than {seconds} s. Ask with spread=none, or give fewer and longer segments of the course; or try again later, when the service may be less busy."
        )
        {
            RetryAfterSeconds = (int)Math.Ceiling(seconds),
        };

    /// <summary>A body with too many bytes.</summary>
    public static ProblemResult Size() =>
        new(ProblemKinds.TooLarge, $"The body may have {BodyReader.MostBytes} bytes and has more.");

    /// <summary>A fault on the service's side.</summary>
    public static ProblemResult Internal() =>
        new(ProblemKinds.Internal, ProblemKinds.Internal.Meaning);

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
