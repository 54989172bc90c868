using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Pages.Components;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>Writes components as pages.</summary>
internal sealed class PageWriter(IServiceProvider services, ILoggerFactory logs)
{
    /// <summary>The whole page.</summary>
    public Task WritePage(HttpContext context, PageView view)
    {
        PageHeaders.Set(context.Response.Headers);
        return Write<Page>(context, new(StringComparer.Ordinal) { [nameof(Page.View)] = view });
    }

    /// <summary>The card for a frame.</summary>
    public Task WriteCard(HttpContext context, PageView view, string ancestors)
    {
        PageHeaders.Set(context.Response.Headers, ancestors);
        return Write<Card>(context, new(StringComparer.Ordinal) { [nameof(Card.View)] = view });
    }

    /// <summary>A problem that belongs to no form.</summary>
    public Task WriteProblem(HttpContext context, Problem problem)
    {
        PageHeaders.Set(context.Response.Headers);
        return Write<ProblemPage>(
            context,
            new(StringComparer.Ordinal)
            {
                [nameof(ProblemPage.Problem)] = problem,
                [nameof(ProblemPage.Base)] = context.Request.PathBase.ToUriComponent(),
            }
        );
    }

    private async Task Write<T>(HttpContext context, Dictionary<string, object?> parameters)
        where T : IComponent
    {
        await using var renderer = new HtmlRenderer(services, logs);
        var text = await renderer.Dispatcher.InvokeAsync(async () =>
            (
                await renderer.RenderComponentAsync<T>(ParameterView.FromDictionary(parameters))
            ).ToHtmlString()
        );
        context.Response.ContentType = $"{CheckForms.Html}; charset=utf-8";
        // Of a request whose time is up the token is cancelled, and it is still to be told.
        await context.Response.WriteAsync(text, CancellationToken.None);
    }
}
