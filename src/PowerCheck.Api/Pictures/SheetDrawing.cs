using PowerCheck.Api.Pictures.Drawing;

namespace PowerCheck.Api.Pictures;

/// <summary>Everything of a check on one sheet: verdict, figures, drawings and the caution.</summary>
/// <param name="content">What is drawn.</param>
internal sealed class SheetDrawing(PictureContent content) : IDrawing
{
    public const string Title = "Check of a rig";

    /// <summary>More limits than these would make the sheet too long, assumed.</summary>
    private const int MostLimits = 12;
    private const float Gap = 10;

    private readonly IReadOnlyList<IDrawing> parts =
    [
        new VerdictHead(content),
        new KeyFigures(content),
        new SlopeDrawing(content),
        new CourseDrawing(content),
        new LimitsDrawing(content, MostLimits),
        new SafetyFoot(content.Answer.BatterySafety, content.SafetyAddress),
    ];

    public float Height => parts.Sum(part => part.Height + Gap) + 4;

    public void Draw(Brush brush, float top)
    {
        var y = top;
        foreach (var part in parts)
        {
            part.Draw(brush, y);
            y += part.Height + Gap;
        }
    }

    /// <summary>The sheet in words.</summary>
    /// <param name="content">What it is drawn from.</param>
    public static string Alt(PictureContent content)
    {
        var figures = KeyFigures.Of(content).Select(figure => $"{figure.Name}: {figure.Figure}");
        return $"{content.Answer.Summary} {string.Join("; ", figures)}. {content.Answer.BatterySafety.Leading} {content.SafetyAddress}";
    }
}
