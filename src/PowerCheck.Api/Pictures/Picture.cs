using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pictures;

/// <summary>Pictures of a check, each as SVG and PNG from the same drawing.</summary>
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

    /// <summary>Currents over the slope, as PNG 600 px wide.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="scale">Dots a px: 1, or 2 for a dense screen.</param>
    public static byte[] SlopePng(PictureContent content, int scale = 1) =>
        PngForm.Of(new SlopeDrawing(content), scale);

    /// <summary>Temperatures along the course, as PNG 600 px wide.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="scale">Dots a px: 1, or 2 for a dense screen.</param>
    public static byte[] CoursePng(PictureContent content, int scale = 1) =>
        PngForm.Of(new CourseDrawing(content), scale);

    /// <summary>How much of each limit is taken up, as PNG 600 px wide.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="scale">Dots a px: 1, or 2 for a dense screen.</param>
    public static byte[] LimitsPng(PictureContent content, int scale = 1) =>
        PngForm.Of(new LimitsDrawing(content), scale);

    /// <summary>Everything on one sheet, as PNG 600 px wide.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="scale">Dots a px: 1, or 2 for a dense screen.</param>
    public static byte[] SheetPng(PictureContent content, int scale = 1) =>
        PngForm.Of(new SheetDrawing(content), scale);

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
        PngForm.Of(new ProblemDrawing(problem, safetyAddress), 1);

    /// <summary>Every picture in words, with the figures that matter.</summary>
    /// <param name="content">What is drawn.</param>
    public static PictureWords Words(PictureContent content) =>
        new(
            SlopeDrawing.Alt(content),
            CourseDrawing.Alt(content),
            LimitsDrawing.Alt(content),
            SheetDrawing.Alt(content)
        );
}

/// <summary>Every picture in words.</summary>
/// <param name="Slope">Currents over the slope.</param>
/// <param name="Course">Temperatures along the course.</param>
/// <param name="Limits">How much of each limit is taken up.</param>
/// <param name="Sheet">The whole sheet.</param>
internal sealed record PictureWords(string Slope, string Course, string Limits, string Sheet);
