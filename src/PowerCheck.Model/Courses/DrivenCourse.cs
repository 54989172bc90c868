using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The course as a rig drives it: the motor lap after lap, and what pack and controller feel of it (M6 to M8, M11).</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Segments">The segments of a lap, in the parts that pack and controller feel.</param>
/// <param name="Laps">The motor lap after lap, from cold.</param>
/// <param name="Half">What the lap that repeats itself takes, half charged.</param>
/// <param name="Endurance">How long the pack lasts.</param>
/// <param name="RunS">How long it is driven: as wanted, else as the pack lasts [s]; NaN when not known.</param>
public sealed record DrivenCourse(
    Rig Rig,
    IReadOnlyList<SegmentLoad> Segments,
    LapWalk Laps,
    LapPower Half,
    EnduranceReport Endurance,
    double RunS
)
{
    /// <summary>The course of a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    public static DrivenCourse Of(Rig rig, Course course)
    {
        var segments = course
            .Segments.SelectMany(s => s.Parts())
            .Select(part => SegmentLoad.Of(rig, part))
            .ToArray();
        var drives = segments.Select(s => (s.Drive, s.Segment.DurationS)).ToArray();
        var warmth = new MotorWarmth(rig.Motor, rig.Road.AmbientC);
        var periodic = LapWarmth.Periodic(warmth, drives);
        var lap = new LapLoad(rig, segments, warmth, periodic);
        var half = lap.At(CaseRunner.HalfCharge);
        var endurance = EnduranceRunner.Run(rig, lap, half);
        var run = double.IsNaN(course.WantedS) ? endurance.RunTimeS : course.WantedS;
        return new(rig, segments, new LapWalk(warmth, periodic, drives, run), half, endurance, run);
    }

    /// <summary>The controller's thermal memory over the course.</summary>
    public ControllerWarmth Controller() => ControllerWarmth.Of(Rig, Segments, Laps, Half);

    /// <summary>Heat in the pack over a lap [W], by the mean square of its current.</summary>
    public double BatteryHeatW =>
        Endurance.RmsBatteryCurrentA
        * Endurance.RmsBatteryCurrentA
        * Rig.Battery.LastingResistanceOhm;

    /// <summary>The pack as a warm body.</summary>
    public PackWarmth Pack => new(Rig.Battery, Rig.Road.AmbientC);

    /// <summary>Cell temperature after a time [°C]: a pack is driven until it is empty, not for ever.</summary>
    /// <param name="seconds">Time from the start [s].</param>
    public double BatteryC(double seconds) =>
        Pack.AfterC(Rig.Battery.TemperatureC, BatteryHeatW, Math.Min(seconds, Endurance.RunTimeS));
}
