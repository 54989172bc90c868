namespace PowerCheck.Model.Spreads;

/// <summary>How likely a limit is passed, and how wide the figure lies.</summary>
/// <param name="Exceedance">Probability of being past it, 0 to 1.</param>
/// <param name="Low">Lower end of the scaled estimate's 95 % interval; NaN where it has none.</param>
/// <param name="High">Upper end of the scaled estimate's 95 % interval; NaN where it has none.</param>
/// <param name="Variances">The variance that each input brings to the distance to the limit.</param>
public sealed record Odds(double Exceedance, double Low, double High, double[] Variances);
