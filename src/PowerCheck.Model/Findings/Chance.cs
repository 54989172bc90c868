namespace PowerCheck.Model.Findings;

/// <summary>How sure a finding is (M12).</summary>
/// <param name="Exceedance">Probability that the figure is past its limit, 0 to 1.</param>
/// <param name="Low">Lower end of the figure's 95 % interval, SI.</param>
/// <param name="High">Upper end of the figure's 95 % interval, SI.</param>
/// <param name="Width">Standard uncertainty of the distance past the limit, on the scale on which its causes add up.</param>
/// <param name="DecidedBy">What decides it: the largest share of variance first.</param>
public sealed record Chance(
    double Exceedance,
    double Low,
    double High,
    double Width,
    IReadOnlyList<Share> DecidedBy
);

/// <summary>The share of an input in the variance of a figure's distance to its limit.</summary>
/// <param name="Path">The member.</param>
/// <param name="Part">The share, 0 to 1.</param>
/// <param name="Assumed">Whether the input was assumed and not given.</param>
public readonly record struct Share(string Path, double Part, bool Assumed);
