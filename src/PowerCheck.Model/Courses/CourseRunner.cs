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
        var driven = DrivenCourse.Of(rig, course);
        var motor = new MotorCourse(driven.Laps, driven.RunS);
        var nodes = MotorNodes.Of(rig, course, cases, motor);
        var warmth = driven.Laps.Warmth;
        return new(
            driven.Endurance,
            new TemperatureReport
            {
                MotorWinding = nodes.Winding,
                MotorMagnet = nodes.Magnet,
                MotorCase = nodes.Case,
                Controller = PartNodes.Controller(
                    rig,
                    course,
                    cases,
                    driven.Controller(),
                    driven.RunS
                ),
                Battery = PartNodes.Battery(course, cases, driven),
                RunawayCurrentA = warmth.RunawayA,
            },
            driven.RunS,
            warmth.ContinuousA
        );
    }
}
