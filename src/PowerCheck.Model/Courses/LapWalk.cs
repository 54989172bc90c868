using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The motor lap after lap, from cold (M8).</summary>
public sealed class LapWalk
{
    /// <summary>More laps than these are not looked at, assumed.</summary>
    private const int MostLaps = 20_000;

    /// <summary>How long is walked at least [s], assumed.</summary>
    private const double LeastS = 3600;

    /// <summary>A lap that changes the motor by no more than this is the last that does [K], assumed.</summary>
    private const double LeastK = 1e-9;

    /// <summary>Laps that are driven piece by piece before the others follow from the laps around them, assumed.</summary>
    private const int Driven = 2;

    /// <summary>Distance of the laps between which the others lie [K], assumed.</summary>
    private const double ApartK = 8;

    private readonly MotorTemperature[] starts;

    /// <summary>Walks from cold.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="lap">The lap that repeats itself.</param>
    /// <param name="segments">Drive and duration [s] of each segment.</param>
    /// <param name="runS">How long it is driven [s], NaN when not known: an hour is walked at least.</param>
    public LapWalk(
        MotorWarmth warmth,
        LapWarmth lap,
        IReadOnlyList<(Drive Drive, double Seconds)> segments,
        double runS
    )
    {
        (Warmth, Lap, Segments) = (warmth, lap, segments);
        ForS = double.IsNaN(runS) ? LeastS : Math.Max(runS, LeastS);
        LapS = segments.Sum(s => s.Seconds);
        starts = [.. Starts()];
        Started = (int)Math.Min(Math.Ceiling(ForS / LapS), MostLaps);
    }

    /// <summary>The motor in its air.</summary>
    public MotorWarmth Warmth { get; }

    /// <summary>The lap that repeats itself.</summary>
    public LapWarmth Lap { get; }

    /// <summary>Drive and duration [s] of each segment.</summary>
    public IReadOnlyList<(Drive Drive, double Seconds)> Segments { get; }

    /// <summary>How long is walked [s]: the run, an hour at least.</summary>
    public double ForS { get; }

    /// <summary>Duration of a lap [s].</summary>
    public double LapS { get; }

    /// <summary>How many laps are started in the time that is walked.</summary>
    public int Started { get; }

    /// <summary>How many lap starts are known.</summary>
    public int Count => starts.Length;

    /// <summary>Temperatures at the start of a lap; of the last one that differs from the one before, or that is walked.</summary>
    /// <param name="number">How many laps were driven before.</param>
    public MotorTemperature Start(double number) =>
        starts[(int)Math.Min(number, starts.Length - 1)];

    /// <summary>Temperatures after some time; infinite in runaway.</summary>
    /// <param name="runS">How long it is driven from cold, not longer than is walked [s].</param>
    public MotorTemperature After(double runS)
    {
        var laps = Math.Floor(runS / LapS);
        var x = Start(laps);
        if (laps < MostLaps && !PastAll(x))
        {
            x = Driving(x, runS - (laps * LapS));
        }

        return PastAll(x) ? MotorTemperature.At(double.PositiveInfinity) : x;
    }

    /// <summary>
    /// When a lap first reaches a limit, from cold [s], and how warm the motor is then; null when it does not.
    /// </summary>
    /// <param name="number">How many laps were driven before.</param>
    /// <param name="windingWeight">Weight of the winding in the temperature that is limited; the case has the rest.</param>
    /// <param name="limitC">The limit [°C].</param>
    public (double Seconds, MotorTemperature At)? Crossing(
        int number,
        double windingWeight,
        double limitC
    )
    {
        var x = Start(number);
        var t = number * LapS;
        foreach (var (drive, seconds) in Segments)
        {
            var piece = 0.0;
            for (var left = seconds; left > 0; left -= piece, t += piece)
            {
                (var network, piece) = Piece.Next(Warmth, drive, x, left);
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

        return null;
    }

    // A lap, or the rest of a run, that ends past this is runaway.
    private static bool PastAll(MotorTemperature x) => x.WindingC > MotorWarmth.RunawayC;

    private IEnumerable<MotorTemperature> Starts()
    {
        var laps = Math.Min(Math.Floor(ForS / LapS), MostLaps);
        var x = Warmth.Cold;
        LapsBetween? between = null;
        yield return x;
        for (var n = 0; n < laps && !PastAll(x); n++)
        {
            between ??= n == Driven && !Lap.Runaway ? new(this, x) : null;
            var next = between?.Next(x) ?? Driving(x, LapS);
            if (!(next.DistanceK(x) > LeastK))
            {
                yield break;
            }

            yield return x = next;
        }
    }

    /// <summary>
    /// Laps that change the motor slowly: each lies between two laps on the way to the one that repeats itself, whose currents
    /// differ by little.
    /// </summary>
    private sealed class LapsBetween(LapWalk walk, MotorTemperature from)
    {
        private readonly MotorTemperature to = walk.Lap.Start;

        private readonly HeatMap?[] maps = new HeatMap?[
            2 + (int)(from.DistanceK(walk.Lap.Start) / ApartK)
        ];

        public MotorTemperature Next(MotorTemperature x)
        {
            var way = Sum(to) - Sum(from);
            var last = maps.Length - 1;
            var at = way == 0 ? last : Math.Clamp(last * (Sum(x) - Sum(from)) / way, 0, last);
            var before = (int)Math.Min(at, last - 1);
            var (low, high) = (Map(before).Apply(x), Map(before + 1).Apply(x));
            return low.Toward(high, at - before);
        }

        private HeatMap Map(int n) =>
            maps[n] ??= LapWarmth.MapOf(
                walk.Warmth,
                walk.Segments,
                from.Toward(to, (double)n / (maps.Length - 1))
            );

        private static double Sum(MotorTemperature x) => x.WindingC + x.CaseC;
    }

    // The first seconds of a lap; what is far beyond all limits is left there.
    private MotorTemperature Driving(MotorTemperature start, double forS)
    {
        var x = start;
        var runS = forS;
        foreach (var (drive, seconds) in Segments)
        {
            var left = Math.Min(runS, seconds);
            while (left > 0 && !(x.WindingC > MotorWarmth.FarBeyondC))
            {
                var piece = Piece.Next(Warmth, drive, x, left);
                x = piece.Apply(x);
                left -= piece.Seconds;
            }

            runS -= seconds;
        }

        return x;
    }
}
