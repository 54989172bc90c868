using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>Where labels go so that none lies on another.</summary>
/// <param name="within">Where all of them have to lie.</param>
internal sealed class LabelSpots(SKRect within)
{
    private const float Gap = 2;

    private readonly List<SKRect> taken = [];
    private readonly List<SKRect> avoided = [];

    /// <summary>A free spot for a label: one of those wanted, or the nearest above or below the first of them.</summary>
    /// <param name="text">The label.</param>
    /// <param name="face">How it is set.</param>
    /// <param name="wanted">Left end and base line of the spots that would suit, the best first.</param>
    /// <returns>Left end and base line; null where there is no room left.</returns>
    public SKPoint? Take(string text, Face face, params SKPoint[] wanted)
    {
        var width = Typesetting.Width(text, face);
        SKPoint[] spots = [.. wanted.Select(spot => Inside(spot, width, face))];
        var beside = Beside(wanted[0]).Select(spot => Inside(spot, width, face));
        foreach (var spot in (IEnumerable<SKPoint>)[.. spots.Where(Clear), .. spots, .. beside])
        {
            var box = Box(spot, width, face);
            if (Lies(box) && Free(taken, box))
            {
                taken.Add(box);
                return spot;
            }
        }

        return null;

        bool Clear(SKPoint spot) => Free(avoided, Box(spot, width, face));
    }

    private static bool Free(List<SKRect> places, SKRect box) =>
        !places.Exists(other => other.IntersectsWith(box));

    /// <summary>Keeps labels off a place.</summary>
    /// <param name="box">The place.</param>
    public void Keep(SKRect box) => taken.Add(box);

    /// <summary>Keeps labels off a place where another spot would suit as well.</summary>
    /// <param name="box">The place.</param>
    public void Avoid(SKRect box) => avoided.Add(box);

    private IEnumerable<SKPoint> Beside(SKPoint spot)
    {
        for (var away = 3f; away < within.Height; away += 3)
        {
            yield return new(spot.X, spot.Y - away);
            yield return new(spot.X, spot.Y + away);
        }
    }

    private SKPoint Inside(SKPoint spot, float width, Face face) =>
        new(
            Math.Max(within.Left, Math.Min(spot.X, within.Right - width)),
            Math.Clamp(
                spot.Y,
                within.Top + face.Size,
                Math.Max(within.Top + face.Size, within.Bottom - Gap)
            )
        );

    private bool Lies(SKRect box) =>
        box.Left >= within.Left - Gap && box.Right <= within.Right + Gap;

    private static SKRect Box(SKPoint spot, float width, Face face) =>
        new(spot.X - Gap, spot.Y - face.Size + 1, spot.X + width + Gap, spot.Y + 3);
}
