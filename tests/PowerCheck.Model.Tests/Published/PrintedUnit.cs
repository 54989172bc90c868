namespace PowerCheck.Model.Tests.Published;

/// <summary>A unit that a document prints, its size written out: nothing here comes from the model.</summary>
public sealed record PrintedUnit(string Symbol, double Size, double Zero = 0)
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;
    private const double Rpm = Math.Tau / 60;
    private const double Krpm = 1000 * Rpm;

    // Ounce-force (avoirdupois pound of 0.45359237 kg) times inch.
    private const double OunceInch = 0.45359237 / 16 * 9.80665 * Inch;

    private static readonly Dictionary<string, PrintedUnit> All = (
        (PrintedUnit[])
            [
                new("", 1),
                new("A", 1),
                new("V", 1),
                new("W", 1),
                new("Wh", 3600),
                new("mΩ", 1e-3),
                new("µH", 1e-6),
                new("rpm/V", Rpm),
                new("rpm", Rpm),
                new("s", 1),
                new("min", 60),
                new("h", 3600),
                new("ns", 1e-9),
                new("°C", 1),
                new("K", 1),
                new("1/K", 1),
                new("K/W", 1),
                new("J/K", 1),
                new("g", 1e-3),
                new("kg", 1),
                new("mm", 1e-3),
                new("°", Math.PI / 180),
                new("N·m", 1),
                new("AWG", 1),
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
                new("rpm/(mN·m)", Rpm / 1e-3),
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
}
