using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using PowerCheck.Api.Door;
using PowerCheck.Api.Paths;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Links;

/// <summary>A value of a link. A figure may carry a unit, which wins over one behind its name.</summary>
/// <param name="path">The member.</param>
/// <param name="position">Where among the parameters it stands, from 0.</param>
/// <param name="form">How it is written as JSON.</param>
/// <param name="symbol">The unit behind the name; null where there is none.</param>
internal sealed partial class LinkValue(string path, int position, TextForm form, string? symbol)
    : Leaf(path, position)
{
    /// <summary>A longer text is no figure with a unit.</summary>
    private const int MostLetters = 100;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, Row row, Faults faults)
    {
        if (form.IsFigure)
        {
            WriteFigure(json, row[Position], faults);
        }
        else if (form == TextForm.Flag && row[Position] is not ("true" or "false"))
        {
            // Spreadsheets write them in other ways; here words match exactly.
            json.WriteStringValue(row[Position]);
        }
        else
        {
            form.Write(json, row.Given(Position));
        }
    }

    private void WriteFigure(Utf8JsonWriter json, string text, Faults faults)
    {
        var parts = Figure().Match(text.Length > MostLetters ? "" : text);
        var unit = parts.Groups["unit"].Value is { Length: > 0 } own ? own : symbol;
        if (!parts.Success || !TextForm.TryParse(parts.Groups["figure"].Value, out _))
        {
            faults.Add(NoFigure(text));
            json.WriteNullValue();
        }
        else if (unit is null)
        {
            form.Write(json, text);
        }
        else if (form.Unit is { } wanted && OtherUnits.From(wanted, unit) is { } convert)
        {
            form.WriteFigure(json, parts.Groups["figure"].Value, convert);
        }
        else
        {
            faults.Add(WrongUnit(text, unit));
            json.WriteNullValue();
        }
    }

    private Fault NoFigure(string text) =>
        new(
            Path,
            IsTooLarge(text) ? FaultCode.NotFinite : FaultCode.WrongType,
            text.Length <= MostLetters && DecimalComma().IsMatch(text)
                ? $"{Path} is {Walk.Cut(text)}. Write decimals with a point, and nothing between thousands."
                : $"{Path} is {Walk.Cut(text)} and must be {form.Wanted}."
        )
        {
            Given = Walk.Cut(text),
        };

    private static bool IsTooLarge(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure)
        && double.IsInfinity(figure)
        && char.IsAsciiDigit(text[^1]);

    private Fault WrongUnit(string text, string unit) =>
        new(
            Path,
            FaultCode.WrongType,
            $"{Path} is {Walk.Cut(text)}, and {Walk.Cut(unit)} is no unit for it. {Cure(form.Unit)}"
        )
        {
            Given = Walk.Cut(text),
        };

    private static string Cure(Unit? own) =>
        own is null || own.Symbol.Length == 0
            ? "It is a plain number: leave the unit out."
            : $"Leave the unit out for {own.Symbol}{(OtherUnits.HasOthers(own) ? ", or spell another of the same kind exactly" : "")}.";

    [GeneratedRegex(
        @"^(?<figure>[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?)\s*(?<unit>[^\s\d.,+-].*)?$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Figure();

    [GeneratedRegex(@"^[+-]?\d*(,\d+)+(\.\d+)?\s*\D*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DecimalComma();
}
