using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about gears and slopes.</summary>
internal static class RoadRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["GearMesh.CenterDistanceM"] = check =>
                Of(
                    (
                        "centerMm",
                        1000
                            * GearMesh.CenterDistanceM(
                                check.Has("moduleMm")
                                    ? check.Number("moduleMm") / 1000
                                    : 0.0254 / check.Number("diametralPitch"),
                                check.Number("pinionTeeth"),
                                check.Number("spurTeeth")
                            )
                    )
                ),
            ["Gearing.Ratio"] = check =>
                Of(
                    (
                        "ratio",
                        Gearing.Ratio(check.Number("pinionTeeth"), check.Number("spurTeeth"), 1, 1)
                    )
                ),
            ["GearMesh.PitchMismatch"] = check =>
                Of(
                    (
                        "mismatch",
                        new GearMesh(
                            14,
                            60,
                            check.Number("pinionModuleMm") / 1000,
                            check.Number("spurModuleMm") / 1000,
                            double.NaN,
                            double.NaN,
                            double.NaN
                        ).PitchMismatch
                    )
                ),
            ["Gearing.Chain"] = check => Of(("efficiency", Gearing.Chain(check.List("stages")))),
            ["Road.GradeForceN"] = Grade,
            ["Road.SlipSlopeRad"] = check =>
                Of(
                    (
                        "slopeDegrees",
                        Unit.Degree.FromSi(Road.SlipSlopeRad(check.Number("friction"), 1))
                    )
                ),
            ["WheelLoad.Creep"] = Creep,
        };

    // Rolling resistance of coefficient 1 is m·g·cos, so that the quotient is the tangent.
    private static IReadOnlyDictionary<string, double> Grade(PublishedCheck check)
    {
        var (mass, slope) = (
            check.Number("massKg"),
            Unit.Degree.ToSi(check.Number("slopeDegrees"))
        );
        var force = Road.GradeForceN(mass, slope);
        return Of(
            ("forceN", force),
            ("gradePercent", 100 * force / Road.RollingForceN(mass, slope, 1))
        );
    }

    private static IReadOnlyDictionary<string, double> Creep(PublishedCheck check)
    {
        var sample = SampleRig.Of(SampleRig.Brushless);
        var rig = sample with
        {
            Vehicle = sample.Vehicle with
            {
                MassKg = check.Number("massKg"),
                TireDiameterM = 2 * check.Number("radiusMm") / 1000,
            },
            Road = sample.Road with { RollingResistance = check.Number("rollingResistance") },
        };
        var load = WheelLoad.Creep(rig, 40, Unit.Degree.ToSi(check.Number("slopeDegrees")), 0.3);
        return Of(("wheelNm", load.WheelNm), ("forceN", load.WheelNm / rig.Vehicle.RadiusM));
    }
}
