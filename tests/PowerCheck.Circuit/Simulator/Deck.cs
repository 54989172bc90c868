using System.Globalization;
using System.Text;

namespace PowerCheck.Circuit.Simulator;

/// <summary>A circuit for the simulator: a title and elements, one a line, in the simulator's own words.</summary>
/// <param name="title">What it is: the first line of the deck.</param>
public sealed class Deck(string title)
{
    private readonly StringBuilder elements = new();

    /// <summary>Title and elements, without any analysis.</summary>
    public string Text => $"* {title}\n{elements}";

    /// <summary>Adds an element. Every number in the line must be finite; it is written with all its digits.</summary>
    /// <param name="line">The line, an interpolated string whose holes are numbers or names.</param>
    public Deck Add(FormattableString line)
    {
        var holes = line.GetArguments().Select(Written).ToArray();
        elements.Append(string.Format(CultureInfo.InvariantCulture, line.Format, holes));
        elements.Append('\n');
        return this;
    }

    private static object? Written(object? hole) =>
        hole switch
        {
            double number when double.IsFinite(number) => number.ToString(
                "R",
                CultureInfo.InvariantCulture
            ),
            double number => throw new ArgumentException(
                $"{number} cannot stand in a deck.",
                nameof(hole)
            ),
            _ => hole,
        };
}
