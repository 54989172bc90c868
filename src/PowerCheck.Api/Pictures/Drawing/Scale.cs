using System.Globalization;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>One axis of a plot: from where to where, and its marks.</summary>
/// <param name="From">Its lower end.</param>
/// <param name="To">Its upper end.</param>
/// <param name="Marks">The marks.</param>
internal sealed record Scale(double From, double To, IReadOnlyList<double> Marks)
{
    private static readonly double[] Steps = [1, 2, 5, 10];

    /// <summary>A scale with marks at round figures.</summary>
    /// <param name="from">Its lower end.</param>
    /// <param name="to">Its upper end.</param>
    /// <param name="marks">About how many marks.</param>
    public static Scale Round(double from, double to, int marks = 6)
    {
        var end = to > from ? to : from + 1;
        var rough = (end - from) / marks;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = power * Steps.First(factor => factor * power >= rough * 0.999);
        var first = Math.Ceiling((from / step) - 1e-9);
        var count = (int)(Math.Floor((end / step) + 1e-9) - first) + 1;
        return new(
            from,
            end,
            [.. Enumerable.Range(0, count).Select(n => Math.Round((first + n) * step, 9))]
        );
    }

    /// <summary>What stands at each mark.</summary>
    public IEnumerable<string> Labels =>
        Marks.Select(mark => mark.ToString("0.######", CultureInfo.InvariantCulture));

    /// <summary>How far along the axis a figure lies, 0 to 1.</summary>
    /// <param name="figure">The figure.</param>
    public float Share(double figure) => (float)((figure - From) / (To - From));
}
