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
    private const int MostLaps = 2000;
    private const double LongestLookS = 3600;

    private double LapS => Segments.Sum(s => s.Seconds);

    /// <summary>Temperatures at the end of the run, from cold.</summary>
    public MotorTemperature End { get; } = EndOf(Warmth, Lap, Segments, RunS);

    /// <summary>
    /// Temperatures from which the load cases are judged: the end of a lap that repeats itself or, in runaway, the end of
    /// the run, no more than what is called runaway.
    /// </summary>
    public MotorTemperature Warm =>
        Lap.Runaway
            ? new(
                Math.Min(End.WindingC, MotorWarmth.RunawayC),
                Math.Min(End.CaseC, MotorWarmth.RunawayC)
            )
            : Lap.Start;

    /// <summary>
    /// Time into the course, from cold, at which a weighted temperature reaches a limit [s]; infinity when it does not
    /// within the run or an hour.
    /// </summary>
    /// <param name="peakC">Its peak in a lap that repeats itself [°C].</param>
    /// <param name="windingWeight">Weight of the winding.</param>
    /// <param name="limitC">The limit [°C].</param>
    public double TimeToLimit(double peakC, double windingWeight, double limitC)
    {
        if (double.IsNaN(peakC) || double.IsNaN(Lap.Lap.G1))
        {
            return double.NaN;
        }

        var longest = Math.Max(LongestLookS, double.IsNaN(RunS) ? 0 : RunS);
        if (peakC < limitC)
        {
            return double.PositiveInfinity;
        }

        var x = Warmth.Cold;
        for (var t = 0.0; t < longest; )
        {
            foreach (var (drive, seconds) in Segments)
            {
                var (count, piece) = MotorWarmth.Pieces(drive, seconds);
                for (var n = 0; n < count; n++, t += piece)
                {
                    var network = drive.Network(Warmth, x);
                    var crossing = network.FirstCrossing(x, windingWeight, limitC, piece);
                    if (double.IsFinite(crossing))
                    {
                        return t + crossing;
                    }

                    x = network.Over(piece).Apply(x);
                }
            }
        }

        return double.PositiveInfinity;
    }

    private static MotorTemperature EndOf(
        MotorWarmth warmth,
        LapWarmth lap,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        double runS
    )
    {
        var laps = runS / segments.Sum(s => s.Seconds);
        if (double.IsNaN(laps))
        {
            return lap.Runaway ? MotorTemperature.At(double.NaN) : lap.Start;
        }

        var x = warmth.Cold;
        for (var n = 0; n < Math.Min(laps, MostLaps); n++)
        {
            var map = lap.Runaway ? LapWarmth.MapOf(warmth, segments, x) : lap.Lap;
            x = map.Apply(x);
            if (x.WindingC > 1000)
            {
                return MotorTemperature.At(double.PositiveInfinity);
            }
        }

        return x;
    }
}
