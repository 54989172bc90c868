namespace PowerCheck.Model.Assumptions;

/// <summary>How wide a figure may lie around its value, as a 95 % interval.</summary>
/// <param name="Kind">How <paramref name="Low"/> and <paramref name="High"/> are to be read.</param>
/// <param name="Low">
/// Lower end: a share below the value (<see cref="SpreadKind.Relative"/>), a factor to divide by
/// (<see cref="SpreadKind.Factor"/>), a distance below (<see cref="SpreadKind.Absolute"/>) or the end itself
/// (<see cref="SpreadKind.Interval"/>); in SI.
/// </param>
/// <param name="High">Upper end, read likewise; in SI.</param>
public readonly record struct Spread(SpreadKind Kind, double Low, double High)
{
    /// <summary>No spread: a word, or a figure that is counted and not measured.</summary>
    public static readonly Spread None = new(SpreadKind.None, 0, 0);

    /// <summary>Standard normal deviate of the ends of a 95 % interval.</summary>
    public const double EndDeviate = 1.959963984540054;

    /// <summary>Least share of its value that a figure keeps, however far out a relative spread reaches, assumed.</summary>
    public const double LeastShare = 0.02;

    /// <summary>Plus or minus a share of the value, such as 0.1 for ± 10 %.</summary>
    /// <param name="share">The half width as a share of the value, above 0.</param>
    public static Spread Relative(double share) => new(SpreadKind.Relative, share, share);

    /// <summary>Further one way than the other, as shares of the value: labels that promise too much.</summary>
    /// <param name="below">How far under the value, as a share of it, above 0.</param>
    /// <param name="above">How far over the value, as a share of it, above 0.</param>
    public static Spread Skewed(double below, double above) =>
        new(SpreadKind.Relative, below, above);

    /// <summary>Times or divided by a factor (log-normal), such as 1.5 for ÷×1.5.</summary>
    /// <param name="factor">The factor, above 1.</param>
    public static Spread Factor(double factor) => new(SpreadKind.Factor, factor, factor);

    /// <summary>Plus or minus a distance in SI, such as 20 for ± 20 K.</summary>
    /// <param name="distance">The half width in SI, above 0.</param>
    public static Spread Absolute(double distance) => new(SpreadKind.Absolute, distance, distance);

    /// <summary>From one value to another, in SI, not centred on the value.</summary>
    /// <param name="low">The lower end, SI.</param>
    /// <param name="high">The upper end, SI.</param>
    public static Spread Interval(double low, double high) => new(SpreadKind.Interval, low, high);

    /// <summary>
    /// The figure at a standard normal deviate: normal, log-normal for a factor, and of two normal halves that meet at the
    /// value where the ends lie at different distances.
    /// </summary>
    /// <param name="value">The value that is spread, SI: its median.</param>
    /// <param name="deviate">Standard normal deviate; ± <see cref="EndDeviate"/> gives the two ends.</param>
    public double At(double value, double deviate)
    {
        var ends = deviate / EndDeviate;
        var end = deviate < 0 ? Low : High;
        return Kind switch
        {
            SpreadKind.Relative => value * Math.Max(LeastShare, 1 + (end * ends)),
            SpreadKind.Factor => value * Math.Pow(end, ends),
            SpreadKind.Absolute => value + (end * ends),
            SpreadKind.Interval => value + (Math.Abs(end - value) * ends),
            _ => value,
        };
    }
}

/// <summary>How the two ends of a <see cref="Spread"/> are to be read.</summary>
public enum SpreadKind
{
    /// <summary>No spread.</summary>
    None,

    /// <summary>A share of the value either side.</summary>
    Relative,

    /// <summary>A factor either side, log-normal.</summary>
    Factor,

    /// <summary>A distance either side.</summary>
    Absolute,

    /// <summary>The two ends themselves.</summary>
    Interval,
}
