using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Model.Curves;
using SkiaSharp;

namespace PowerCheck.Api.Pictures;

/// <summary>A part whose temperature the course drawing follows.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Answer">Its figures.</param>
/// <param name="Pen">How its curve is drawn.</param>
/// <param name="At">Its temperature at a point of the curve [°C].</param>
/// <param name="Band">How wide that lies; null where that is not known.</param>
/// <param name="Limits">What its limit is called.</param>
internal sealed record CoursePart(
    string Name,
    TemperatureAnswer Answer,
    Pen Pen,
    Func<CoursePoint, double> At,
    IReadOnlyList<BandPoint>? Band,
    string Limits
)
{
    /// <summary>All parts, those that decide most often first.</summary>
    /// <param name="content">What is drawn.</param>
    public static IReadOnlyList<CoursePart> Of(PictureContent content)
    {
        var warm = content.Answer.Temperatures;
        var bands = content.Curves.Bands;
        return
        [
            new(
                "winding",
                warm.MotorWinding,
                new(Paper.Vermilion, 2.2f),
                point => point.WindingC,
                bands?.Winding,
                "winding limit"
            ),
            new(
                "magnet",
                warm.MotorMagnet,
                new(Paper.Purple, 1.8f, 8, 3),
                point => point.MagnetC,
                null,
                "magnet limit"
            ),
            new(
                "motor case",
                warm.MotorCase,
                new(Paper.Orange, 1.8f, 2, 3),
                point => point.CaseC,
                null,
                "case too hot to touch"
            ),
            new(
                "controller",
                warm.Controller,
                new(Paper.Blue, 2f, 10, 3, 2, 3),
                point => point.ControllerC,
                bands?.Controller,
                "controller limit"
            ),
            new(
                "battery",
                warm.Battery,
                new(Paper.Green, 2f, 5, 3),
                point => point.BatteryC,
                bands?.Battery,
                "battery limit"
            ),
        ];
    }

    /// <summary>Color of its band.</summary>
    public SKColor Tint => Pen.Color.WithAlpha(30);
}
