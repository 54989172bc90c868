using System.Diagnostics;
using PowerCheck.Api.Problems;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Pipeline;

/// <summary>Gives every answer its trace id and the address of the battery cautions, and says which answers depend on Accept.</summary>
internal sealed class TraceHeaders(RequestDelegate next)
{
    /// <summary>Name of the header with the trace id.</summary>
    public const string TraceId = "X-Trace-Id";

    /// <summary>The Link header of every answer.</summary>
    public const string Link = $"<{SafetyBlock.Address}>; rel=\"describedby\"";

    /// <summary>Sets the trace id, and the headers as the answer starts, whatever happens in between.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        context.TraceIdentifier =
            Activity.Current?.TraceId.ToHexString() ?? ActivityTraceId.CreateRandom().ToHexString();
        context.Response.OnStarting(SetHeaders, context);
        return next(context);
    }

    private static Task SetHeaders(object state)
    {
        var context = (HttpContext)state;
        var headers = context.Response.Headers;
        headers[TraceId] = context.TraceIdentifier;
        headers.Append("Link", Link);
        headers.XContentTypeOptions = "nosniff";
        if (DependsOnAccept(context))
        {
            headers.Append("Vary", "Accept");
        }

        return Task.CompletedTask;
    }

    /// <summary>Whether the answer is one that the service composes, or a problem: stored copies are for the same Accept only.</summary>
    private static bool DependsOnAccept(HttpContext context) =>
        context.GetEndpoint()?.Metadata.GetMetadata<Answering>() is not null
        || ProblemResult.IsProblem(context);
}
