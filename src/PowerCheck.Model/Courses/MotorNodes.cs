using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The motor's three temperatures over the course and in each load case.</summary>
public static class MotorNodes
{
    /// <summary>Case temperature from which on touching it may burn [°C]. Source: iso13732.</summary>
    public const double TouchLimitC = 60;

    /// <summary>Mean winding temperature.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    /// <param name="motor">The motor over the course.</param>
    public static NodeReport Winding(Rig rig, Course course, LoadCases cases, MotorCourse motor)
    {
        var limit = rig.Motor.Heat.WindingLimitC;
        return new NodeReport
        {
            CourseEndC = motor.End.WindingC,
            PeakC = motor.Lap.PeakWindingC,
            LimitC = limit,
            CourseTimeToLimitS = motor.TimeToLimit(motor.Lap.PeakWindingC, 1, limit),
            Cases =
            [
                .. cases.All.Select(load =>
                    CaseHeat.Turning(rig, load) is { } drive
                        ? Turning(course, load.Name, motor, drive, 1)
                        : Locked(course, motor, CaseHeat.Locked(rig, load, motor.Warmth), load)
                ),
            ],
        };
    }

    /// <summary>Magnet temperature; a locked motor's copper is too quick for it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    /// <param name="motor">The motor over the course.</param>
    public static NodeReport Magnet(Rig rig, Course course, LoadCases cases, MotorCourse motor)
    {
        var limit = rig.Motor.Heat.MagnetLimitC;
        var weight = motor.Warmth.MagnetWeight;
        return new NodeReport
        {
            CourseEndC = motor.Warmth.MagnetC(motor.End),
            PeakC = motor.Lap.PeakMagnetC,
            LimitC = limit,
            CourseTimeToLimitS = motor.TimeToLimit(motor.Lap.PeakMagnetC, weight, limit),
            Cases = [.. TurningCases(rig, course, cases, motor, weight)],
        };
    }

    /// <summary>Case temperature.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    /// <param name="motor">The motor over the course.</param>
    public static NodeReport Case(Rig rig, Course course, LoadCases cases, MotorCourse motor) =>
        new()
        {
            CourseEndC = motor.End.CaseC,
            PeakC = motor.Lap.PeakCaseC,
            LimitC = TouchLimitC,
            Cases =
            [
                .. TurningCases(rig, course, cases, motor, 0)
                    .Select(c => c with { FromColdS = double.NaN, FromWarmS = double.NaN }),
            ],
        };

    private static IEnumerable<CaseTemperature> TurningCases(
        Rig rig,
        Course course,
        LoadCases cases,
        MotorCourse motor,
        double windingWeight
    )
    {
        foreach (var load in cases.All)
        {
            if (CaseHeat.Turning(rig, load) is { } drive)
            {
                yield return Turning(course, load.Name, motor, drive, windingWeight);
            }
        }
    }

    private static CaseTemperature Turning(
        Course course,
        LoadCaseName name,
        MotorCourse motor,
        Drive drive,
        double windingWeight
    )
    {
        var warmth = motor.Warmth;
        var settled = warmth.Settled(drive);
        var judged = CaseHeat.JudgedS(name, course.Judging);
        return new(
            name,
            settled.Weighted(windingWeight),
            Time(warmth.TimesToLimits(drive, warmth.Cold), windingWeight),
            Time(warmth.TimesToLimits(drive, motor.Warm), windingWeight),
            judged,
            double.IsNaN(judged) ? double.NaN
                : double.IsInfinity(judged) ? settled.Weighted(windingWeight)
                : warmth.After(drive, motor.Warm, judged).Weighted(windingWeight)
        );
    }

    private static double Time((double WindingS, double MagnetS) times, double windingWeight) =>
        windingWeight >= 1 ? times.WindingS : times.MagnetS;

    private static CaseTemperature Locked(
        Course course,
        MotorCourse motor,
        LockedWinding winding,
        LoadCase load
    )
    {
        var judged = CaseHeat.JudgedS(load.Name, course.Judging);
        return new(
            load.Name,
            double.NaN,
            winding.TimeToLimit(motor.Warmth.Cold),
            winding.TimeToLimit(motor.Warm),
            judged,
            double.IsFinite(judged) ? winding.AfterC(motor.Warm, judged) : double.NaN
        );
    }
}
