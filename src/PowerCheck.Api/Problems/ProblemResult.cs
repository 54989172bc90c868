using System.Globalization;
using PowerCheck.Api.Door;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Problems;

/// <summary>A problem as an answer.</summary>
internal sealed class ProblemResult(ProblemKind kind, string detail) : IResult
{
    private const string MediaType = "application/problem+json";

    /// <summary>Where the body stopped being JSON.</summary>
    public Malformed? Malformed { get; init; }

    /// <summary>What is wrong with the request.</summary>
    public Faults? Faults { get; init; }

    /// <summary>The media types that would do.</summary>
    public IReadOnlyList<string>? Forms { get; init; }

    /// <summary>After how many seconds to try again; null where that would not help.</summary>
    public int? RetryAfterSeconds { get; init; }

    /// <summary>Whether the answer to a request is a problem.</summary>
    public static bool IsProblem(HttpContext context) => context.Items.ContainsKey(typeof(Problem));

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.StatusCode = kind.Status;
        response.Headers.CacheControl = Caching.None;
        // The tag of the answer that was to come is not that of a problem.
        response.Headers.ETag = default;
        if (RetryAfterSeconds is { } seconds)
        {
            response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        }

        var problem = new Problem(
            Report(),
            httpContext.Request.Path.ToUriComponent(),
            httpContext.TraceIdentifier,
            SafetyBlock.Plain
        );
        httpContext.Items[typeof(Problem)] = problem;
        if (ProblemForm.Of(httpContext) is { } face)
        {
            return face.Write(httpContext, problem);
        }

        return response.WriteAsJsonAsync(
            problem,
            JsonForm.Options,
            MediaType,
            // Of a request whose time is up the token is cancelled, and it is still to be told.
            CancellationToken.None
        );
    }

    /// <summary>What is wrong, without what belongs to the request as a whole.</summary>
    public ProblemReport Report() =>
        new()
        {
            Type = kind.Type,
            Title = kind.Title,
            Status = kind.Status,
            Detail = detail,
            Line = Malformed?.Line,
            Column = Malformed?.Column,
            Forms = Forms,
            Errors = Faults?.All.Select(Error).ToArray(),
            ErrorsTruncated = Faults is { Truncated: true } ? true : null,
        };

    private static ProblemError Error(Fault fault) =>
        new()
        {
            Path = fault.Path,
            Code = fault.Code,
            Message = fault.Message,
            Given = fault.Given,
            Minimum = fault.Minimum,
            Maximum = fault.Maximum,
            Allowed = fault.Allowed,
            Nearest = fault.Nearest,
            Related = fault.Related,
        };
}
