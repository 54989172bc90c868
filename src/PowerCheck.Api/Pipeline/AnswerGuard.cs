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

        if (!answering.OwnForm && RulesOut(context.Request, answering))
        {
            return ProblemOf.Accept(answering.Forms).ExecuteAsync(context);
        }

        context.Response.Headers.CacheControl = answering.Cache;
        return answering.OwnQuery ? next(context) : WithoutQuery(context);
    }

    private static bool RulesOut(HttpRequest request, Answering answering) =>
        AcceptHeader.Best(request.Headers.Accept, answering.Forms) is null;

    private Task WithoutQuery(HttpContext context)
    {
        var faults = new Faults();
        queries.RefuseUnknown(context.Request.Query, [], faults);
        return faults.None ? next(context) : ProblemOf.Request(faults).ExecuteAsync(context);
    }
}
