using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>A lap of the course with the motor as warm as it gets: what pack and controller feel (M8).</summary>
public sealed class LapLoad
{
    private readonly Rig rig;
    private readonly SegmentLoad[] segments;
    private readonly (double WindingC, double MagnetC)[] warm;

    /// <summary>The lap.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="lap">The lap that repeats itself.</param>
    public LapLoad(Rig rig, IReadOnlyList<SegmentLoad> segments, MotorWarmth warmth, LapWarmth lap)
    {
        this.rig = rig;
        this.segments = [.. segments];
        LapS = segments.Sum(s => s.Segment.DurationS);
        warm = new (double, double)[segments.Count];
        for (var n = 0; n < warm.Length; n++)
        {
            warm[n] = Mean(warmth, lap, n);
        }
    }

    /// <summary>Duration of one lap [s].</summary>
    public double LapS { get; }

    /// <summary>What the lap takes at a charge.</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    public LapPower At(double charge)
    {
        var source = rig.SourceAt(charge, true);
        var segmentPower = new SegmentPower[segments.Length];
        double battery = 0,
            energy = 0;
        var lowest = double.PositiveInfinity;
        for (var n = 0; n < segmentPower.Length; n++)
        {
            var power = segments[n].At(rig, source, warm[n].WindingC, warm[n].MagnetC);
            var share = segments[n].Segment.DurationS / LapS;
            battery += share * power.BatteryA;
            energy += share * Delivered(source, power);
            lowest = Math.Min(lowest, power.BusV);
            segmentPower[n] = power;
        }

        return new(segmentPower, battery, energy, lowest);
    }

    // What the cells give less what is lost on the way: with a current that comes and goes the loss is by its square's mean.
    private static double Delivered(Source source, SegmentPower power) =>
        (source.OpenCircuitV * power.BatteryA)
        - (source.ResistanceOhm * power.BatteryRmsA * power.BatteryRmsA);

    /// <summary>Root mean square over the lap of a figure of its segments [same unit]. Source: iec60034-1.</summary>
    /// <param name="power">What the segments take.</param>
    /// <param name="figure">The figure.</param>
    public double Rms(LapPower power, Func<SegmentPower, double> figure) =>
        DutyCycle.Rms(power.Segments.Select((s, n) => (figure(s), segments[n].Segment.DurationS)));

    // Mean of the temperatures at both ends of the segment; in runaway the limits, past which the motor is lost anyway; the
    // reference state where they are not known.
    private static (double WindingC, double MagnetC) Mean(MotorWarmth warmth, LapWarmth lap, int n)
    {
        if (double.IsNaN(lap.Start.WindingC))
        {
            return (20, 20);
        }

        if (lap.Runaway)
        {
            var heat = warmth.Motor.Heat;
            return (heat.WindingLimitC, Math.Min(heat.WindingLimitC, heat.MagnetLimitC));
        }

        var (from, to) = (lap.SegmentStarts[n], lap.SegmentStarts[n + 1]);
        return ((from.WindingC + to.WindingC) / 2, (warmth.MagnetC(from) + warmth.MagnetC(to)) / 2);
    }
}

/// <summary>What a lap takes at one charge.</summary>
/// <param name="Segments">What each segment takes.</param>
/// <param name="BatteryA">Mean battery current [A].</param>
/// <param name="PowerW">Mean power at the controllers' input [W].</param>
/// <param name="LowestBusV">Lowest bus voltage of the hardest segment [V].</param>
public sealed record LapPower(
    IReadOnlyList<SegmentPower> Segments,
    double BatteryA,
    double PowerW,
    double LowestBusV
);

/// <summary>Root mean square of a duty cycle (M8).</summary>
public static class DutyCycle
{
    /// <summary>√(Σ I²·t / Σ t). Source: iec60034-1, intermittent duty.</summary>
    /// <param name="pieces">Value and duration [s] of each piece.</param>
    public static double Rms(IEnumerable<(double Value, double Seconds)> pieces)
    {
        double squares = 0,
            time = 0;
        foreach (var (value, seconds) in pieces)
        {
            squares += value * value * seconds;
            time += seconds;
        }

        return Math.Sqrt(squares / time);
    }
}
