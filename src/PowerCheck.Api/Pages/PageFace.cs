using PowerCheck.Api.Faces;
using PowerCheck.Api.Links;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>A check as the page.</summary>
internal sealed class PageFace(PageWriter writer) : ICheckFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Html;

    /// <inheritdoc/>
    public Task Write(HttpContext context, CheckView view) =>
        writer.WritePage(
            context,
            PageMaker.Checked(context.Request, view, PagePictures.Of(context, view))
        );
}

/// <summary>A problem as a page: with the form where there is one, and by itself elsewhere.</summary>
internal sealed class ProblemPageFace(PageWriter writer, EmbedSettings embed) : IProblemFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Html;

    /// <inheritdoc/>
    public bool OnlyAsked => false;

    /// <inheritdoc/>
    public Task Write(HttpContext context, Problem problem)
    {
        var request = context.Request;
        if (request.Path.Equals(EmbedEndpoint.Address, StringComparison.Ordinal))
        {
            return writer.WriteCard(context, PageMaker.Wrong(request, problem), embed.Ancestors);
        }

        return HttpMethods.IsGet(request.Method) && HasForm(request.Path)
            ? writer.WritePage(context, PageMaker.Wrong(request, problem))
            : writer.WriteProblem(context, problem);
    }

    private static bool HasForm(PathString path) =>
        path.Equals(PageEndpoint.Address, StringComparison.Ordinal)
        || path.Equals(CheckLinks.Checks, StringComparison.Ordinal);
}
