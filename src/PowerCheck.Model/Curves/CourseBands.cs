using PowerCheck.Model.Courses;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Curves;

/// <summary>Between which temperatures 95 % of rigs lie along the course (M12), by draws of all inputs together.</summary>
/// <param name="Winding">Winding, up to 400 °C.</param>
/// <param name="Controller">Controller.</param>
/// <param name="Battery">Cells.</param>
public sealed record CourseBands(
    IReadOnlyList<BandPoint> Winding,
    IReadOnlyList<BandPoint> Controller,
    IReadOnlyList<BandPoint> Battery
)
{
    /// <summary>How many rigs are drawn, assumed: the fifth from either end bounds the band.</summary>
    private const int Draws = 200;

    /// <summary>At no more times than these of the curve it is looked at.</summary>
    private const int MostTimes = 40;

    private const double Tail = 0.025;

    /// <summary>The bands around a curve.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="complete">The same, completed.</param>
    /// <param name="course">The curve.</param>
    /// <param name="stop">Tells that nobody waits for them any more.</param>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    internal static CourseBands? Of(
        RigLabel label,
        RigCompletion complete,
        CourseCurve course,
        CancellationToken stop
    )
    {
        if (course.Points.Count == 0)
        {
            return null;
        }

        var filled = RigFill.Of(label, complete);
        var inputs = Input.Of(filled, complete.Ledger.Assumptions);
        var times = Times(course);
        // Each drawn rig is driven as long as the curve goes.
        var longer = filled with
        {
            Course = filled.Course with { WantedS = course.EndS },
        };
        Quantities quantities = deviates => At(Input.Moved(longer, inputs, deviates), times);
        var drawn = quantities.AtEach(
            LatinSquare.Deviates([.. inputs.Select(input => input.Seed)], Draws),
            stop
        );
        return new(Band(drawn, times, 0), Band(drawn, times, 1), Band(drawn, times, 2));
    }

    private static double[] Times(CourseCurve course)
    {
        var every = Math.Max(1, (course.Points.Count + MostTimes - 1) / MostTimes);
        return
        [
            .. course
                .Points.Select(point => point.Seconds)
                .Where((_, n) => n % every == 0 || n == course.Points.Count - 1),
        ];
    }

    // Winding, controller and cells at every time, one after the other.
    private static double[] At(RigLabel label, double[] times)
    {
        var complete = RigCompletion.Of(label);
        var driven = DrivenCourse.Of(complete.Rig, complete.Course);
        var warmth = driven.Controller();
        return
        [
            .. times.Select(t => driven.Laps.After(t).AtMost(MotorWarmth.RunawayC).WindingC),
            .. warmth.LevelsAt(times).Select(warmth.TemperatureC),
            .. times.Select(driven.BatteryC),
        ];
    }

    private static BandPoint[] Band(double[][] drawn, double[] times, int quantity) =>
        [
            .. times.Select(
                (t, n) =>
                {
                    double[] rising =
                    [
                        .. drawn
                            .Select(at => at[(quantity * times.Length) + n])
                            .Where(value => !double.IsNaN(value))
                            .Order(),
                    ];
                    return new BandPoint(t, Quantile(rising, Tail), Quantile(rising, 1 - Tail));
                }
            ),
        ];

    // Between the two values on either side, each in the middle of its share.
    private static double Quantile(double[] rising, double share)
    {
        if (rising.Length == 0)
        {
            return double.NaN;
        }

        var place = Math.Clamp((share * rising.Length) - 0.5, 0, rising.Length - 1);
        var (low, high) = ((int)Math.Floor(place), (int)Math.Ceiling(place));
        return rising[low] + ((place - low) * (rising[high] - rising[low]));
    }
}

/// <summary>Ends of a band at one time; NaN where they are not known.</summary>
/// <param name="Seconds">Time from the start [s].</param>
/// <param name="LowC">Lower end [°C].</param>
/// <param name="HighC">Upper end [°C].</param>
public readonly record struct BandPoint(double Seconds, double LowC, double HighC);
