using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The controller's thermal memory over the course (M7).</summary>
/// <param name="Memory">The memory.</param>
/// <param name="StartLevel">Level at the start, and end, of a lap that repeats itself.</param>
/// <param name="PeakLevel">Highest level within it.</param>
/// <param name="Decay">What a lap leaves of a level above.</param>
/// <param name="Loads">Duration [s] of each segment and its loss over the rated loss.</param>
/// <param name="AmbientC">Air temperature [°C].</param>
/// <param name="SpanK">Rise at level 1 [K].</param>
public sealed record ControllerWarmth(
    ThermalMemory Memory,
    double StartLevel,
    double PeakLevel,
    double Decay,
    IReadOnlyList<(double Seconds, double Load)> Loads,
    double AmbientC,
    double SpanK
)
{
    /// <summary>Temperature shown for a level [°C]: T_a + θ·(T_lim − 25).</summary>
    /// <param name="level">The level.</param>
    public double TemperatureC(double level) => AmbientC + (level * SpanK);

    /// <summary>Level at the end of the run, from cold; of a lap that repeats itself where its length is not known.</summary>
    /// <param name="runS">Length of the run [s]; NaN when not known.</param>
    public double LevelAtEnd(double runS)
    {
        if (double.IsNaN(runS))
        {
            return StartLevel;
        }

        var lapS = Loads.Sum(load => load.Seconds);
        var laps = Math.Floor(runS / lapS);
        var level = StartLevel * (1 - Math.Pow(Decay, laps));
        var left = runS - (laps * lapS);
        foreach (var (seconds, load) in Loads)
        {
            level = Memory.After(level, load, Math.Clamp(left, 0, seconds));
            left -= seconds;
        }

        return level;
    }

    /// <summary>The memory over a lap.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="lapS">Duration of the lap [s].</param>
    /// <param name="half">What the lap takes half charged.</param>
    public static ControllerWarmth Over(
        Rig rig,
        IReadOnlyList<SegmentLoad> segments,
        double lapS,
        LapPower half
    )
    {
        var span = rig.Controller.LimitC - 25;
        var memory = new ThermalMemory(
            rig.Controller.ThermalTimeConstantS,
            Math.Max(0, (rig.Controller.LimitC - rig.Road.AmbientC) / span)
        );
        var loads = new (double Seconds, double Load)[segments.Count];
        for (var n = 0; n < loads.Length; n++)
        {
            loads[n] = (
                segments[n].Segment.DurationS,
                half.Segments[n].MemoryW / rig.Controller.RatedHeatW
            );
        }

        var decay = Math.Exp(-lapS / memory.TimeConstantS);
        var fromNothing = loads.Aggregate(0.0, (x, s) => memory.After(x, s.Load, s.Seconds));
        var start = fromNothing / (1 - decay);
        var peak = start;
        var level = start;
        foreach (var (seconds, load) in loads)
        {
            level = memory.After(level, load, seconds);
            peak = Math.Max(peak, level);
        }

        return new(memory, start, peak, decay, loads, rig.Road.AmbientC, span);
    }
}
