using System.Globalization;
using PowerCheck.Api.Paths;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Display;

/// <summary>Units in which figures are shown and typed; the rig itself keeps those of its members.</summary>
/// <param name="IsImperial">Whether pounds, ounces, inches, feet and degrees Fahrenheit are used.</param>
public sealed record DisplayUnits(bool IsImperial)
{
    /// <summary>What stands where there is no figure.</summary>
    public const string Nothing = "–";

    /// <summary>The units of the members themselves.</summary>
    public static readonly DisplayUnits Metric = new(IsImperial: false);

    /// <summary>Pounds, ounces, inches, feet and degrees Fahrenheit.</summary>
    public static readonly DisplayUnits Imperial = new(IsImperial: true);

    private static readonly Dictionary<Unit, OtherUnit> Others = new()
    {
        [Unit.Kilogram] = new("lb", "lb", "pounds"),
        [Unit.Gram] = new("oz", "oz", "ounces"),
        [Unit.Millimetre] = new("in", "in", "inches"),
        [Unit.Celsius] = new("degF", "°F", "degrees Fahrenheit"),
        [Unit.MetrePerSecond] = new("ft/s", "ft/s", "feet per second"),
    };

    private static readonly Dictionary<string, Unit> BySymbol = Others.Keys.ToDictionary(
        unit => unit.Symbol,
        StringComparer.Ordinal
    );

    /// <summary>The unit shown instead of a member's; null where it is shown as it is.</summary>
    public OtherUnit? Instead(Unit own) => IsImperial ? Others.GetValueOrDefault(own) : null;

    /// <summary>A figure with its unit.</summary>
    /// <param name="figure">The figure, in its own unit; null for none.</param>
    /// <param name="own">Symbol of its unit; null for a plain number.</param>
    /// <param name="digits">Digits shown.</param>
    public string Show(double? figure, string? own, int digits = 4)
    {
        if (figure is not { } value)
        {
            return Nothing;
        }

        return
            own is not null && BySymbol.TryGetValue(own, out var unit) && Instead(unit) is { } other
            ? Joined(Digits(OtherUnits.To(unit, other.Name)!(value), digits), other.Symbol)
            : Joined(Digits(value, digits), own ?? "");
    }

    /// <summary>A distance between two figures with its unit, to three digits.</summary>
    /// <param name="span">The distance.</param>
    /// <param name="own">Symbol of its unit; null for a plain number.</param>
    public string ShowSpan(double span, string? own)
    {
        if (
            own is null
            || !BySymbol.TryGetValue(own, out var unit)
            || Instead(unit) is not { } other
        )
        {
            return Joined(Digits(span), own ?? "");
        }

        // Degrees have no common zero: a distance is what two figures differ by.
        var to = OtherUnits.To(unit, other.Name)!;
        return Joined(Digits(to(span) - to(0), 3), other.Symbol);
    }

    /// <summary>A figure as the text of its field: converted only where it converts back to the same figure.</summary>
    /// <param name="canonical">The figure in the unit of its member.</param>
    /// <param name="own">That unit.</param>
    /// <returns>The text, and the converted figure where the text is not it.</returns>
    public (string Text, string? Beside) Field(string canonical, Unit own)
    {
        if (
            Instead(own) is not { } other
            || !double.TryParse(canonical, CultureInfo.InvariantCulture, out var figure)
        )
        {
            return (canonical, null);
        }

        var text = Digits(OtherUnits.To(own, other.Name)!(figure), 6);
        var back = OtherUnits.From(own, other.Name)!(
            double.Parse(text, CultureInfo.InvariantCulture)
        );
        return back.Equals(figure)
            ? (text, null)
            : ($"{canonical} {own.Symbol}", Show(figure, own.Symbol));
    }

    /// <summary>A figure and its unit.</summary>
    public static string Joined(string figure, string symbol) =>
        symbol.Length == 0 ? figure
        : symbol is "°" ? figure + symbol
        : $"{figure} {symbol}";

    private static string Digits(double figure, int digits = 4)
    {
        var rounded = figure.ToString($"G{digits}", CultureInfo.InvariantCulture);
        return decimal.TryParse(
            rounded,
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out var plain
        )
            ? plain.ToString("0.############", CultureInfo.InvariantCulture)
            : rounded;
    }
}

/// <summary>A unit shown instead of a member's.</summary>
/// <param name="Name">How links spell it.</param>
/// <param name="Symbol">How it is printed.</param>
/// <param name="Words">How it is said.</param>
public sealed record OtherUnit(string Name, string Symbol, string Words);
