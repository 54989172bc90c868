namespace PowerCheck.Circuit.Rigs;

/// <summary>Seeded chance: the same number gives the same figures on every machine.</summary>
internal sealed class Dice(int number)
{
    private ulong state = unchecked(((ulong)number + 1) * 0xD1342543DE82EF95UL);

    /// <summary>A figure between two, each as likely as the other.</summary>
    public double Between(double low, double high) => low + ((high - low) * Next());

    /// <summary>A figure between two, each factor as likely as the other.</summary>
    public double Scaled(double low, double high) => low * Math.Pow(high / low, Next());

    /// <summary>A whole number between two, both included.</summary>
    public int Whole(int low, int high) => low + (int)(Next() * (high - low + 1));

    /// <summary>Whether something of this likelihood happens.</summary>
    public bool Chance(double likelihood) => Next() < likelihood;

    /// <summary>One of several.</summary>
    public T OneOf<T>(params ReadOnlySpan<T> choices) => choices[Whole(0, choices.Length - 1)];

    // The mixing step of a 64-bit generator with a golden-ratio counter.
    private double Next()
    {
        state = unchecked(state + 0x9E3779B97F4A7C15UL);
        var mixed = unchecked((state ^ (state >> 30)) * 0xBF58476D1CE4E5B9UL);
        mixed = unchecked((mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL);
        return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
