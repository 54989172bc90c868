using PowerCheck.Api.Pictures.Drawing;
using SkiaSharp;

namespace PowerCheck.Api.Pictures;

/// <summary>A rating of motor current across the slope drawing.</summary>
/// <param name="Text">Whose it is, and how much.</param>
/// <param name="Amperes">How much [A].</param>
/// <param name="Pen">How it is drawn.</param>
internal sealed record RatingLine(string Text, double Amperes, Pen Pen)
{
    /// <summary>Those that are known.</summary>
    /// <param name="ratings">The ratings.</param>
    public static IReadOnlyList<RatingLine> Of(Ratings ratings) =>
        [
            .. Line("controller continuous", ratings.ControllerContinuousA, 10, 4),
            .. Line("controller burst", ratings.ControllerBurstA, 4, 4),
            .. Line("controller limits itself to", ratings.ControllerLimitA, 12, 3, 2, 3, 2, 3),
            .. Line("motor continuous", ratings.MotorContinuousA, 2, 2),
        ];

    private static IEnumerable<RatingLine> Line(string name, Rating? rating, params float[] dashes)
    {
        if (rating is { } known)
        {
            var assumed = known.Assumed ? ", assumed" : "";
            yield return new(
                $"{name} {Say.Figure(known.Value, "A")}{assumed}",
                known.Value,
                new(Paper.Gray, 1.2f, dashes)
            );
        }
    }

    /// <summary>Draws the line.</summary>
    /// <param name="brush">Draws it.</param>
    /// <param name="area">The plot.</param>
    public void Draw(Brush brush, PlotArea area)
    {
        var y = area.At(area.X.From, Amperes).Y;
        brush.Line(new(area.Box.Left, y), new(area.Box.Right, y), Pen);
    }

    /// <summary>Draws its label.</summary>
    /// <param name="brush">Draws it.</param>
    /// <param name="area">The plot.</param>
    /// <param name="spots">Where labels go.</param>
    public void Label(Brush brush, PlotArea area, LabelSpots spots)
    {
        var y = area.At(area.X.From, Amperes).Y;
        var right = area.Box.Right - Typesetting.Width(Text, Face.Small) - 6;
        var left = area.Box.Left + 6;
        SKPoint[] wanted =
        [
            new(left, y - 4),
            new(right, y - 4),
            new(left, y + 12),
            new(right, y + 12),
        ];
        if (spots.Take(Text, Face.Small, wanted) is { } spot)
        {
            Halo.Text(brush, Text, spot, Face.Small);
        }
    }
}
