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
    ) => MeanSquare(busV, duty, new SwitchedLoop(loopOhm, inductanceH, frequencyHz));

    /// <summary>The same for a loop of which what does not depend on the duty is known [A²].</summary>
    /// <param name="busV">Bus voltage, the step of the switching [V].</param>
    /// <param name="duty">Duty, 0 to 1.</param>
    /// <param name="loop">The motor loop.</param>
    public static double MeanSquare(double busV, double duty, SwitchedLoop loop)
    {
        var on = SwitchedLoop.Faded(duty * loop.Periods);
        var off = SwitchedLoop.Faded((1 - duty) * loop.Periods);
        var shape = (duty * (1 - duty)) - (on * off / (loop.FadedWhole * loop.Periods));
        var step = busV / loop.Ohm;
        return step * step * Math.Max(0, shape);
    }
}

/// <summary>A motor current that ripples.</summary>
/// <param name="MeanA">Its mean [A].</param>
/// <param name="RippleA2">Mean square of the ripple around it [A²].</param>
public readonly record struct RippledCurrent(double MeanA, double RippleA2)
{
    /// <summary>Mean square of the whole [A²].</summary>
    public double MeanSquareA2 => (MeanA * MeanA) + RippleA2;
}

/// <summary>The loop of one motor under slow switching, and what of its ripple does not depend on the duty (M3).</summary>
public readonly struct SwitchedLoop
{
    /// <summary>The loop.</summary>
    /// <param name="ohm">Its resistance [Ω].</param>
    /// <param name="inductanceH">Its inductance [H]; 0 for none.</param>
    /// <param name="frequencyHz">Switching frequency [Hz].</param>
    public SwitchedLoop(double ohm, double inductanceH, double frequencyHz)
    {
        (Counts, Ohm) = (true, ohm);
        Periods = ohm / (inductanceH * frequencyHz);
        FadedWhole = Faded(Periods);
    }

    /// <summary>The loop of one of a rig's motors.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="motorOhm">Resistance of the motor [Ω].</param>
    public static SwitchedLoop Of(Rig rig, double motorOhm) =>
        rig.Ripples
            ? new(motorOhm + rig.LoopOhm, rig.Motor.InductanceH, rig.Controller.PwmFrequencyHz)
            : default;

    /// <summary>Whether its ripple counts.</summary>
    public bool Counts { get; }

    /// <summary>Resistance [Ω].</summary>
    public double Ohm { get; }

    /// <summary>Period of the switching over the loop's time constant, T/τ.</summary>
    public double Periods { get; }

    /// <summary>What fades over a whole period, 0 to 1: 1 − e^(−T/τ).</summary>
    public double FadedWhole { get; }

    /// <summary>1 − e^(−x) without cancellation near 0: 2t/(1 + t) with t = tanh(x/2).</summary>
    /// <param name="x">Time over the time constant, 0 or more.</param>
    public static double Faded(double x)
    {
        var half = Math.Tanh(x / 2);
        return 2 * half / (1 + half);
    }
}
