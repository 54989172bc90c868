using MathNet.Numerics.Statistics;
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

    /// <summary>It is looked at about so many times of the curve, assumed: as many as its ends need to look smooth.</summary>
    private const int MostTimes = 80;

    /// <summary>From more laps than these on a band is that of whole laps, for a few times of each would tell of none; assumed.</summary>
    private const int SingleLaps = 10;

    /// <summary>Share of rigs beyond either end: 95 % lie between.</summary>
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
        var spans = Spans(course, complete.Course.LapS);
        double[] times = [.. spans.SelectMany(span => span)];
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
        return new(
            Band(drawn, spans, 0),
            Band(drawn, spans, times.Length),
            Band(drawn, spans, 2 * times.Length)
        );
    }

    // Times of the curve, each by itself; of many laps those of some laps, each lap as a whole.
    private static double[][] Spans(CourseCurve course, double lapS)
    {
        double[] times = [.. course.Points.Select(point => point.Seconds)];
        if (course.EndS <= SingleLaps * lapS)
        {
            var every = 1 + (times.Length / MostTimes);
            return
            [
                .. times
                    .Where((_, n) => n % every == 0 || n == times.Length - 1)
                    .Select(t => new[] { t }),
            ];
        }

        double[][] laps =
        [
            .. times.GroupBy(t => Math.Ceiling((t / lapS) - 1e-9)).Select(lap => lap.ToArray()),
        ];
        var stride = 1 + (times.Length / MostTimes);
        return [.. laps.Where((_, n) => n % stride == 0 || n == laps.Length - 1)];
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

    // At the end of each span, of which its lowest and its highest ends count.
    private static BandPoint[] Band(double[][] drawn, double[][] spans, int from)
    {
        var band = new BandPoint[spans.Length];
        var at = from;
        for (var n = 0; n < band.Length; n++)
        {
            var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            for (var t = 0; t < spans[n].Length; t++, at++)
            {
                double[] rising =
                [
                    .. drawn.Select(one => one[at]).Where(value => !double.IsNaN(value)).Order(),
                ];
                low = Math.Min(low, Quantile(rising, Tail));
                high = Math.Max(high, Quantile(rising, 1 - Tail));
            }

            band[n] = new(spans[n][^1], low, high);
        }

        return band;
    }

    // Between the two values on either side, each in the middle of its share.
    private static double Quantile(double[] rising, double share) =>
        SortedArrayStatistics.QuantileCustom(rising, share, QuantileDefinition.Hazen);
}

/// <summary>Ends of a band at one time; NaN where they are not known.</summary>
/// <param name="Seconds">Time from the start [s].</param>
/// <param name="LowC">Lower end [°C].</param>
/// <param name="HighC">Upper end [°C].</param>
public readonly record struct BandPoint(double Seconds, double LowC, double HighC);
