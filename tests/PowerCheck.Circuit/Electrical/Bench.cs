using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// A deck with many small circuits side by side, of which the simulator finds all operating points at once.
/// </summary>
/// <param name="title">What it is.</param>
internal sealed class Bench(string title)
{
    private readonly Deck deck = new(title);
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);
    private IReadOnlyDictionary<string, double> answers = new Dictionary<string, double>(
        StringComparer.Ordinal
    );

    /// <summary>Adds an element.</summary>
    public Bench Add(FormattableString line)
    {
        deck.Add(line);
        return this;
    }

    /// <summary>Asks for a figure.</summary>
    public Bench Ask(params ReadOnlySpan<string> expressions)
    {
        foreach (var expression in expressions)
        {
            asked.Add(expression);
        }

        return this;
    }

    /// <summary>Lets the simulator find the operating points.</summary>
    public void Run() => answers = CircuitSimulator.OperatingPoint(deck, [.. asked]);

    /// <summary>A figure that was asked for.</summary>
    public double this[string expression] => answers[expression];
}
