namespace PowerCheck.Model.Thermal;

/// <summary>A lap of the course, over and over, as the motor feels it (M6, M8).</summary>
/// <param name="Start">Temperatures at the start, and end, of a lap that repeats itself; infinite in runaway.</param>
/// <param name="PeakWindingC">Highest winding temperature within the lap [°C].</param>
/// <param name="PeakMagnetC">Highest magnet temperature within the lap [°C].</param>
/// <param name="PeakCaseC">Highest case temperature within the lap [°C].</param>
/// <param name="SegmentStarts">Temperatures at the start of each segment, and at the end of the last.</param>
public sealed record LapWarmth(
    MotorTemperature Start,
    double PeakWindingC,
    double PeakMagnetC,
    double PeakCaseC,
    IReadOnlyList<MotorTemperature> SegmentStarts
)
{
    private const int Rounds = 60;

    /// <summary>Whether repeating the lap never settles, or only past 400 °C.</summary>
    public bool Runaway => double.IsInfinity(Start.WindingC);

    /// <summary>
    /// The lap that repeats itself: each round solves exactly for the currents of the round before, until the magnet's
    /// temperature asks for no other.
    /// </summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="segments">Drive and duration [s] of each segment.</param>
    public static LapWarmth Periodic(
        MotorWarmth warmth,
        IReadOnlyList<(Drive Drive, double Seconds)> segments
    )
    {
        var start = warmth.Cold;
        var before = start;
        for (var round = 0; round < Rounds; round++)
        {
            var lap = MapOf(warmth, segments, start);
            var settles = !(lap.SpectralRadius >= 1);
            var next = settles ? lap.FixedPoint : MotorTemperature.At(double.PositiveInfinity);
            if (next.WindingC > MotorWarmth.RunawayC)
            {
                if (start.WindingC > MotorWarmth.RunawayC - 1e-6)
                {
                    return RunningAway;
                }

                // A heat that falls as the motor warms may still settle: the next round asks at the bound.
                next = MotorTemperature.At(MotorWarmth.RunawayC);
            }

            var near = !(next.DistanceK(start) >= 1e-6);
            (before, start) = (start, near ? next : next.Damped(start, before));
            if (near)
            {
                break;
            }
        }

        return From(warmth, segments, start);
    }

    private static LapWarmth RunningAway =>
        new(
            MotorTemperature.At(double.PositiveInfinity),
            double.PositiveInfinity,
            double.PositiveInfinity,
            double.PositiveInfinity,
            []
        );

    /// <summary>The map of one lap from given temperatures, with the currents that it has from there.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="segments">Drive and duration [s] of each segment.</param>
    /// <param name="start">Temperatures at the start.</param>
    public static HeatMap MapOf(
        MotorWarmth warmth,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        MotorTemperature start
    )
    {
        var map = HeatMap.Identity;
        var x = start;
        foreach (var (drive, seconds) in segments)
        {
            for (var left = seconds; left > 0; )
            {
                var (network, piece) = Piece.Next(warmth, drive, x, left);
                var step = network.Over(piece);
                map = map.Then(step);
                x = step.Apply(x);
                left -= piece;
            }
        }

        return map;
    }

    /// <summary>One lap from given temperatures.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="segments">Drive and duration [s] of each segment.</param>
    /// <param name="start">Temperatures at the start.</param>
    public static LapWarmth From(
        MotorWarmth warmth,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        MotorTemperature start
    )
    {
        double winding = double.NegativeInfinity,
            magnet = winding,
            housing = winding;
        var starts = new MotorTemperature[segments.Count + 1];
        var x = start;
        for (var s = 0; s < segments.Count; s++)
        {
            starts[s] = x;
            var (drive, seconds) = segments[s];
            for (var left = seconds; left > 0; )
            {
                var (network, piece) = Piece.Next(warmth, drive, x, left);
                var end = network.Over(piece).Apply(x);
                winding = Math.Max(winding, network.Peak(x, end, 1));
                magnet = Math.Max(magnet, network.Peak(x, end, warmth.MagnetWeight));
                housing = Math.Max(housing, network.Peak(x, end, 0));
                x = end;
                left -= piece;
            }
        }

        starts[^1] = x;
        return new(start, winding, magnet, housing, starts);
    }
}
