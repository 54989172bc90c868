using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Assumptions;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes assumptions, figures in the unit of the member that would have given them.</summary>
internal static class AssumptionWriter
{
    public static AssumptionAnswer Write(Assumption assumption) =>
        new()
        {
            Path = assumption.Path,
            Value = Shown.Figure(assumption.Value, assumption.Unit),
            Word = assumption.Word,
            Unit = Shown.Symbol(assumption.Unit),
            Spread = Spread(assumption),
            Basis = assumption.Basis,
            Source = assumption.Source,
        };

    private static SpreadAnswer? Spread(Assumption assumption)
    {
        var (kind, low, high) = assumption.Spread;
        var unit = assumption.Unit;
        return kind switch
        {
            SpreadKind.Relative => new() { Relative = Shown.Figure(low) },
            SpreadKind.Factor => new() { Factor = Shown.Figure(low) },
            SpreadKind.Absolute => new() { Absolute = Shown.Figure(low, unit) },
            SpreadKind.Interval => new()
            {
                Low = Shown.Figure(low, unit),
                High = Shown.Figure(high, unit),
            },
            _ => null,
        };
    }
}
