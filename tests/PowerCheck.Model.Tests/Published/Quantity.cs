using System.Globalization;

namespace PowerCheck.Model.Tests.Published;

/// <summary>A figure as a document prints it, such as "12.10 V/krpm": its digits count.</summary>
public readonly record struct Quantity(string Text)
{
    /// <summary>The figure in the document's unit.</summary>
    public double Figure => double.Parse(Digits, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The document's unit.</summary>
    public PrintedUnit Unit => PrintedUnit.Of(Space < 0 ? "" : Text[(Space + 1)..]);

    /// <summary>The figure as the model takes it: in SI, temperatures in °C.</summary>
    public double Si => Unit.ToSi(Figure);

    /// <summary>One unit of the last printed digit, in the document's unit.</summary>
    public double LastDigit
    {
        get
        {
            var parts = Digits.Split('e', 'E');
            var point = parts[0].IndexOf('.', StringComparison.Ordinal);
            var places = point < 0 ? 0 : parts[0].Length - point - 1;
            var power = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
            return Math.Pow(10, power - places);
        }
    }

    private int Space => Text.IndexOf(' ', StringComparison.Ordinal);

    private string Digits => Space < 0 ? Text : Text[..Space];
}
