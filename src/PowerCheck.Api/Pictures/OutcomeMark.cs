using PowerCheck.Api.Pictures.Drawing;
using SkiaSharp;

namespace PowerCheck.Api.Pictures;

/// <summary>What came of a limit, as a mark: its shape tells it as well as its color.</summary>
internal static class OutcomeMark
{
    private const float Size = 5.5f;

    /// <summary>Its color.</summary>
    /// <param name="outcome">The outcome, or the verdict.</param>
    public static SKColor Color(string outcome) =>
        outcome switch
        {
            "fails" or "unsuitable" => Paper.Vermilion,
            "doubtful" or "limited" => Paper.Orange,
            "holds" or "suitable" => Paper.Green,
            _ => Paper.White,
        };

    /// <summary>Draws it: a square that fails, a triangle in doubt, a disc that holds, an empty diamond not known.</summary>
    /// <param name="brush">Draws it.</param>
    /// <param name="outcome">The outcome, or the verdict.</param>
    /// <param name="at">Its center.</param>
    /// <param name="scale">How large, 1 is usual.</param>
    public static void Draw(Brush brush, string outcome, SKPoint at, float scale = 1)
    {
        var pen = new Pen(Paper.Ink, 1.1f);
        var (color, r) = (Color(outcome), Size * scale);
        switch (outcome)
        {
            case "fails" or "unsuitable":
                brush.Shape(
                    [
                        new(at.X - r, at.Y - r),
                        new(at.X + r, at.Y - r),
                        new(at.X + r, at.Y + r),
                        new(at.X - r, at.Y + r),
                    ],
                    color,
                    pen
                );
                break;
            case "doubtful" or "limited":
                brush.Shape(
                    [
                        new(at.X, at.Y - r - 1),
                        new(at.X + r + 1, at.Y + r),
                        new(at.X - r - 1, at.Y + r),
                    ],
                    color,
                    pen
                );
                break;
            case "holds" or "suitable":
                brush.Disc(at, r, color, pen);
                break;
            default:
                brush.Shape(
                    [
                        new(at.X, at.Y - r - 1),
                        new(at.X + r + 1, at.Y),
                        new(at.X, at.Y + r + 1),
                        new(at.X - r - 1, at.Y),
                    ],
                    color,
                    pen
                );
                break;
        }
    }
}
