using PowerCheck.Api.Faces;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pictures;

/// <summary>A check as a drawing.</summary>
internal sealed class SvgFace : ICheckFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Svg;

    /// <inheritdoc/>
    public Task Write(HttpContext context, CheckView view) =>
        Drawn.Svg(context, Picture.SheetSvg(PictureContent.Of(context, view)));
}

/// <summary>A check as a picture.</summary>
internal sealed class PngFace : ICheckFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Png;

    /// <inheritdoc/>
    public Task Write(HttpContext context, CheckView view) =>
        Drawn.Png(context, Picture.SheetPng(PictureContent.Of(context, view)));
}

/// <summary>A problem as a drawing, for an image tag that asks for one: a program that reads pictures reads problems better as JSON.</summary>
internal sealed class ProblemSvgFace : IProblemFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Svg;

    /// <inheritdoc/>
    public bool OnlyAsked => true;

    /// <inheritdoc/>
    public Task Write(HttpContext context, Problem problem) =>
        Drawn.Svg(context, Picture.ProblemSvg(problem, PictureContent.SafetyOf(context.Request)));
}

/// <summary>A problem as a picture, for an image tag that asks for one.</summary>
internal sealed class ProblemPngFace : IProblemFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Png;

    /// <inheritdoc/>
    public bool OnlyAsked => true;

    /// <inheritdoc/>
    public Task Write(HttpContext context, Problem problem) =>
        Drawn.Png(context, Picture.ProblemPng(problem, PictureContent.SafetyOf(context.Request)));
}

/// <summary>Drawings as answers.</summary>
internal static class Drawn
{
    public static Task Svg(HttpContext context, string text)
    {
        context.Response.ContentType = $"{CheckForms.Svg}; charset=utf-8";
        // Opened by itself a drawing is a document, which is to run and fetch nothing.
        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'";
        return context.Response.WriteAsync(text, CancellationToken.None);
    }

    public static Task Png(HttpContext context, byte[] bytes)
    {
        context.Response.ContentType = CheckForms.Png;
        context.Response.ContentLength = bytes.Length;
        return context.Response.Body.WriteAsync(bytes, CancellationToken.None).AsTask();
    }
}

/// <summary>Ways to use them.</summary>
internal static class PicturesSetup
{
    public static void AddPictures(this IServiceCollection services)
    {
        services.AddSingleton<ICheckFace, SvgFace>();
        services.AddSingleton<ICheckFace, PngFace>();
        services.AddSingleton<IProblemFace, ProblemSvgFace>();
        services.AddSingleton<IProblemFace, ProblemPngFace>();
    }
}
