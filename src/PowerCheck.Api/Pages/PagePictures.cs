using PowerCheck.Api.Faces;
using PowerCheck.Api.Pictures;

namespace PowerCheck.Api.Pages;

/// <summary>Pictures of an answer as SVG markup, each with a name and what it shows in words.</summary>
/// <param name="LimitsSvg">How much of each limit is taken up.</param>
/// <param name="SlopeSvg">Currents over the slope.</param>
/// <param name="CourseSvg">Temperatures along the course.</param>
public sealed record PagePictures(string LimitsSvg, string SlopeSvg, string CourseSvg)
{
    /// <summary>All of them, each with its name.</summary>
    public IReadOnlyList<(string Name, string Svg)> All =>
        [
            ("How much of each limit is taken up", LimitsSvg),
            ("Currents over the slope", SlopeSvg),
            ("Temperatures along the course", CourseSvg),
        ];

    /// <summary>The pictures of a check.</summary>
    /// <param name="context">The request.</param>
    /// <param name="view">The check.</param>
    internal static PagePictures Of(HttpContext context, CheckView view)
    {
        var content = PictureContent.Of(context, view);
        return new(
            Picture.LimitsSvg(content),
            Picture.SlopeSvg(content),
            Picture.CourseSvg(content)
        );
    }
}
