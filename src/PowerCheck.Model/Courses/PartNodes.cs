using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>Controller and pack over the course and in each load case.</summary>
public static class PartNodes
{
    /// <summary>Controller temperature, by its thermal memory.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    /// <param name="warmth">The memory over the course.</param>
    /// <param name="runS">How long it is driven [s].</param>
    public static NodeReport Controller(
        Rig rig,
        Course course,
        LoadCases cases,
        ControllerWarmth warmth,
        double runS
    )
    {
        var (end, peak) = warmth.Over(runS);
        return new()
        {
            CourseEndC = warmth.TemperatureC(end),
            PeakC = warmth.TemperatureC(peak),
            LimitC = rig.Controller.LimitC,
            CourseTime = new(() => CourseTime(warmth, peak)),
            Cases = [.. cases.All.Select(load => Controller(rig, course, load, warmth, end))],
        };
    }

    /// <summary>Cell temperature.</summary>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    /// <param name="driven">The course as the rig drives it.</param>
    public static NodeReport Battery(Course course, LoadCases cases, DrivenCourse driven)
    {
        var (battery, pack, heat) = (driven.Rig.Battery, driven.Pack, driven.BatteryHeatW);
        var start = battery.TemperatureC;
        // Its peak is at the end of its own run.
        var end = driven.BatteryC(driven.RunS);
        return new NodeReport
        {
            CourseEndC = end,
            PeakC = Math.Max(start, end),
            LimitC = battery.LimitC,
            CourseTime = new(() => pack.TimeToLimit(start, heat)),
            Cases =
            [
                .. cases.All.Select(load =>
                {
                    var judged = CaseHeat.JudgedS(load.Name, course.Judging);
                    return new CaseTemperature(
                        load.Name,
                        pack.SettledC(load.BatteryHeatW),
                        new(() => pack.TimeToLimit(start, load.BatteryHeatW)),
                        new(() => pack.TimeToLimit(end, load.BatteryHeatW)),
                        judged,
                        pack.AfterC(end, load.BatteryHeatW, judged)
                    );
                }),
            ],
        };
    }

    private static CaseTemperature Controller(
        Rig rig,
        Course course,
        LoadCase load,
        ControllerWarmth warmth,
        double level
    )
    {
        var k = CaseHeat.ControllerLoad(rig, load);
        var judged = CaseHeat.JudgedS(load.Name, course.Judging);
        return new(
            load.Name,
            warmth.TemperatureC(k),
            new(() => warmth.Memory.TimeToLimit(0, k)),
            new(() => warmth.Memory.TimeToLimit(level, k)),
            judged,
            warmth.TemperatureC(warmth.Memory.After(level, k, judged))
        );
    }

    private static double CourseTime(ControllerWarmth warmth, double peak) =>
        double.IsNaN(peak) ? double.NaN
        : peak <= warmth.Memory.Limit ? double.PositiveInfinity
        : warmth.TimeToLimit();
}
