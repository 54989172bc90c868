namespace PowerCheck.Model.Thermal;

/// <summary>
/// Thermal memory as in an electrical overload relay, driven by loss (M7): dθ/dt = (P/P_rated − θ)/τ. Source: iec60149.
/// </summary>
/// <remarks>The same form serves any part that is given only as continuous and burst current.</remarks>
/// <param name="TimeConstantS">Time constant τ [s].</param>
/// <param name="Limit">Level that it must not pass: 1 in air of 25 °C, less in warmer air.</param>
public readonly record struct ThermalMemory(double TimeConstantS, double Limit)
{
    /// <summary>Level after a load of some time.</summary>
    /// <param name="level">Level at the start.</param>
    /// <param name="load">Loss over the rated loss.</param>
    /// <param name="seconds">How long [s].</param>
    public double After(double level, double load, double seconds) =>
        Decayed(level, load, Decay(seconds));

    /// <summary>Share of the way to where a load settles that is left after a time.</summary>
    /// <param name="seconds">How long [s].</param>
    public double Decay(double seconds) => Math.Exp(-seconds / TimeConstantS);

    /// <summary>Level after a load of which a share of the way is left.</summary>
    /// <param name="level">Level at the start.</param>
    /// <param name="load">Loss over the rated loss.</param>
    /// <param name="decay">The share, 0 to 1.</param>
    public static double Decayed(double level, double load, double decay) =>
        load + ((level - load) * decay);

    /// <summary>Time to the limit under a lasting load [s]: τ·ln((k − θ₀)/(k − θ_lim)); infinity when never.</summary>
    /// <param name="level">Level at the start.</param>
    /// <param name="load">Loss over the rated loss, k.</param>
    public double TimeToLimit(double level, double load)
    {
        if (double.IsNaN(load) || double.IsNaN(level))
        {
            return double.NaN;
        }

        return level >= Limit ? 0
            : load <= Limit ? double.PositiveInfinity
            : TimeConstantS * Math.Log((load - level) / (load - Limit));
    }
}
