using MathNet.Numerics.LinearAlgebra;
using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>A course driven from cold, lap after lap, each moment with its own current.</summary>
internal sealed class Laps
{
    /// <summary>A lap that starts hotter than this runs away [°C].</summary>
    public const double RunawayC = 400;
    private const int MostLaps = 20_000;
    private const double LongestPartS = 6;
    private const double LongestJammedPartS = 1;

    private readonly Plain plain;
    private readonly Nodes nodes;

    public Laps(Plain plain)
    {
        this.plain = plain;
        nodes = new(plain, 1);
        Stretches =
        [
            .. plain.Rig.Course.Segments.SelectMany(Parts).Select(s => new Stretch(plain, s)),
        ];
        LapS = Stretches.Sum(s => s.Seconds);
        Repeat();
    }

    public IReadOnlyList<Stretch> Stretches { get; }

    public double LapS { get; }

    /// <summary>Winding and case where each part of the lap that repeats itself starts and ends.</summary>
    public IReadOnlyList<Vector<double>> Ends { get; private set; } = [];

    public bool Runaway { get; private set; }

    /// <summary>Whether the pack breaks down under the accessories alone, so that there is no operating point.</summary>
    public bool Starved { get; private set; }

    public double WindingPeakC { get; private set; }

    public double MagnetPeakC { get; private set; }

    public double CasePeakC { get; private set; }

    /// <summary>Winding and case after some time from cold.</summary>
    public Vector<double> After(double seconds)
    {
        var x = nodes.Cold;
        for (var left = seconds; left > 0; )
        {
            foreach (var stretch in Stretches)
            {
                var part = Math.Min(left, stretch.Seconds);
                if (part > 0 && x[0] < 1000)
                {
                    x = Drive(stretch, x, part)[^1];
                }

                left -= part;
            }
        }

        return x;
    }

    /// <summary>A stretch from given temperatures: winding and case at its end.</summary>
    public Vector<double> Over(Stretch stretch, Vector<double> start, double seconds) =>
        Drive(stretch, start, seconds)[^1];

    public Vector<double> Cold => nodes.Cold;

    // Parts so short that the mean of both ends' temperatures is the mean over the part.
    private static IEnumerable<PlainSegment> Parts(PlainSegment segment)
    {
        var longest = segment.Kind == PlainSegmentKind.Jammed ? LongestJammedPartS : LongestPartS;
        var count = (int)Math.Ceiling(segment.Seconds / longest);
        return Enumerable.Repeat(segment with { Seconds = segment.Seconds / count }, count);
    }

    private void Repeat()
    {
        var x = nodes.Cold;
        for (var lap = 0; lap < MostLaps; lap++)
        {
            var start = x;
            foreach (var stretch in Stretches)
            {
                x = Drive(stretch, x, stretch.Seconds)[^1];
                if (x[0] > 5 * RunawayC)
                {
                    break;
                }
            }

            if (double.IsNaN(x[0]))
            {
                Starved = true;
                return;
            }

            if (x[0] > RunawayC)
            {
                Runaway = true;
                return;
            }

            if ((x - start).InfinityNorm() < 1e-6)
            {
                Look(x);
                return;
            }
        }

        throw new InvalidOperationException($"rig {plain.Rig.Number} never repeats itself");
    }

    private void Look(Vector<double> start)
    {
        List<Vector<double>> ends = [start];
        double winding = double.NegativeInfinity,
            magnet = winding,
            housing = winding;
        foreach (var stretch in Stretches)
        {
            foreach (var t in Drive(stretch, ends[^1], stretch.Seconds))
            {
                winding = Math.Max(winding, t[0]);
                magnet = Math.Max(magnet, plain.MagnetC(t[0], t[1]));
                housing = Math.Max(housing, t[1]);
            }

            ends.Add(Drive(stretch, ends[^1], stretch.Seconds)[^1]);
        }

        (Ends, WindingPeakC, MagnetPeakC, CasePeakC) = (ends, winding, magnet, housing);
    }

    private Vector<double>[] Drive(Stretch stretch, Vector<double> start, double seconds) =>
        nodes.Over(
            start,
            seconds,
            (windingC, magnetC) => stretch.At(0.5, windingC, magnetC),
            stretch.Standing ? plain.Rig.Motor.LockedHeatFactor : 1
        );
}
