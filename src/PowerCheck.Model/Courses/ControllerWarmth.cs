using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The controller's thermal memory over the course, lap after lap from cold (M7).</summary>
/// <param name="Memory">The memory.</param>
/// <param name="Loads">What it takes in over a lap.</param>
/// <param name="Warmed">How far the motor has warmed at the start of a lap.</param>
/// <param name="ForS">How long is looked at: the run, an hour at least [s].</param>
/// <param name="AmbientC">Air temperature [°C].</param>
/// <param name="SpanK">Rise at level 1 [K].</param>
public sealed record ControllerWarmth(
    ThermalMemory Memory,
    ControllerLoads Loads,
    Func<double, Warmed> Warmed,
    double ForS,
    double AmbientC,
    double SpanK
)
{
    /// <summary>A lap that changes the level by no more than this is the last that does, assumed.</summary>
    private const double Settled = 1e-12;

    private readonly (double Start, double Peak) repeated = Repeated(Memory, Loads);

    // What each segment leaves of the way to where its load settles.
    private readonly double[] decays =
    [
        .. Loads.Segments.Select(segment => Memory.Decay(segment.Seconds)),
    ];

    /// <summary>Level at the start, and end, of a lap that repeats itself.</summary>
    public double StartLevel => repeated.Start;

    /// <summary>Highest level within a lap that repeats itself.</summary>
    public double PeakLevel => repeated.Peak;

    /// <summary>Temperature shown for a level [°C]: T_a + θ·(T_lim − 25).</summary>
    /// <param name="level">The level.</param>
    public double TemperatureC(double level) => AmbientC + (level * SpanK);

    /// <summary>
    /// Levels over a run from cold: at its end, and the highest of all laps, those after it included. Those of a lap that
    /// repeats itself where the length of the run is not known.
    /// </summary>
    /// <param name="runS">Length of the run [s]; NaN when not known.</param>
    public (double End, double Peak) Over(double runS)
    {
        if (double.IsNaN(runS))
        {
            return (StartLevel, PeakLevel);
        }

        var (end, peak, _) = Walk(runS);
        var highest = runS >= ForS ? peak : Walk(ForS).Peak;
        return (end, Math.Max(highest, PeakLevel));
    }

    /// <summary>When the level first reaches the limit over the course, from cold [s].</summary>
    /// <returns>Infinity when it does not in the time that is looked at.</returns>
    public double TimeToLimit() => Walk(ForS).LimitS;

    /// <summary>Levels at given times over the course, from cold.</summary>
    /// <param name="times">The times, rising [s].</param>
    public double[] LevelsAt(IReadOnlyList<double> times)
    {
        var levels = new double[times.Count];
        double level = 0,
            t = 0;
        var asked = 0;
        var warmed = Warmed(0);
        var parts = Loads.At(warmed);
        for (var lap = 0.0; asked < levels.Length; lap++)
        {
            var before = level;
            for (var n = 0; n < parts.Length; n++)
            {
                var (seconds, load) = parts[n];
                for (; asked < levels.Length && times[asked] <= t + seconds; asked++)
                {
                    levels[asked] = Memory.After(level, load, times[asked] - t);
                }

                level = ThermalMemory.Decayed(level, load, decays[n]);
                t += seconds;
            }

            var next = Warmed(lap + 1);
            if (next != warmed)
            {
                (warmed, parts) = (next, Loads.At(next));
            }
            else if (asked < levels.Length && !(Math.Abs(level - before) > Settled))
            {
                t += Math.Floor((times[asked] - t) / Loads.LapS) * Loads.LapS;
            }
        }

        return levels;
    }

    /// <summary>The memory over the course.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="segments">The segments of a lap.</param>
    /// <param name="laps">The motor lap after lap.</param>
    /// <param name="settled">What the lap that repeats itself takes, half charged.</param>
    public static ControllerWarmth Of(
        Rig rig,
        IReadOnlyList<SegmentLoad> segments,
        LapWalk laps,
        LapPower settled
    )
    {
        var span = rig.Controller.LimitC - 25;
        var memory = new ThermalMemory(
            rig.Controller.ThermalTimeConstantS,
            Math.Max(0, (rig.Controller.LimitC - rig.Road.AmbientC) / span)
        );
        var warmest = ControllerLoads.Warmest(laps);
        return new(
            memory,
            ControllerLoads.Of(rig, segments, laps, settled),
            lap => Courses.Warmed.Of(laps.Warmth, laps.Start(lap), warmest),
            laps.ForS,
            rig.Road.AmbientC,
            span
        );
    }

    private static (double Start, double Peak) Repeated(ThermalMemory memory, ControllerLoads loads)
    {
        var settled = loads.At(Courses.Warmed.Through);
        var decay = Math.Exp(-loads.LapS / memory.TimeConstantS);
        var start =
            settled.Aggregate(0.0, (x, s) => memory.After(x, s.Load, s.Seconds)) / (1 - decay);
        var (level, peak) = (start, start);
        foreach (var (seconds, load) in settled)
        {
            level = memory.After(level, load, seconds);
            peak = Math.Max(peak, level);
        }

        return (start, peak);
    }

    // Level at the end, the highest, and when the limit is reached.
    private (double Level, double Peak, double LimitS) Walk(double forS)
    {
        double level = 0,
            peak = 0,
            t = 0,
            reached = double.PositiveInfinity;
        var warmed = Warmed(0);
        var parts = Loads.At(warmed);
        for (var lap = 0.0; t < forS; lap++)
        {
            var before = level;
            for (var n = 0; n < parts.Length; n++)
            {
                var (seconds, load) = parts[n];
                var piece = Math.Min(seconds, forS - t);
                var decay = piece < seconds ? Memory.Decay(piece) : decays[n];
                var after = ThermalMemory.Decayed(level, load, decay);
                if (!(after < Memory.Limit) && double.IsInfinity(reached))
                {
                    reached = t + Memory.TimeToLimit(level, load);
                }

                level = after;
                peak = Math.Max(peak, level);
                t += piece;
            }

            var next = Warmed(lap + 1);
            if (next != warmed)
            {
                (warmed, parts) = (next, Loads.At(next));
            }
            else if (!(Math.Abs(level - before) > Settled))
            {
                t += Math.Floor((forS - t) / Loads.LapS) * Loads.LapS;
            }
        }

        return (level, peak, reached);
    }
}
