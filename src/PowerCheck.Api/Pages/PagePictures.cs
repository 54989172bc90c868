using PowerCheck.Api.Faces;
using PowerCheck.Api.Pictures;

namespace PowerCheck.Api.Pages;

/// <summary>A picture of an answer: as markup, or by its address where it would make the page much longer.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Words">The same in words.</param>
/// <param name="Svg">Its markup; null where it has an address.</param>
/// <param name="Address">Where it is drawn; null where it is in the page.</param>
public sealed record PagePicture(string Name, string Words, string? Svg, string? Address);

/// <summary>The pictures of an answer.</summary>
/// <param name="All">All of them, in their order.</param>
public sealed record PagePictures(IReadOnlyList<PagePicture> All)
{
    /// <summary>The pictures of a check.</summary>
    /// <param name="context">The request.</param>
    /// <param name="view">The check.</param>
    internal static PagePictures Of(HttpContext context, CheckView view)
    {
        var content = PictureContent.Of(context, view);
        var words = Picture.Words(content);
        return new([
            new(
                "How much of each limit is taken up",
                words.Limits,
                null,
                PictureEndpoint.OfLimits(context, view.Call)
            ),
            new("Currents over the slope", words.Slope, Picture.SlopeSvg(content), null),
            new(
                "Temperatures along the course",
                words.Course,
                null,
                PictureEndpoint.OfCourse(context, view.Call)
            ),
        ]);
    }
}
