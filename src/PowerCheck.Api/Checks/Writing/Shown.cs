using System.Globalization;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Turns the model's figures into those that are shown.</summary>
internal static class Shown
{
    private const int Digits = 6;

    /// <summary>Powers of ten; up to the 22nd they are exact, so that a quotient is the double closest to the decimal.</summary>
    private static readonly double[] Tens =
    [
        .. Enumerable
            .Range(0, 23)
            .Select(power => double.Parse($"1e{power}", CultureInfo.InvariantCulture)),
    ];

    /// <summary>Beyond this no figure of a rig means anything; the document promises that none is shown.</summary>
    private const double Most = 1e12;

    /// <summary>A plain figure or one whose unit is SI, to six significant digits; null when it is not finite or means nothing.</summary>
    public static double? Figure(double figure) =>
        Math.Abs(figure) <= Most ? Rounded(figure) : null;

    /// <summary>An SI figure in a unit, to six significant digits; null when it is not finite.</summary>
    public static double? Figure(double si, Unit unit) => Figure(unit.FromSi(si));

    /// <summary>A probability or share, to four decimals; null for none.</summary>
    public static double? Probability(double? probability) =>
        probability is { } given ? Math.Round(given, 4) : null;

    /// <summary>A unit's symbol; null for plain numbers.</summary>
    public static string? Symbol(Unit unit) => unit.Symbol.Length == 0 ? null : unit.Symbol;

    private static double Rounded(double figure)
    {
        if (figure == 0)
        {
            return 0;
        }

        var places = Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(figure)));
        return places switch
        {
            >= 0 and <= 22 => Math.Round(figure * Tens[places]) / Tens[places],
            < 0 and >= -10 => Math.Round(figure / Tens[-places]) * Tens[-places],
            _ => double.Parse(
                figure.ToString("G6", CultureInfo.InvariantCulture),
                CultureInfo.InvariantCulture
            ),
        };
    }
}
