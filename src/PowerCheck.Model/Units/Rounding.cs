namespace PowerCheck.Model.Units;

/// <summary>Figures as a person would write them.</summary>
public static class Rounding
{
    /// <summary>A figure to so many significant digits, the double closest to that decimal.</summary>
    /// <param name="figure">The figure, above 0.</param>
    /// <param name="digits">Significant digits.</param>
    /// <param name="up">Whether towards more, else towards less; what has no more digits stays.</param>
    public static double Digits(double figure, int digits, bool up)
    {
        var place = (int)Math.Floor(Math.Log10(figure)) - digits + 1;
        var (over, under) = (Math.Pow(10, Math.Max(0, -place)), Math.Pow(10, Math.Max(0, place)));
        return Whole(figure * over / under, up) / over * under;
    }

    /// <summary>A figure as it is tried and told: in whole numbers where it is counted, else in three digits.</summary>
    /// <param name="figure">The figure, above 0.</param>
    /// <param name="counted">Whether it is counted.</param>
    /// <param name="up">Whether towards more, else towards less.</param>
    public static double Short(double figure, bool counted, bool up) =>
        counted ? Whole(figure, up) : Digits(figure, 3, up);

    /// <summary>The short figure in the middle of two, rounded towards the second; NaN where there is none between them.</summary>
    /// <param name="one">The first.</param>
    /// <param name="other">The second.</param>
    /// <param name="counted">Whether they are counted.</param>
    public static double Between(double one, double other, bool counted)
    {
        var middle = Short((one + other) / 2, counted, other > one);
        return (middle - one) * (other - middle) > 0 ? middle : double.NaN;
    }

    /// <summary>A whole number.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="up">Whether the next above, else the next below; what is whole but for its last bits stays.</param>
    public static double Whole(double figure, bool up)
    {
        var nearest = Math.Round(figure);
        return Math.Abs(figure - nearest) <= 1e-9 * Math.Abs(figure) ? nearest
            : up ? Math.Ceiling(figure)
            : Math.Floor(figure);
    }
}
