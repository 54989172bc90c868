using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Thermal;

/// <summary>A part that is known only by what it carries for ever and for a burst (M7).</summary>
public static class BurstRating
{
    /// <summary>
    /// Current that such a part carries for a time [A]: its burst rating, or less where the time is longer than the burst
    /// is allowed: i_cont/√(1 − e^(−t/τ)), with τ from the rating itself. Source: iec60149.
    /// </summary>
    /// <param name="continuousA">Continuous current [A]; NaN when not said.</param>
    /// <param name="burstA">Burst current [A]; NaN when not said, then the continuous one counts.</param>
    /// <param name="burstS">How long the burst is allowed [s]; NaN when not said, then as long as asked.</param>
    /// <param name="seconds">The time [s].</param>
    public static double AllowedA(double continuousA, double burstA, double burstS, double seconds)
    {
        if (double.IsNaN(burstA))
        {
            return continuousA;
        }

        if (!(seconds > burstS) || !(burstA > continuousA))
        {
            return burstA;
        }

        var tau = Controller.TimeConstantS(continuousA, burstA, burstS);
        return continuousA / Math.Sqrt(1 - Math.Exp(-seconds / tau));
    }
}
