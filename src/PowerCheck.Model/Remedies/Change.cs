using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Remedies;

/// <summary>A single thing about a rig that its builder or driver can change (M14).</summary>
/// <param name="Path">The member that says it.</param>
/// <param name="Noun">What it is, in a sentence.</param>
/// <param name="Least">The smallest value that is tried at all, in the unit of the path, assumed.</param>
/// <param name="Most">The largest value that is tried at all, in the unit of the path, assumed.</param>
/// <param name="Whole">Whether it is counted.</param>
/// <param name="Under">The member that it must not be above where that is given.</param>
/// <param name="Over">The member that it must not be under where that is given.</param>
/// <param name="Furthest">Factor up to which it is tried, assumed.</param>
internal sealed record Change(
    string Path,
    string Noun,
    double Least,
    double Most,
    bool Whole = false,
    string? Under = null,
    string? Over = null,
    double Furthest = 4
)
{
    private const string Rating = "controller.continuousCurrentA";
    private const string Burst = "controller.burstCurrentA";
    private const string Supply = "controller.receiverSupply.continuousCurrentA";
    private const string Peak = "controller.receiverSupply.peakCurrentA";

    /// <summary>How far from the value now it is tried, as factors, assumed.</summary>
    private static readonly double[] Factors = [1.03, 1.08, 1.15, 1.3, 1.6, 2.2, 4];

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<Change> All =
    [
        new("vehicle.massKg", "mass", 0.05, 50),
        new("course.climbSlopeDegrees", "climb", 1, 89),
        new("course.creepSpeedMPerS", "creep speed", 0.02, 5),
        new("course.wantedMinutes", "wanted run time", 0.5, 600),
        // Beyond that tires do not fit the rig.
        new("vehicle.tireDiameterMm", "tire diameter", 30, 400, Furthest: 1.6),
        new("vehicle.drivetrain.pinionTeeth", "pinion", 6, 60, true),
        new("vehicle.drivetrain.spurTeeth", "spur gear", 12, 200, true),
        new("vehicle.drivetrain.overallRatio", "overall ratio", 2, 400),
        new("battery.seriesCells", "number of cells in series", 1, 14, true),
        new("battery.capacityMah", "pack's capacity", 100, 50_000),
        new(Rating, "controller's continuous current", 0.5, 1000, Under: Burst),
        new(Burst, "controller's burst current", 0.5, 5000, Over: Rating),
        new(Supply, "receiver supply's continuous current", 0.05, 100, Under: Peak),
        new(Peak, "receiver supply's peak current", 0.05, 200, Over: Supply),
        new("wiring.batteryLeadAwg", "gauge of the battery leads", 4, 30, true),
        new("wiring.motorLeadAwg", "gauge of the motor leads", 4, 30, true),
    ];

    /// <summary>Values to try, each further from the value now, in the unit of the path.</summary>
    /// <param name="now">The value now.</param>
    /// <param name="up">Whether upwards.</param>
    public IEnumerable<double> Outwards(double now, bool up)
    {
        var last = now;
        foreach (var factor in Factors.Where(factor => factor <= Furthest))
        {
            // Away from the value now, so that what is rounded still holds.
            var value = Rounding.Short(
                Math.Clamp(up ? now * factor : now / factor, Least, Most),
                Whole,
                up
            );
            if (up ? value > last : value < last)
            {
                yield return last = value;
            }
        }
    }

    /// <summary>The value between two, in whole numbers or in three digits; NaN when there is none.</summary>
    /// <param name="inner">The one nearer to the value now.</param>
    /// <param name="outer">The one further from it.</param>
    public double Between(double inner, double outer) => Rounding.Between(inner, outer, Whole);

    /// <summary>Its value in a rig, in the unit of the path; NaN when it has none.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="filled">The rig with what was assumed in its place.</param>
    /// <param name="assumptions">What was assumed.</param>
    public static double Now(
        LabelFigure<RigLabel> figure,
        RigLabel filled,
        IReadOnlyList<Assumption> assumptions
    ) =>
        figure.Unit.FromSi(
            figure.Read(filled)
                ?? assumptions
                    .FirstOrDefault(a =>
                        string.Equals(a.Path, figure.Path, StringComparison.Ordinal)
                    )
                    ?.Value
                ?? double.NaN
        );
}
