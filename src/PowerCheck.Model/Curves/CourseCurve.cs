using PowerCheck.Model.Courses;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Curves;

/// <summary>Temperatures along the course, from cold (M6 to M8, M11).</summary>
/// <param name="Points">The points, time rising; none where it is not known how long it is driven.</param>
/// <param name="Whole">Whether they reach to the end of the run.</param>
/// <param name="Runaway">Whether they end where the winding passes 400 °C.</param>
public sealed record CourseCurve(IReadOnlyList<CoursePoint> Points, bool Whole, bool Runaway)
{
    /// <summary>How long is drawn [s]; 0 where nothing is.</summary>
    public double EndS => Points.Count == 0 ? 0 : Points[^1].Seconds;

    /// <summary>The curve.</summary>
    /// <param name="driven">The course as the rig drives it.</param>
    /// <param name="course">The course.</param>
    public static CourseCurve Of(DrivenCourse driven, Course course)
    {
        var laps = driven.Laps;
        var end = Math.Min(driven.RunS, Walked(laps));
        if (!(end > 0))
        {
            return new([], false, false);
        }

        var times = CourseTimes.Of(course, end);
        var lost = Array.FindIndex(times, t => double.IsInfinity(laps.After(t).WindingC));
        if (lost < 0)
        {
            return new(
                Along(driven, times, [.. times.Select(laps.After)]),
                end >= driven.RunS,
                false
            );
        }

        var (seconds, at) = Loss(laps, lost == 0 ? 0 : times[lost - 1], times[lost]);
        times = CourseTimes.Of(course, seconds);
        return new(
            Along(
                driven,
                times,
                [
                    .. times[..^1]
                        .Select(laps.After)
                        .Append(at)
                        .Select(x => x.AtMost(MotorWarmth.RunawayC)),
                ]
            ),
            false,
            true
        );
    }

    // The run, but what lasts for ever: an hour, or until laps no longer differ.
    private static double Walked(LapWalk laps) =>
        double.IsInfinity(laps.ForS)
            ? Math.Max(3600, laps.Count * laps.LapS)
            : Math.Min(laps.ForS, laps.Started * laps.LapS);

    // When the winding is past all limits, between a time at which it is not and one at which it is.
    private static (double Seconds, MotorTemperature At) Loss(LapWalk laps, double from, double to)
    {
        for (var lap = (int)(from / laps.LapS); lap <= to / laps.LapS; lap++)
        {
            if (
                laps.Crossing(lap, 1, MotorWarmth.RunawayC) is { } crossing
                && crossing.Seconds <= to
            )
            {
                return crossing;
            }
        }

        return (to, MotorTemperature.At(MotorWarmth.RunawayC));
    }

    private static CoursePoint[] Along(
        DrivenCourse driven,
        double[] times,
        MotorTemperature[] motor
    )
    {
        var warmth = driven.Controller();
        var levels = warmth.LevelsAt(times);
        return
        [
            .. times.Select(
                (t, n) =>
                    new CoursePoint(
                        t,
                        motor[n].WindingC,
                        driven.Laps.Warmth.MagnetC(motor[n]),
                        motor[n].CaseC,
                        warmth.TemperatureC(levels[n]),
                        driven.BatteryC(t)
                    )
            ),
        ];
    }
}

/// <summary>Temperatures at one time of the course; NaN where they are not known.</summary>
/// <param name="Seconds">Time from the start [s].</param>
/// <param name="WindingC">Mean winding temperature [°C].</param>
/// <param name="MagnetC">Magnet temperature [°C].</param>
/// <param name="CaseC">Temperature of the motor's case [°C].</param>
/// <param name="ControllerC">Controller temperature, by its thermal memory [°C].</param>
/// <param name="BatteryC">Cell temperature [°C].</param>
public readonly record struct CoursePoint(
    double Seconds,
    double WindingC,
    double MagnetC,
    double CaseC,
    double ControllerC,
    double BatteryC
);
