using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pictures;

/// <summary>Pictures of a check; the sheet with all of it is SVG and PNG from the same drawing.</summary>
internal static class Picture
{
    /// <summary>Currents over the slope, as SVG.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="key">What its ids start with.</param>
    public static string SlopeSvg(PictureContent content, string key = "slope") =>
        SvgForm.Of(new SlopeDrawing(content), key, SlopeDrawing.Title, SlopeDrawing.Alt(content));

    /// <summary>Temperatures along the course, as SVG.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="key">What its ids start with.</param>
    public static string CourseSvg(PictureContent content, string key = "course") =>
        SvgForm.Of(
            new CourseDrawing(content),
            key,
            CourseDrawing.Title,
            CourseDrawing.Alt(content)
        );

    /// <summary>How much of each limit is taken up, as SVG.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="key">What its ids start with.</param>
    public static string LimitsSvg(PictureContent content, string key = "limits") =>
        SvgForm.Of(
            new LimitsDrawing(content),
            key,
            LimitsDrawing.Title,
            LimitsDrawing.Alt(content)
        );

    /// <summary>Everything on one sheet, as SVG.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="key">What its ids start with.</param>
    public static string SheetSvg(PictureContent content, string key = "sheet") =>
        SvgForm.Of(new SheetDrawing(content), key, SheetDrawing.Title, SheetDrawing.Alt(content));

    /// <summary>Everything on one sheet, as PNG 600 px wide.</summary>
    /// <param name="content">What is drawn.</param>
    public static byte[] SheetPng(PictureContent content) => PngForm.Of(new SheetDrawing(content));

    /// <summary>What is wrong with a request, as SVG.</summary>
    /// <param name="problem">What is wrong.</param>
    /// <param name="safetyAddress">Where the cautions about batteries can be read, absolute.</param>
    public static string ProblemSvg(Problem problem, string safetyAddress) =>
        SvgForm.Of(
            new ProblemDrawing(problem, safetyAddress),
            "problem",
            problem.Title,
            ProblemDrawing.Alt(problem)
        );

    /// <summary>What is wrong with a request, as PNG.</summary>
    /// <param name="problem">What is wrong.</param>
    /// <param name="safetyAddress">Where the cautions about batteries can be read, absolute.</param>
    public static byte[] ProblemPng(Problem problem, string safetyAddress) =>
        PngForm.Of(new ProblemDrawing(problem, safetyAddress));
}
