using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Vehicles;

/// <summary>What is known of a drivetrain is what the rig has (M4).</summary>
public sealed class VehicleLabelTests
{
    private static Gearing Complete(DrivetrainLabel label) =>
        VehicleDefaults.Complete(new() { MassKg = 3, Drivetrain = label }, new Ledger()).Gearing;

    [Fact]
    public void Teeth_modules_mount_and_strength_are_taken_as_they_are()
    {
        var gearing = Complete(
            new()
            {
                PinionTeeth = 12,
                SpurTeeth = 56,
                PinionModuleM = 0.8e-3,
                SpurModuleM = 0.6e-3,
                MeshCenterMinM = 0.02,
                MeshCenterMaxM = 0.03,
                MotorClearanceM = 0.018,
                MaxWheelTorqueNm = 9,
            }
        );

        Assert.Equal(new GearMesh(12, 56, 0.8e-3, 0.6e-3, 0.02, 0.03, 0.018), gearing.Mesh);
        Assert.Equal(9, gearing.MaxWheelTorqueNm);
    }

    [Fact]
    public void What_is_not_known_of_them_stays_so()
    {
        var gearing = Complete(new());
        var none = double.NaN;

        Assert.Equal(new GearMesh(none, none, none, none, none, none, none), gearing.Mesh);
        Assert.True(double.IsNaN(gearing.MaxWheelTorqueNm));
    }
}
