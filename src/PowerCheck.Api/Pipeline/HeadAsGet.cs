namespace PowerCheck.Api.Pipeline;

/// <summary>Answers HEAD wherever GET is answered: the same headers without the body.</summary>
internal sealed class HeadAsGet(RequestDelegate next)
{
    /// <summary>Runs a HEAD request as a GET whose body goes nowhere.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        context.Response.OnStarting(AllowHead, context.Response);
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await next(context);
            return;
        }

        var body = context.Response.Body;
        context.Request.Method = HttpMethods.Get;
        context.Response.Body = Stream.Null;
        try
        {
            await next(context);
        }
        finally
        {
            context.Request.Method = HttpMethods.Head;
            context.Response.Body = body;
        }
    }

    /// <summary>The methods that an address answers, HEAD among them where GET is.</summary>
    public static string Allowed(IHeaderDictionary headers)
    {
        var allow = headers.Allow.ToString();
        return Lists(allow, HttpMethods.Get) && !Lists(allow, HttpMethods.Head)
            ? $"{allow}, {HttpMethods.Head}"
            : allow;
    }

    private static Task AllowHead(object state)
    {
        var headers = ((HttpResponse)state).Headers;
        if (headers.Allow.Count > 0)
        {
            headers.Allow = Allowed(headers);
        }

        return Task.CompletedTask;
    }

    private static bool Lists(string allow, string method) =>
        allow.Split(',', StringSplitOptions.TrimEntries).Contains(method, StringComparer.Ordinal);
}
