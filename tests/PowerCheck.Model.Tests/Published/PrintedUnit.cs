using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Published;

/// <summary>A unit that a document prints: the model's where it has that unit, else one of the few below.</summary>
public sealed record PrintedUnit(string Symbol, double Size, double Zero = 0)
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;
    private const double Krpm = 1000 * Math.Tau / 60;

    // Ounce-force (avoirdupois pound of 0.45359237 kg) times inch.
    private const double OunceInch = 0.45359237 / 16 * 9.80665 * Inch;

    private static readonly Dictionary<string, PrintedUnit> All = (
        (PrintedUnit[])
            [
                .. Model(),
                new("Ω", 1),
                new("Ω/ft", 1 / Foot),
                new("Ω/kft", 1e-3 / Foot),
                new("Ω/km", 1e-3),
                new("Ω·m", 1),
                new("Ω·mm²/m", 1e-6),
                new("V/krpm", 1 / Krpm),
                new("V·s/rad", 1),
                new("V·s/(A·rad)", 1),
                new("N·m/A", 1),
                new("mN·m/A", 1e-3),
                new("oz-in/A", OunceInch),
                new("oz-in", OunceInch),
                new("mN·m", 1e-3),
                new("N", 1),
                new("rpm/(mN·m)", Math.Tau / 60 / 1e-3),
                new("rad/s", 1),
                new("g·cm²", 1e-7),
                new("ms", 1e-3),
                new("kHz", 1e3),
                new("kW", 1e3),
                new("T", 1),
                new("Ah", 3600),
                new("in", Inch),
                new("ft", Foot),
                new("1/in", 1 / Inch),
                new("m²", 1),
                new("mm²", 1e-6),
                // A circle of a thousandth of an inch.
                new("cmil", Math.PI / 4 * Inch * Inch * 1e-6),
                new("mm²/s", 1e-6),
                new("kPa", 1e3),
                new("mA", 1e-3),
                new("rad", 1),
                new("%", 0.01),
                new("%/K", 0.01),
                new("W/(m²·K)", 1),
                new("J/(kg·K)", 1),
                new("°F", 1 / 1.8, 32),
                new("K (absolute)", 1, 273.15),
            ]
    ).ToDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    public static PrintedUnit Of(string symbol) =>
        All.TryGetValue(symbol, out var unit)
            ? unit
            : throw new ArgumentException($"no unit '{symbol}'", nameof(symbol));

    public double ToSi(double figure) => (figure - Zero) * Size;

    public double FromSi(double si) => (si / Size) + Zero;

    private static IEnumerable<PrintedUnit> Model() =>
        new[]
        {
            Unit.One,
            Unit.Ampere,
            Unit.Volt,
            Unit.Watt,
            Unit.WattHour,
            Unit.Milliohm,
            Unit.Microhenry,
            Unit.RpmPerVolt,
            Unit.Rpm,
            Unit.Second,
            Unit.Minute,
            Unit.Hour,
            Unit.Nanosecond,
            Unit.Celsius,
            Unit.Kelvin,
            Unit.PerKelvin,
            Unit.KelvinPerWatt,
            Unit.JoulePerKelvin,
            Unit.Gram,
            Unit.Kilogram,
            Unit.Millimetre,
            Unit.Degree,
            Unit.NewtonMetre,
            Unit.Awg,
        }.Select(unit => new PrintedUnit(unit.Symbol, unit.Si));
}
