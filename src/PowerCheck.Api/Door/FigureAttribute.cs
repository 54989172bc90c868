using PowerCheck.Model.Units;

namespace PowerCheck.Api.Door;

/// <summary>
/// Unit, range and example of a figure. The door refuses what lies outside; the document prints the same values.
/// </summary>
/// <param name="unit">Name of a unit of the catalogue, such as <c>nameof(Unit.Volt)</c>.</param>
/// <param name="minimum">Smallest figure allowed, in that unit.</param>
/// <param name="maximum">Largest figure allowed, in that unit.</param>
/// <param name="example">A typical figure, in that unit.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FigureAttribute(string unit, double minimum, double maximum, double example)
    : Attribute
{
    /// <summary>The unit.</summary>
    public Unit Unit { get; } = UnitNames.Find(unit);

    /// <summary>Smallest figure allowed.</summary>
    public double Minimum { get; } = minimum;

    /// <summary>Largest figure allowed.</summary>
    public double Maximum { get; } = maximum;

    /// <summary>A typical figure.</summary>
    public double Example { get; } = example;

    /// <summary>The range in words, such as "from 0.05 to 50 kg".</summary>
    public string Range =>
        Unit.Symbol.Length == 0
            ? $"from {Minimum} to {Maximum}"
            : $"from {Minimum} to {Maximum} {Unit.Symbol}";
}
