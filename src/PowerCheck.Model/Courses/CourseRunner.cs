using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>What the course makes of a rig: run time and temperatures (M6 to M8, M11).</summary>
/// <param name="Endurance">How long the pack lasts.</param>
/// <param name="Temperatures">How warm each part gets.</param>
/// <param name="RunS">How long it is driven: as wanted, else as the pack lasts [s]; NaN when not known.</param>
/// <param name="ContinuousMotorA">Lasting motor current that settles at the winding's limit [A].</param>
public sealed record CourseResult(
    EnduranceReport Endurance,
    TemperatureReport Temperatures,
    double RunS,
    double ContinuousMotorA
);

/// <summary>Runs the course.</summary>
public static class CourseRunner
{
    /// <summary>Run time and temperatures.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    public static CourseResult Run(Rig rig, Course course, LoadCases cases)
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
        var laps = new LapWalk(warmth, periodic, drives, run);
        var motor = new MotorCourse(laps, run);
        var nodes = MotorNodes.Of(rig, course, cases, motor);
        var controller = ControllerWarmth.Of(rig, segments, laps, half);
        return new(
            endurance,
            new TemperatureReport
            {
                MotorWinding = nodes.Winding,
                MotorMagnet = nodes.Magnet,
                MotorCase = nodes.Case,
                Controller = PartNodes.Controller(rig, course, cases, controller, run),
                Battery = PartNodes.Battery(rig, course, cases, endurance, run),
                RunawayCurrentA = warmth.RunawayA,
            },
            run,
            warmth.ContinuousA
        );
    }
}
