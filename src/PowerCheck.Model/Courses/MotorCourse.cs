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

    // Infinity when it does not within the run or an hour.
    private static (double Seconds, MotorTemperature At) FirstTime(
        LapWalk laps,
        double peakC,
        double windingWeight,
        double limitC
    )
    {
        var warmth = laps.Warmth;
        var x = warmth.Cold;
        if (double.IsNaN(peakC))
        {
            return (double.NaN, x);
        }

        for (var t = 0.0; t < laps.ForS && peakC >= limitC; )
        {
            foreach (var (drive, seconds) in laps.Segments)
            {
                var piece = 0.0;
                for (var left = seconds; left > 0; left -= piece, t += piece)
                {
                    (var network, piece) = Piece.Next(warmth, drive, x, left);
                    var next = network.Over(piece).Apply(x);
                    if (network.Reaches(x, next, windingWeight, limitC))
                    {
                        var crossing = network.FirstCrossing(x, windingWeight, limitC, piece);
                        return (t + crossing, network.Over(crossing).Apply(x));
                    }

                    if (next.WindingC > MotorWarmth.FarBeyondC)
                    {
                        return (t + piece, next);
                    }

                    x = next;
                }
            }
        }

        return (double.PositiveInfinity, x);
    }
}
