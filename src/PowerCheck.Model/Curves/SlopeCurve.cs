using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Curves;

/// <summary>Currents of the steady climb at creep speed over the slope (M4, M5), as the load case computes them.</summary>
/// <param name="Points">The points, slope rising, at most a degree apart.</param>
/// <param name="ClimbSlopeRad">The slope that is asked for [rad].</param>
/// <param name="SlipSlopeRad">The slope at which the tires let go [rad].</param>
/// <param name="AttainableRad">Up to which slope it gets [rad]; NaN where not even on the level, or where it is not known.</param>
/// <param name="EndsBy">What ends it there; null where nothing does or it is not known.</param>
public sealed record SlopeCurve(
    IReadOnlyList<SlopePoint> Points,
    double ClimbSlopeRad,
    double SlipSlopeRad,
    double AttainableRad,
    Obstacle? EndsBy
)
{
    private const double DegreeRad = Math.PI / 180;

    /// <summary>Slopes are looked at up to this [°], at least; assumed: no course is steeper on average.</summary>
    private const int Least = 60;

    /// <summary>Slopes are looked at up to this [°], at most: the door takes none that is steeper.</summary>
    private const int Most = 89;

    /// <summary>Halvings of a degree until the slope that is just attained is known.</summary>
    private const int Halvings = 30;

    /// <summary>The curve of a rig.</summary>
    /// <param name="rig">The rig.</param>
    public static SlopeCurve Of(Rig rig)
    {
        var (climb, slip) = (rig.Road.SlopeRad, rig.SlipSlopeRad);
        var cases = Slopes(climb, slip)
            .Select(slope => (Slope: slope, Case: At(rig, slope)))
            .ToArray();
        var end = Array.FindIndex(cases, at => at.Case.Attainable == false);
        var last = cases.LastOrDefault(
            at => at.Case.Attainable == true,
            (double.NaN, cases[0].Case)
        );
        var attainable = end > 0 ? Edge(rig, cases[end - 1].Slope, cases[end].Slope) : last.Item1;
        var points = cases.Select(at => Point(at.Slope, at.Case));
        if (end > 0 && attainable > cases[end - 1].Slope)
        {
            points = points.Append(Point(attainable, At(rig, attainable)));
        }

        return new(
            [.. points.OrderBy(point => point.SlopeRad)],
            climb,
            slip,
            cases[0].Case.Attainable is null ? double.NaN : attainable,
            end < 0 ? null : cases[end].Case.Obstacle
        );
    }

    // Every degree, and the two slopes that are asked after.
    private static IEnumerable<double> Slopes(double climbRad, double slipRad)
    {
        var wanted = Math.Max((climbRad / DegreeRad) + 10, (slipRad / DegreeRad) + 5);
        var end = Math.Min(Most, Math.Max(Least, Math.Ceiling(wanted)));
        return Enumerable
            .Range(0, (int)end + 1)
            .Select(degree => degree * DegreeRad)
            .Append(climbRad)
            .Append(slipRad)
            .Order()
            .Distinct();
    }

    private static LoadCase At(Rig rig, double slopeRad) =>
        SteadyCases.Climb(rig with { Road = rig.Road with { SlopeRad = slopeRad } });

    // The steepest slope that is attained, between one that is and one that is not.
    private static double Edge(Rig rig, double attained, double missed)
    {
        for (var n = 0; n < Halvings; n++)
        {
            var middle = (attained + missed) / 2;
            (attained, missed) =
                At(rig, middle).Attainable == false ? (attained, middle) : (middle, missed);
        }

        return attained;
    }

    private static SlopePoint Point(double slopeRad, LoadCase climb) =>
        climb.Attainable == false
            ? new(slopeRad, double.NaN, double.NaN)
            : new(slopeRad, climb.MotorCurrentA, climb.BatteryCurrentA);
}

/// <summary>Currents of the steady climb at one slope; NaN where it is not attained or they are not known.</summary>
/// <param name="SlopeRad">The slope [rad].</param>
/// <param name="MotorA">Current of one motor [A].</param>
/// <param name="BatteryA">Battery current of the whole rig [A].</param>
public readonly record struct SlopePoint(double SlopeRad, double MotorA, double BatteryA);
