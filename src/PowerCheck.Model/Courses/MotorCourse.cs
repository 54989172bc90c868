using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The motor over the course, from cold and warm (M6, M8).</summary>
/// <param name="Laps">The motor lap after lap.</param>
/// <param name="RunS">How long it is driven [s]; NaN when not known.</param>
public sealed record MotorCourse(LapWalk Laps, double RunS)
{
    /// <summary>The motor in its air.</summary>
    public MotorWarmth Warmth => Laps.Warmth;

    /// <summary>The lap that repeats itself.</summary>
    public LapWarmth Lap => Laps.Lap;

    /// <summary>
    /// Temperatures at the end of the run, from cold; of a lap that repeats itself where its length is not known.
    /// </summary>
    public MotorTemperature End { get; } =
        !double.IsNaN(RunS) ? Laps.After(RunS)
        : Laps.Lap.Runaway ? MotorTemperature.At(double.NaN)
        : Laps.Lap.Start;

    /// <summary>
    /// Temperatures from which the load cases are judged: the end of the run or, where the winding passes its limit within
    /// the run, the moment at which it does, for a driver stops then.
    /// </summary>
    public MotorTemperature Warm =>
        double.IsFinite(WindingLimit.Seconds) && WindingLimit.Seconds <= RunS
            ? WindingLimit.At
            : End.AtMost(MotorWarmth.RunawayC);

    /// <summary>When the winding reaches its limit over the course, from cold, and how warm the motor is then.</summary>
    public (double Seconds, MotorTemperature At) WindingLimit { get; } =
        FirstTime(Laps, Laps.Lap.PeakWindingC, 1, Laps.Warmth.Motor.Heat.WindingLimitC);

    /// <summary>When the magnet reaches its limit over the course, from cold, and how warm the motor is then.</summary>
    public (double Seconds, MotorTemperature At) MagnetLimit { get; } =
        FirstTime(
            Laps,
            Laps.Lap.PeakMagnetC,
            Laps.Warmth.MagnetWeight,
            Laps.Warmth.Motor.Heat.MagnetLimitC
        );

    // By halving, for no lap is cooler than the one before: the first lap that reaches the limit. Infinity when none does
    // within the run or an hour.
    private static (double Seconds, MotorTemperature At) FirstTime(
        LapWalk laps,
        double peakC,
        double windingWeight,
        double limitC
    )
    {
        var first = (double.PositiveInfinity, laps.Start(laps.Started));
        if (!(peakC >= limitC))
        {
            return double.IsNaN(peakC) ? (double.NaN, laps.Warmth.Cold) : first;
        }

        var (from, to) = (0, laps.Started);
        while (from < to)
        {
            var lap = from + ((to - from) / 2);
            (first, from, to) = laps.Crossing(lap, windingWeight, limitC) is { } crossing
                ? (crossing, from, lap)
                : (first, lap + 1, to);
        }

        return first;
    }
}
