using System.Globalization;
using PowerCheck.Model.Units;
using UnitsNet;
using UnitsNet.Units;

namespace PowerCheck.Api.Paths;

/// <summary>Turns figures from the unit in which they are given into the unit of their member.</summary>
internal static class OtherUnits
{
    /// <summary>What each of our units is to the library; the others can only be given as they are.</summary>
    private static readonly Dictionary<Unit, Enum> Known = new()
    {
        [Unit.One] = RatioUnit.DecimalFraction,
        [Unit.Ampere] = ElectricCurrentUnit.Ampere,
        [Unit.Volt] = ElectricPotentialUnit.Volt,
        [Unit.Watt] = PowerUnit.Watt,
        [Unit.Milliohm] = ElectricResistanceUnit.Milliohm,
        [Unit.Microhenry] = ElectricInductanceUnit.Microhenry,
        [Unit.MilliampereHour] = ElectricChargeUnit.MilliampereHour,
        [Unit.Rpm] = RotationalSpeedUnit.RevolutionPerMinute,
        [Unit.Hertz] = FrequencyUnit.Hertz,
        [Unit.Second] = DurationUnit.Second,
        [Unit.Minute] = DurationUnit.Minute,
        [Unit.Hour] = DurationUnit.Hour,
        [Unit.Nanosecond] = DurationUnit.Nanosecond,
        [Unit.Celsius] = TemperatureUnit.DegreeCelsius,
        [Unit.Gram] = MassUnit.Gram,
        [Unit.Kilogram] = MassUnit.Kilogram,
        [Unit.Millimetre] = LengthUnit.Millimeter,
        [Unit.Degree] = AngleUnit.Degree,
        [Unit.MetrePerSecond] = SpeedUnit.MeterPerSecond,
        [Unit.NewtonMetre] = TorqueUnit.NewtonMeter,
    };

    private static readonly UnitAbbreviationsCache Abbreviations = Spelled();
    private static readonly UnitParser Parser = new(Abbreviations);

    /// <summary>Whether a member of a unit may be given in others.</summary>
    public static bool HasOthers(Unit own) => Known.ContainsKey(own);

    /// <summary>What turns a figure in a given unit into that of the member; null when there is no such unit for it.</summary>
    /// <param name="own">The unit of the member.</param>
    /// <param name="symbol">The symbol as given.</param>
    public static Func<double, double>? From(Unit own, string symbol)
    {
        if (IsOwn(own, symbol))
        {
            return figure => figure;
        }

        return Find(own, symbol) is { } given
            ? figure => Clean(UnitConverter.Convert(figure, given, Known[own]))
            : null;
    }

    /// <summary>What turns a figure of the member into a given unit; null when there is no such unit for it.</summary>
    /// <param name="own">The unit of the member.</param>
    /// <param name="symbol">The symbol as given.</param>
    public static Func<double, double>? To(Unit own, string symbol)
    {
        if (IsOwn(own, symbol))
        {
            return figure => figure;
        }

        return Find(own, symbol) is { } wanted
            ? figure => Clean(UnitConverter.Convert(figure, Known[own], wanted))
            : null;
    }

    private static bool IsOwn(Unit own, string symbol) =>
        string.Equals(Plain(symbol), own.Symbol, StringComparison.Ordinal);

    // The ohm sign and the micro sign have a letter each that looks the same.
    private static string Plain(string symbol) =>
        symbol.Replace('\u2126', '\u03A9').Replace('\u03BC', '\u00B5');

    // The library overlooks the case of letters, which would make a mega of a milli.
    private static Enum? Find(Unit own, string symbol) =>
        Known.TryGetValue(own, out var ours)
        && Parser.TryParse(
            Plain(symbol),
            ours.GetType(),
            CultureInfo.InvariantCulture,
            out var given
        )
        && Spellings(given!).Contains(Plain(symbol), StringComparer.Ordinal)
            ? given
            : null;

    // The last digits of a conversion are rounding, and would only be repeated in messages.
    private static double Clean(double figure) =>
        double.Parse(
            figure.ToString("G14", CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );

    private static IReadOnlyList<string> Spellings(Enum unit) =>
        Abbreviations.GetUnitAbbreviations(
            unit.GetType(),
            Convert.ToInt32(unit, CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );

    private static UnitAbbreviationsCache Spelled()
    {
        var known = UnitAbbreviationsCache.CreateDefault();
        known.MapUnitToAbbreviation(ElectricResistanceUnit.Ohm, "Ohm");
        known.MapUnitToAbbreviation(ElectricResistanceUnit.Milliohm, "mOhm");
        known.MapUnitToAbbreviation(ElectricInductanceUnit.Microhenry, "uH");
        known.MapUnitToAbbreviation(TemperatureUnit.DegreeCelsius, "degC");
        known.MapUnitToAbbreviation(TemperatureUnit.DegreeFahrenheit, "degF");
        known.MapUnitToAbbreviation(LengthUnit.Inch, "inch");
        known.MapUnitToAbbreviation(TorqueUnit.NewtonMeter, "Nm");
        return known;
    }
}
