using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes how far off figures may be, in the unit of the member that gives them.</summary>
internal static class ToleranceWriter
{
    public static ToleranceAnswer Write(Input input) =>
        new()
        {
            Path = input.Figure.Path,
            Value = Shown.Figure(input.Value, input.Figure.Unit)!.Value,
            Unit = Shown.Symbol(input.Figure.Unit),
            Spread = Spread(input.Spread, input.Value, input.Figure.Unit)!,
            Basis = Words.Of(input.Basis),
        };

    /// <summary>A spread; null for none.</summary>
    /// <param name="spread">The spread.</param>
    /// <param name="value">The figure that is spread, SI.</param>
    /// <param name="unit">The unit in which it is shown.</param>
    public static SpreadAnswer? Spread(Spread spread, double value, Unit unit) =>
        spread.Kind switch
        {
            SpreadKind.Relative when spread.Low.Equals(spread.High) => new()
            {
                Relative = Shown.Figure(spread.Low),
            },
            SpreadKind.Factor => new() { Factor = Shown.Figure(spread.Low) },
            SpreadKind.Absolute => new() { Absolute = Shown.Figure(spread.Low, unit) },
            SpreadKind.None => null,
            _ => new()
            {
                Low = Shown.Figure(spread.At(value, -Model.Assumptions.Spread.EndDeviate), unit),
                High = Shown.Figure(spread.At(value, Model.Assumptions.Spread.EndDeviate), unit),
            },
        };
}
