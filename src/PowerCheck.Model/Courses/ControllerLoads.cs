using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>
/// Loss over the rated loss of each segment of a lap, by how far the motor has warmed: a warm magnet asks for more current,
/// a warm winding lets less through at a held throttle (M7).
/// </summary>
/// <param name="Segments">Duration [s] of each segment, and whether its throttle is held.</param>
/// <param name="Laps">Laps from a cold motor, from one as warm as it gets and from some in between.</param>
public sealed record ControllerLoads(
    IReadOnlyList<(double Seconds, bool Throttle)> Segments,
    IReadOnlyList<LapLoads> Laps
)
{
    /// <summary>Which share of the rest of its way the motor has warmed at the start of the laps in between, assumed.</summary>
    private static readonly double[] Between = [0.4, 0.75];

    /// <summary>How far from there a lap that is driven may start, assumed.</summary>
    private const double Near = 0.12;

    /// <summary>From a second lap that starts warmer than this there is no way on worth following, assumed.</summary>
    private const double Late = 0.9;

    /// <summary>Laps that start no further apart count as one, assumed.</summary>
    private const double Alike = 0.02;

    /// <summary>Duration of a lap [s].</summary>
    public double LapS { get; } = Segments.Sum(segment => segment.Seconds);

    // Asked for lap after lap: what does not change between laps is laid out once.
    private readonly (double Seconds, bool Throttle)[] segments = [.. Segments];
    private readonly bool throttled = Segments.Any(segment => segment.Throttle);
    private readonly double[][] loads = [.. Laps.Select(lap => lap.Loads.ToArray())];
    private readonly double[] magnets = [.. Laps.Select(lap => lap.Warmed.Magnet)];
    private readonly double[] windings = [.. Laps.Select(lap => lap.Warmed.Winding)];

    /// <summary>Duration [s] and load of each segment: the polynomial through the laps.</summary>
    /// <param name="warmed">How far the motor has warmed at the start of the lap.</param>
    public (double Seconds, double Load)[] At(Warmed warmed)
    {
        Span<double> byMagnet = stackalloc double[loads.Length];
        Span<double> byWinding = stackalloc double[throttled ? loads.Length : 0];
        Weigh(byMagnet, warmed.Magnet, magnets);
        Weigh(byWinding, warmed.Winding, windings);
        var at = new (double, double)[segments.Length];
        for (var n = 0; n < at.Length; n++)
        {
            var (seconds, throttle) = segments[n];
            ReadOnlySpan<double> weights = throttle ? byWinding : byMagnet;
            var load = 0.0;
            for (var lap = 0; lap < weights.Length; lap++)
            {
                load += weights[lap] * loads[lap][n];
            }

            at[n] = (seconds, load);
        }

        return at;
    }

    /// <summary>
    /// The motor as warm as it gets: at the start of the lap that repeats itself, in runaway at the start of the last lap
    /// within the winding's limit.
    /// </summary>
    /// <param name="laps">The motor lap after lap.</param>
    public static MotorTemperature Warmest(LapWalk laps)
    {
        if (!laps.Lap.Runaway)
        {
            return laps.Lap.Start;
        }

        var limit = laps.Warmth.Motor.Heat.WindingLimitC;
        var last = laps.Warmth.Cold;
        for (var n = 1; n + 1 < laps.Count && laps.Start(n + 1).WindingC <= limit; n++)
        {
            last = laps.Start(n);
        }

        return last;
    }

    /// <summary>The loads of a rig's lap, half charged.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="segments">The segments of a lap.</param>
    /// <param name="laps">The motor lap after lap.</param>
    /// <param name="settled">What the lap that repeats itself takes.</param>
    public static ControllerLoads Of(
        Rig rig,
        IReadOnlyList<SegmentLoad> segments,
        LapWalk laps,
        LapPower settled
    )
    {
        var warmest = Warmest(laps);
        var known = !double.IsNaN(warmest.WindingC);
        var through = new List<LapLoads>
        {
            new(Warmed.Not, known ? From(laps.Warmth.Cold) : Loads(settled)),
            new(Warmed.Through, laps.Lap.Runaway ? From(warmest) : Loads(settled)),
        };
        foreach (var (start, warmed) in known ? Amid(laps, warmest) : [])
        {
            // Laps that start alike tell the same.
            if (through.TrueForAll(other => other.Warmed.Apart(warmed) > Alike))
            {
                through.Add(new(warmed, From(start)));
            }
        }

        return new(
            [.. segments.Select(s => (s.Segment.DurationS, s.Drive.Follows == DriveKind.Throttle))],
            through
        );

        double[] From(MotorTemperature start) =>
            Loads(
                new LapLoad(
                    rig,
                    segments,
                    laps.Warmth,
                    LapWarmth.From(laps.Warmth, laps.Segments, start)
                ).At(CaseRunner.HalfCharge)
            );

        double[] Loads(LapPower power) =>
            [.. power.Segments.Select(s => s.MemoryW / rig.Controller.RatedHeatW)];
    }

    // The second lap, and two on the way from it to the warmest.
    private static (MotorTemperature Start, Warmed Warmed)[] Amid(
        LapWalk laps,
        MotorTemperature warmest
    )
    {
        var second = laps.Start(1);
        var warmed = Warmed.Of(laps.Warmth, second, warmest);
        var late = Math.Max(warmed.Magnet, warmed.Winding) > Late;
        return
        [
            (second, warmed),
            .. Between.Select(share =>
                Start(laps, late ? laps.Warmth.Cold : second, warmest, share)
            ),
        ];
    }

    // The lap that starts the nearest to a share of the way, or the point there where none does.
    private static (MotorTemperature Start, Warmed Warmed) Start(
        LapWalk laps,
        MotorTemperature from,
        MotorTemperature warmest,
        double share
    )
    {
        var start = from.Toward(warmest, share);
        var wanted = Warmed.Of(laps.Warmth, start, warmest);
        var (found, nearest) = (wanted, Near * (1 - share));
        for (var n = 2; n < laps.Count; n++)
        {
            var warmed = Warmed.Of(laps.Warmth, laps.Start(n), warmest);
            if (warmed.From(wanted) < nearest)
            {
                (start, found, nearest) = (laps.Start(n), warmed, warmed.From(wanted));
            }
        }

        return (start, found);
    }

    // Lagrange's weights of the laps.
    private static void Weigh(Span<double> weights, double x, double[] laps)
    {
        for (var n = 0; n < weights.Length; n++)
        {
            var (at, weight) = (laps[n], 1.0);
            for (var other = 0; other < laps.Length; other++)
            {
                weight *= other == n ? 1 : (x - laps[other]) / (at - laps[other]);
            }

            weights[n] = weight;
        }
    }
}

