using PowerCheck.Api.Faces;
using PowerCheck.Api.Pictures;

namespace PowerCheck.Api.Pages;

/// <summary>Pictures of an answer as SVG markup or by address, each with what it shows in words.</summary>
/// <param name="SlopeSvg">Currents over the slope.</param>
/// <param name="SlopeAlt">The same in words.</param>
/// <param name="CourseAddress">Where the temperatures along the course are drawn.</param>
/// <param name="CourseAlt">The same in words.</param>
/// <param name="LimitsAddress">Where it is drawn how much of each limit is taken up.</param>
/// <param name="LimitsAlt">The same in words.</param>
public sealed record PagePictures(
    string SlopeSvg,
    string SlopeAlt,
    string CourseAddress,
    string CourseAlt,
    string LimitsAddress,
    string LimitsAlt
)
{
    /// <summary>The pictures of a check.</summary>
    /// <param name="context">The request.</param>
    /// <param name="view">The check.</param>
    internal static PagePictures Of(HttpContext context, CheckView view)
    {
        var content = PictureContent.Of(context, view);
        var words = Picture.Words(content);
        return new(
            Picture.SlopeSvg(content),
            words.Slope,
            PictureEndpoint.OfCourse(context, view.Call),
            words.Course,
            PictureEndpoint.OfLimits(context, view.Call),
            words.Limits
        );
    }
}
