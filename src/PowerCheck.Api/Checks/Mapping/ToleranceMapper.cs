using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns what the caller says of how far off figures may be into spreads in SI.</summary>
internal static class ToleranceMapper
{
    /// <summary>The label with the tolerances of its figures.</summary>
    /// <param name="label">The label.</param>
    /// <param name="tolerances">What the caller says, by path; null for nothing.</param>
    public static RigLabel Map(
        RigLabel label,
        IReadOnlyDictionary<string, ToleranceRequest>? tolerances
    )
    {
        if (tolerances is not { Count: > 0 })
        {
            return label;
        }

        var figures = Figures(RigFill.Of(label, RigCompletion.Of(label)));
        return label with
        {
            Tolerances = tolerances
                .Where(pair => figures.ContainsKey(pair.Key))
                .ToDictionary(
                    pair => pair.Key,
                    pair => Map(pair.Value, figures[pair.Key].Unit),
                    StringComparer.Ordinal
                ),
        };
    }

    /// <summary>Every figure of a rig by path, what is assumed included.</summary>
    /// <param name="filled">The rig with what was assumed in its place.</param>
    public static IReadOnlyDictionary<string, LabelFigure<RigLabel>> Figures(RigLabel filled) =>
        RigFigures.Of(filled).ToDictionary(figure => figure.Path, StringComparer.Ordinal);

    private static Spread Map(ToleranceRequest tolerance, Unit unit) =>
        tolerance switch
        {
            { Relative: > 0 and var share } => Spread.Relative(share),
            { Factor: > 1 and var factor } => Spread.Factor(factor),
            { Absolute: > 0 and var distance } => Spread.Absolute(unit.ToSi(distance)),
            { Low: { } low, High: { } high } => Spread.Interval(unit.ToSi(low), unit.ToSi(high)),
            _ => Spread.None,
        };
}
