using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pipeline;

/// <summary>Holds a request against what its endpoint offers before the endpoint runs.</summary>
internal sealed class AnswerGuard(RequestDelegate next, QueryDoor queries)
{
    /// <summary>Lets the request pass, or answers with the problem.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<Answering>() is not { } answering)
        {
            return next(context);
        }

        if (!AcceptHeader.AllowsJson(context.Request))
        {
            return ProblemOf.Accept().ExecuteAsync(context);
        }

        context.Response.Headers.CacheControl = answering.Cache;
        return answering.OwnQuery ? next(context) : WithoutQuery(context);
    }

    private Task WithoutQuery(HttpContext context)
    {
        var faults = new Faults();
        queries.RefuseUnknown(context.Request.Query, [], faults);
        return faults.None ? next(context) : ProblemOf.Request(faults).ExecuteAsync(context);
    }
}
