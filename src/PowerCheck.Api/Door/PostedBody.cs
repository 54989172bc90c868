using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Door;

/// <summary>Answers a call that posts one JSON body.</summary>
internal static class PostedBody
{
    /// <summary>Reads the body and answers it, or says why it cannot be read.</summary>
    /// <typeparam name="TCall">The call.</typeparam>
    /// <typeparam name="TAnswer">The answer.</typeparam>
    /// <param name="context">The request.</param>
    /// <param name="read">Reads the call; with what is wrong with it.</param>
    /// <param name="answer">Answers a call with which nothing is wrong, until nobody waits any more.</param>
    public static async Task<Results<Ok<TAnswer>, ProblemResult>> Answer<TCall, TAnswer>(
        HttpContext context,
        Func<ReadOnlySpan<byte>, IQueryCollection, (TCall Call, ProblemResult? Problem)> read,
        Func<TCall, CancellationToken, TAnswer> answer
    )
    {
        var (call, problem) = await Read(context, read);
        return problem is not null
            ? problem
            : TypedResults.Ok(answer(call!, context.RequestAborted));
    }

    /// <summary>Reads the body, or says why it cannot be read.</summary>
    /// <typeparam name="TCall">The call.</typeparam>
    /// <param name="context">The request.</param>
    /// <param name="read">Reads the call; with what is wrong with it.</param>
    public static async Task<(TCall? Call, ProblemResult? Problem)> Read<TCall>(
        HttpContext context,
        Func<ReadOnlySpan<byte>, IQueryCollection, (TCall Call, ProblemResult? Problem)> read
    )
    {
        if (!BodyForm.Readable(context.Request))
        {
            return (default, ProblemOf.MediaType());
        }

        using var body = await BodyReader.Read(context.Request, context.RequestAborted);
        return body is null ? (default, ProblemOf.Size()) : read(body.Bytes, context.Request.Query);
    }
}
