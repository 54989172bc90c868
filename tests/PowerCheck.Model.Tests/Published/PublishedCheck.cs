using System.Text.Json;

namespace PowerCheck.Model.Tests.Published;

/// <summary>One published figure that the model has to meet.</summary>
/// <remarks>
/// Inputs and expected figures are quantities in the document's own units. Where the document is wrong,
/// <see cref="Printed"/> holds what it prints, <see cref="Expected"/> what is right, and <see cref="Doubt"/> why.
/// </remarks>
public sealed record PublishedCheck(
    string Id,
    int? Check,
    string What,
    string Function,
    JsonElement Inputs,
    IReadOnlyDictionary<string, string> Expected,
    IReadOnlyDictionary<string, string>? Printed,
    string? Doubt,
    Tolerance Tolerance,
    Reference Source,
    string Tag,
    string? Note
)
{
    /// <summary>The figure of an input [SI; temperatures °C].</summary>
    public double Si(string name) => Quantity(Inputs.GetProperty(name)).Si;

    public double Si(string name, double otherwise) =>
        Inputs.TryGetProperty(name, out var value) ? Quantity(value).Si : otherwise;

    public bool Has(string name) => Inputs.TryGetProperty(name, out _);

    public string Word(string name) => Inputs.GetProperty(name).GetString() ?? "";

    public double[] List(string name) =>
        [.. Inputs.GetProperty(name).EnumerateArray().Select(x => Quantity(x).Si)];

    public (double Value, double Seconds)[] Pieces(string name) =>
        [
            .. Inputs
                .GetProperty(name)
                .EnumerateArray()
                .Select(x => (Quantity(x[0]).Si, Quantity(x[1]).Si)),
        ];

    private static Quantity Quantity(JsonElement value) => new(value.GetString() ?? "");
}

/// <summary>How far off the model may be, and why: one of three ways.</summary>
/// <param name="Relative">Share of the expected figure.</param>
/// <param name="Absolute">In the unit of the expected figure.</param>
/// <param name="Digits">Units of the last printed digit.</param>
/// <param name="Reason">Why so much.</param>
public sealed record Tolerance(double? Relative, double? Absolute, double? Digits, string Reason)
{
    public double Of(Quantity expected) =>
        Absolute ?? (Relative * Math.Abs(expected.Figure)) ?? (Digits!.Value * expected.LastDigit);
}

/// <summary>Where the figure stands.</summary>
public sealed record Reference(string Key, string Place);
