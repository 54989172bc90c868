using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>A lap of the course with the motor as warm as it gets: what pack and controller feel (M8).</summary>
public sealed record LapLoad
{
    private readonly IReadOnlyList<SegmentLoad> segments;
    private readonly IReadOnlyList<(double WindingC, double MagnetC)> warm;
    private readonly Rig rig;

    /// <summary>The lap.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="lap">The lap that repeats itself.</param>
    public LapLoad(Rig rig, IReadOnlyList<SegmentLoad> segments, MotorWarmth warmth, LapWarmth lap)
    {
        this.rig = rig;
        this.segments = segments;
        LapS = segments.Sum(s => s.Segment.DurationS);
        warm = [.. segments.Select((_, n) => Mean(warmth, lap, n))];
    }

    /// <summary>Duration of one lap [s].</summary>
    public double LapS { get; }

    /// <summary>What each segment takes at a charge.</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    public IEnumerable<(double Seconds, SegmentPower Power)> At(double charge)
    {
        for (var n = 0; n < segments.Count; n++)
        {
            yield return (
                segments[n].Segment.DurationS,
                segments[n].At(rig, charge, warm[n].WindingC, warm[n].MagnetC)
            );
        }
    }

    /// <summary>Mean over the lap of a figure of its segments at a charge.</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    /// <param name="figure">The figure.</param>
    public double Mean(double charge, Func<SegmentPower, double> figure)
    {
        var sum = 0.0;
        foreach (var (seconds, power) in At(charge))
        {
            sum += seconds * figure(power);
        }

        return sum / LapS;
    }

    /// <summary>Root mean square over the lap of a figure of its segments [same unit]. Source: iec60034-1.</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    /// <param name="figure">The figure.</param>
    public double Rms(double charge, Func<SegmentPower, double> figure) =>
        DutyCycle.Rms(At(charge).Select(s => (figure(s.Power), s.Seconds)));

    /// <summary>Lowest bus voltage of the hardest segment at a charge [V].</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    public double LowestBusV(double charge) =>
        At(charge).Aggregate(double.PositiveInfinity, (v, s) => Math.Min(v, s.Power.LowestBusV));

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
