using PowerCheck.Model.Findings;
using PowerCheck.Model.Vehicles;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Whether pinion, spur gear and motor fit each other and the mount (M4, M11).</summary>
public sealed class MeshTests
{
    // Module 0.8 with 12 and 56 teeth: center 0.8·(12 + 56)/2 = 27.2 mm.
    private static Inspection Of(Func<DrivetrainLabel, DrivetrainLabel> change) =>
        Inspected.Of(label =>
            label with
            {
                Vehicle = label.Vehicle with
                {
                    Drivetrain = change(
                        label.Vehicle.Drivetrain with
                        {
                            PinionModuleM = 0.8e-3,
                            SpurModuleM = 0.8e-3,
                        }
                    ),
                },
            }
        );

    [Theory]
    [InlineData(0.8, Outcome.Holds)]
    [InlineData(0.801, Outcome.Holds)]
    [InlineData(0.79375, Outcome.Fails)]
    [InlineData(0.803, Outcome.Fails)]
    [InlineData(1.0, Outcome.Fails)]
    public void Modules_are_equal_to_0_2_per_cent(double spurMm, Outcome outcome)
    {
        var found = Of(gears => gears with { SpurModuleM = spurMm * 1e-3 }).Only(DrivetrainPitch);

        Assert.Equal((0.8e-3, Math.Round(spurMm * 1e-3, 9), outcome), found.Figures());
        Assert.Equal(outcome == Outcome.Holds ? 0 : double.PositiveInfinity, found.Severeness);
        Assert.StartsWith(
            outcome == Outcome.Holds
                ? "Pinion and spur gear have the same pitch."
                : "The pinion has module 0.8 mm and the spur gear ",
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_both_modules_nothing_is_said_of_pitch_and_center()
    {
        var it = Of(gears =>
            gears with
            {
                SpurModuleM = null,
                PinionModuleM = null,
                MeshCenterMinM = 0.02,
                MeshCenterMaxM = 0.03,
            }
        );

        Assert.Empty(it.All(DrivetrainPitch));
        Assert.Empty(it.All(DrivetrainMeshCenter));
    }

    [Theory]
    [InlineData(25.0, 28.0, 28.0, Outcome.Holds)]
    [InlineData(27.2, 28.0, 28.0, Outcome.Holds)]
    [InlineData(25.0, 27.2, 27.2, Outcome.Holds)]
    [InlineData(25.0, 27.1, 27.1, Outcome.Fails)]
    [InlineData(27.3, 28.0, 27.3, Outcome.Fails)]
    public void A_center_distance_lies_within_the_mounts_range(
        double minMm,
        double maxMm,
        double limitMm,
        Outcome outcome
    )
    {
        var it = Of(gears =>
            gears with
            {
                MeshCenterMinM = minMm * 1e-3,
                MeshCenterMaxM = maxMm * 1e-3,
            }
        );
        // The product of module and teeth, and the mount's figure, as exact as they are printed.
        it = it.WithRig(rig =>
            rig with
            {
                Vehicle = rig.Vehicle with
                {
                    Gearing = rig.Vehicle.Gearing with
                    {
                        Mesh = rig.Vehicle.Gearing.Mesh with
                        {
                            CenterMinM = Near(minMm * 1e-3, rig.Vehicle.Gearing.Mesh.CenterM),
                            CenterMaxM = Near(maxMm * 1e-3, rig.Vehicle.Gearing.Mesh.CenterM),
                        },
                    },
                },
            }
        );
        var found = it.Only(DrivetrainMeshCenter);

        Assert.Equal((0.0272, Math.Round(limitMm * 1e-3, 9), outcome), found.Figures());
        Assert.Equal(
            limitMm == minMm && outcome == Outcome.Fails,
            found.Message.Contains("less than the mount's smallest", StringComparison.Ordinal)
        );
    }

    private static double Near(double a, double b) => Math.Abs(a - b) < 1e-12 ? b : a;

    [Fact]
    public void Without_a_range_the_center_distance_is_not_judged() =>
        Assert.Empty(Of(gears => gears).All(DrivetrainMeshCenter));

    [Theory]
    [InlineData(18.5, Outcome.Holds)]
    [InlineData(18.0, Outcome.Holds)]
    [InlineData(17.5, Outcome.Fails)]
    public void The_cans_radius_fits_the_free_radius(double clearanceMm, Outcome outcome)
    {
        var found = Of(gears => gears with { MotorClearanceM = clearanceMm * 1e-3 })
            .Only(DrivetrainMotorClearance);

        Assert.Equal((0.018, Math.Round(clearanceMm * 1e-3, 9), outcome), found.Figures());
        Assert.Equal(outcome == Outcome.Holds ? 0 : double.PositiveInfinity, found.Severeness);
        Assert.Empty(Of(gears => gears).All(DrivetrainMotorClearance));
    }
}
