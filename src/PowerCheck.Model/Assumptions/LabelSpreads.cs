namespace PowerCheck.Model.Assumptions;

/// <summary>How far off the figures on boxes are, 95 % (M12), all assumed.</summary>
public static class LabelSpreads
{
    /// <summary>A figure from a scale, a ruler or a calliper.</summary>
    public static readonly Spread Measured = Spread.Relative(0.02);

    /// <summary>A figure on a box that makers hold well.</summary>
    public static readonly Spread Held = Spread.Relative(0.05);

    /// <summary>Any other figure on a box.</summary>
    public static readonly Spread Label = Spread.Relative(0.1);

    /// <summary>A current or rate on a box: rather promised than held.</summary>
    public static readonly Spread Ampere = Spread.Skewed(0.30, 0.05);

    /// <summary>A temperature limit or reading [K].</summary>
    public static readonly Spread Kelvin = Spread.Absolute(5);
}
