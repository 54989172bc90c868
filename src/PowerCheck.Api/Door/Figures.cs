using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>Reads a figure and holds it against its range.</summary>
internal static class Figures
{
    /// <summary>The number in hand, when it is one and lies in the range.</summary>
    public static bool TryRead(ref Walk walk, FigureAttribute figure, out double value)
    {
        value = 0;
        if (walk.Token != JsonTokenType.Number)
        {
            walk.WrongType($"a number {figure.Range}");
            return false;
        }

        value = walk.Reader.GetDouble();
        if (value >= figure.Minimum && value <= figure.Maximum)
        {
            return true;
        }

        walk.Faults.Add(Fault(ref walk, figure, value));
        return false;
    }

    /// <summary>The whole number in hand, when it is one and lies in the range; 3.0 is one.</summary>
    public static bool TryReadWhole(ref Walk walk, FigureAttribute figure, out int value)
    {
        value = 0;
        if (walk.Token != JsonTokenType.Number)
        {
            walk.WrongType($"a whole number {figure.Range}");
            return false;
        }

        var number = walk.Reader.GetDouble();
        if (double.IsFinite(number) && number != Math.Floor(number))
        {
            walk.Faults.Add(Fraction(ref walk, figure));
            return false;
        }

        if (!TryRead(ref walk, figure, out number))
        {
            return false;
        }

        value = (int)number;
        return true;
    }

    private static Fault Fault(ref Walk walk, FigureAttribute figure, double value)
    {
        var path = walk.Path.ToString();
        var given = walk.Given();
        var (code, what) = double.IsFinite(value)
            ? (FaultCode.OutOfRange, $"{path} is {given} and must be {figure.Range}.")
            : (
                FaultCode.NotFinite,
                $"{path} is {given}, too large for any figure; it must be {figure.Range}."
            );
        return new(path, code, what)
        {
            Given = given,
            Minimum = figure.Minimum,
            Maximum = figure.Maximum,
        };
    }

    private static Fault Fraction(ref Walk walk, FigureAttribute figure)
    {
        var path = walk.Path.ToString();
        var given = walk.Given();
        return new(
            path,
            FaultCode.WrongType,
            $"{path} is {given} and must be a whole number {figure.Range}."
        )
        {
            Given = given,
            Minimum = figure.Minimum,
            Maximum = figure.Maximum,
        };
    }
}
