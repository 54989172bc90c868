using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
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
                        "center",
                        GearMesh.CenterDistanceM(
                            check.Has("module")
                                ? check.Si("module")
                                : 1 / check.Si("diametralPitch"),
                            check.Si("pinionTeeth"),
                            check.Si("spurTeeth")
                        )
                    )
                ),
            ["Gearing.Ratio"] = check =>
                Of(("ratio", Gearing.Ratio(check.Si("pinionTeeth"), check.Si("spurTeeth"), 1, 1))),
            ["GearMesh.PitchMismatch"] = check =>
                Of(("mismatch", Mismatch(check, check.Si("pinionPitch")))),
            // The pitch that runs with a module: by how much a pitch of one a metre is off.
            ["GearMesh.PitchMismatch/pitch"] = check => Of(("pitch", 1 + Mismatch(check, 1))),
            ["Gearing.Chain"] = check => Of(("efficiency", Gearing.Chain(check.List("stages")))),
            ["Road.GradeForceN"] = Grade,
            ["Road.SlipSlopeRad"] = check =>
                Of(("slope", Road.SlipSlopeRad(check.Si("friction"), 1))),
            ["WheelLoad.Creep"] = Creep,
        };

    private static double Mismatch(PublishedCheck check, double pinionPitchPerM) =>
        new GearMesh(
            14,
            60,
            1 / pinionPitchPerM,
            check.Si("spurModule"),
            double.NaN,
            double.NaN,
            double.NaN
        ).PitchMismatch;

    // Rolling resistance of coefficient 1 is m·g·cos, so that the quotient is the tangent.
    private static IReadOnlyDictionary<string, double> Grade(PublishedCheck check)
    {
        var (mass, slope) = (check.Si("mass"), check.Si("slope"));
        var force = Road.GradeForceN(mass, slope);
        return Of(("force", force), ("grade", force / Road.RollingForceN(mass, slope, 1)));
    }

    private static IReadOnlyDictionary<string, double> Creep(PublishedCheck check)
    {
        var sample = SampleRig.Of(SampleRig.Brushless);
        var rig = sample with
        {
            Vehicle = sample.Vehicle with
            {
                MassKg = check.Si("mass"),
                TireDiameterM = 2 * check.Si("radius"),
            },
            Road = sample.Road with { RollingResistance = check.Si("rollingResistance") },
        };
        var load = WheelLoad.Creep(rig, 40, check.Si("slope"), 0.3);
        return Of(("wheel", load.WheelNm), ("force", load.WheelNm / rig.Vehicle.RadiusM));
    }
}
