using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>
/// Loss over the rated loss of each segment of a lap, by how far the motor has warmed: a warm magnet asks for more current,
/// a warm winding lets less through at a held throttle (M7).
/// </summary>
/// <param name="Segments">Duration [s] of each segment, and whether its throttle is held.</param>
/// <param name="Cold">Loads of a lap from a cold motor.</param>
/// <param name="Half">Loads of a lap from a motor about half as warm as it gets.</param>
/// <param name="Warm">Loads of a lap with the motor as warm as it gets.</param>
/// <param name="HalfWarmed">How far the motor has warmed at the start of that lap, between 0 and 1.</param>
public sealed record ControllerLoads(
    IReadOnlyList<(double Seconds, bool Throttle)> Segments,
    IReadOnlyList<double> Cold,
    IReadOnlyList<double> Half,
    IReadOnlyList<double> Warm,
    Warmed HalfWarmed
)
{
    private const double About = 0.3;

    /// <summary>Duration of a lap [s].</summary>
    public double LapS { get; } = Segments.Sum(segment => segment.Seconds);

    /// <summary>Duration [s] and load of each segment: the parabola through the three laps.</summary>
    /// <param name="warmed">How far the motor has warmed at the start of the lap.</param>
    public (double Seconds, double Load)[] At(Warmed warmed)
    {
        var loads = new (double, double)[Segments.Count];
        for (var n = 0; n < loads.Length; n++)
        {
            var (seconds, throttle) = Segments[n];
            var share = throttle ? warmed.Winding : warmed.Magnet;
            var half = throttle ? HalfWarmed.Winding : HalfWarmed.Magnet;
            var bend = (((Half[n] - Cold[n]) / half) - (Warm[n] - Cold[n])) / (half - 1);
            var straight = Warm[n] - Cold[n] - bend;
            loads[n] = (seconds, Cold[n] + (share * (straight + (share * bend))));
        }

        return loads;
    }

    /// <summary>The motor as warm as it gets: at the start of the lap that repeats itself, in runaway at its limits.</summary>
    /// <param name="laps">The motor lap after lap.</param>
    public static MotorTemperature Warmest(LapWalk laps)
    {
        var heat = laps.Warmth.Motor.Heat;
        return laps.Lap.Runaway
            ? MotorTemperature.At(Math.Min(heat.WindingLimitC, heat.MagnetLimitC))
            : laps.Lap.Start;
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
        var (half, halfWarmed) = HalfWay(laps);
        return new(
            [.. segments.Select(s => (s.Segment.DurationS, s.Drive.Follows == DriveKind.Throttle))],
            From(laps.Warmth.Cold),
            From(half),
            Loads(settled),
            halfWarmed
        );

        double[] From(MotorTemperature start) =>
            Loads(
                double.IsNaN(laps.Lap.Start.WindingC)
                    ? settled
                    : new LapLoad(
                        rig,
                        segments,
                        laps.Warmth,
                        LapWarmth.From(laps.Warmth, laps.Segments, start)
                    ).At(CaseRunner.HalfCharge)
            );

        double[] Loads(LapPower power) =>
            [.. power.Segments.Select(s => s.MemoryW / rig.Controller.RatedHeatW)];
    }

    // The first lap that starts so warm, or the mean of both ends where none starts between them.
    private static (MotorTemperature Start, Warmed Warmed) HalfWay(LapWalk laps)
    {
        var (cold, warm) = (laps.Warmth.Cold, Warmest(laps));
        for (var n = 1; n < laps.Count; n++)
        {
            var warmed = Warmed.Of(laps.Warmth, laps.Start(n), warm);
            if (warmed.IsBetween(About))
            {
                return (laps.Start(n), warmed);
            }
        }

        return (
            new((cold.WindingC + warm.WindingC) / 2, (cold.CaseC + warm.CaseC) / 2),
            new(0.5, 0.5)
        );
    }
}

/// <summary>How far a motor has warmed, 0 cold to 1 as warm as it gets over the course.</summary>
/// <param name="Magnet">The magnet.</param>
/// <param name="Winding">The winding, mixed with the case that it follows.</param>
public readonly record struct Warmed(double Magnet, double Winding)
{
    /// <summary>As warm as it gets.</summary>
    public static readonly Warmed Through = new(1, 1);

    /// <summary>Whether both are so far from cold and from as warm as it gets.</summary>
    /// <param name="apart">How far.</param>
    public bool IsBetween(double apart) =>
        Math.Min(Magnet, Winding) >= apart && Math.Max(Magnet, Winding) <= 1 - apart;

    /// <summary>How far it has at given temperatures.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="x">The temperatures.</param>
    /// <param name="warmest">As warm as it gets.</param>
    public static Warmed Of(MotorWarmth warmth, MotorTemperature x, MotorTemperature warmest)
    {
        return new(Share(warmth.MagnetC), Share(at => at.WindingC + at.CaseC));

        double Share(Func<MotorTemperature, double> part)
        {
            var (cold, rise) = (part(warmth.Cold), part(warmest) - part(warmth.Cold));
            return rise > 0 ? Math.Clamp((part(x) - cold) / rise, 0, 1) : 1;
        }
    }
}
