namespace PowerCheck.Model.Drivetrain;

/// <summary>Current ripple of slow switching (M3).</summary>
public static class Ripple
{
    /// <summary>Below this the bus is no longer smoothed by the controller's capacitors [Hz], assumed.</summary>
    public const double UnsmoothedBelowHz = 4000;

    /// <summary>
    /// Mean square of the ripple around the mean current [A²], exact for an R-L loop in continuous conduction:
    /// (V/R)²·[D(1 − D) − (τ/T)·(1 − e^(−DT/τ))·(1 − e^(−(1−D)T/τ))/(1 − e^(−T/τ))].
    /// </summary>
    /// <param name="busV">Bus voltage, the step of the switching [V].</param>
    /// <param name="duty">Duty, 0 to 1.</param>
    /// <param name="loopOhm">Resistance of the motor loop [Ω].</param>
    /// <param name="inductanceH">Its inductance [H]; 0 for none.</param>
    /// <param name="frequencyHz">Switching frequency [Hz].</param>
    public static double MeanSquare(
        double busV,
        double duty,
        double loopOhm,
        double inductanceH,
        double frequencyHz
    )
    {
        var periods = loopOhm / (inductanceH * frequencyHz);
        var on = Faded(duty * periods);
        var off = Faded((1 - duty) * periods);
        var whole = Faded(periods);
        var shape = (duty * (1 - duty)) - (on * off / (whole * periods));
        var step = busV / loopOhm;
        return step * step * Math.Max(0, shape);
    }

    // 1 − e^(−x) without cancellation near 0: 2t/(1 + t) with t = tanh(x/2).
    private static double Faded(double x)
    {
        var half = Math.Tanh(x / 2);
        return 2 * half / (1 + half);
    }
}