/// <summary>Loads of one lap.</summary>
/// <param name="Warmed">How far the motor has warmed at its start.</param>
/// <param name="Loads">Loss over the rated loss of each segment.</param>
public sealed record LapLoads(Warmed Warmed, IReadOnlyList<double> Loads);

/// <summary>How far a motor has warmed, 0 cold to 1 as warm as it gets over the course.</summary>
/// <param name="Magnet">The magnet.</param>
/// <param name="Winding">The winding, mixed with the case that it follows.</param>
public readonly record struct Warmed(double Magnet, double Winding)
{
    /// <summary>Cold.</summary>
    public static readonly Warmed Not = new(0, 0);

    /// <summary>As warm as it gets.</summary>
    public static readonly Warmed Through = new(1, 1);

    /// <summary>How far the nearer of both is from another state.</summary>
    /// <param name="other">The other.</param>
    public double Apart(Warmed other) =>
        Math.Min(Math.Abs(Magnet - other.Magnet), Math.Abs(Winding - other.Winding));

    /// <summary>How far the further of both is from another state.</summary>
    /// <param name="other">The other.</param>
    public double From(Warmed other) =>
        Math.Max(Math.Abs(Magnet - other.Magnet), Math.Abs(Winding - other.Winding));

    /// <summary>How far it has at given temperatures.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="x">The temperatures.</param>
    /// <param name="warmest">As warm as it gets.</param>
    public static Warmed Of(MotorWarmth warmth, MotorTemperature x, MotorTemperature warmest)
    {
        var cold = warmth.Cold;
        return new(
            Share(warmth.MagnetC(x), warmth.MagnetC(cold), warmth.MagnetC(warmest)),
            Share(
                x.WindingC + x.CaseC,
                cold.WindingC + cold.CaseC,
                warmest.WindingC + warmest.CaseC
            )
        );

        static double Share(double at, double cold, double warmest)
        {
            var rise = warmest - cold;
            return rise > 0 ? Math.Clamp((at - cold) / rise, 0, 1) : 1;
        }
    }
}
