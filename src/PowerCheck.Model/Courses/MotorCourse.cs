using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The motor over the course, from cold and warm (M6, M8).</summary>
/// <param name="Warmth">The motor in its air.</param>
/// <param name="Lap">The lap that repeats itself.</param>
/// <param name="Segments">Drive and duration [s] of each segment.</param>
/// <param name="RunS">How long it is driven [s]; NaN when not known.</param>
public sealed record MotorCourse(
    MotorWarmth Warmth,
    LapWarmth Lap,
    IReadOnlyList<(Drive Drive, double Seconds)> Segments,
    double RunS
)
{
    private const int MostLaps = 20_000;
    private const double LongestLookS = 3600;

    /// <summary>A lap that changes the motor more slowly than this is driven again with the same currents [K/s].</summary>
    private const double SettlingKPerS = 0.01 / 60;

    /// <summary>Temperatures at the end of the run, from cold.</summary>
    public MotorTemperature End { get; } = EndOf(Warmth, Lap, Segments, RunS);

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
        FirstTime(Warmth, Lap.PeakWindingC, Segments, RunS, 1, Warmth.Motor.Heat.WindingLimitC);

    /// <summary>When the magnet reaches its limit over the course, from cold, and how warm the motor is then.</summary>
    public (double Seconds, MotorTemperature At) MagnetLimit { get; } =
        FirstTime(
            Warmth,
            Lap.PeakMagnetC,
            Segments,
            RunS,
            Warmth.MagnetWeight,
            Warmth.Motor.Heat.MagnetLimitC
        );

    // Infinity when it does not within the run or an hour.
    private static (double Seconds, MotorTemperature At) FirstTime(
        MotorWarmth warmth,
        double peakC,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        double runS,
        double windingWeight,
        double limitC
    )
    {
        var x = warmth.Cold;
        if (double.IsNaN(peakC))
        {
            return (double.NaN, x);
        }

        var longest = Math.Max(LongestLookS, double.IsNaN(runS) ? 0 : runS);
        for (var t = 0.0; t < longest && peakC >= limitC; )
        {
            foreach (var (drive, seconds) in segments)
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

    private static MotorTemperature EndOf(
        MotorWarmth warmth,
        LapWarmth lap,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        double runS
    )
    {
        if (double.IsNaN(runS))
        {
            return lap.Runaway ? MotorTemperature.At(double.NaN) : lap.Start;
        }

        var lapS = segments.Sum(s => s.Seconds);
        var laps = Math.Min(Math.Floor(runS / lapS), MostLaps);
        var x = warmth.Cold;
        HeatMap? settled = null;
        for (var n = 0; n < laps && !PastAll(x); n++)
        {
            var next = settled?.Apply(x) ?? Driven(warmth, segments, x, lapS);
            // Once a lap changes next to nothing its currents stay.
            if (next.DistanceK(x) <= SettlingKPerS * lapS)
            {
                settled ??= LapWarmth.MapOf(warmth, segments, next);
            }

            x = next;
        }

        if (laps < MostLaps && !PastAll(x))
        {
            x = Driven(warmth, segments, x, runS - (laps * lapS));
        }

        return PastAll(x) ? MotorTemperature.At(double.PositiveInfinity) : x;
    }

    // A lap, or the rest of a run, that ends past this is runaway.
    private static bool PastAll(MotorTemperature x) => x.WindingC > MotorWarmth.RunawayC;

    // The first seconds of a lap; what is far beyond all limits is left there.
    private static MotorTemperature Driven(
        MotorWarmth warmth,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        MotorTemperature start,
        double forS
    )
    {
        var x = start;
        var runS = forS;
        foreach (var (drive, seconds) in segments)
        {
            var left = Math.Min(runS, seconds);
            while (left > 0 && !(x.WindingC > MotorWarmth.FarBeyondC))
            {
                var piece = Piece.Next(warmth, drive, x, left);
                x = piece.Apply(x);
                left -= piece.Seconds;
            }

            runS -= seconds;
        }

        return x;
    }
}
