using System.Globalization;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Display;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>How wide a figure may lie, in a few signs.</summary>
internal static class SpreadText
{
    /// <summary>The text; empty where nothing is said.</summary>
    /// <param name="spread">The spread.</param>
    /// <param name="unit">Symbol of the figure's unit; null for a plain number.</param>
    /// <param name="units">The units shown.</param>
    public static string Of(SpreadAnswer? spread, string? unit, DisplayUnits units) =>
        spread switch
        {
            { Relative: { } share } => $"± {Percent(share)}",
            { Factor: { } factor } => $"× or ÷ {factor.ToString(CultureInfo.InvariantCulture)}",
            { Absolute: { } span } => $"± {units.ShowSpan(span, unit)}",
            { Low: { } low, High: { } high } =>
                $"{units.Show(low, unit)} to {units.Show(high, unit)}",
            _ => "",
        };

    /// <summary>A share in percent.</summary>
    public static string Percent(double share) =>
        $"{(share * 100).ToString("0.#", CultureInfo.InvariantCulture)} %";
}
