using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Vehicles;

/// <summary>Chassis, gearing and slope (M4).</summary>
public sealed class VehicleTests
{
    private static Vehicle Complete(DrivetrainLabel drivetrain, double? tireM = null) =>
        VehicleDefaults.Complete(
            new()
            {
                MassKg = 3,
                TireDiameterM = tireM,
                Drivetrain = drivetrain,
            },
            new Ledger()
        );

    [Fact]
    public void On_the_level_nothing_pulls_back() => Assert.Equal(0, Road.GradeForceN(3, 0));

    [Fact]
    public void Straight_up_the_whole_weight_pulls_back_and_nothing_rolls()
    {
        Assert.Equal(3 * 9.80665, Road.GradeForceN(3, Math.PI / 2), 1e-12);
        Assert.Equal(0, Road.RollingForceN(3, Math.PI / 2, 0.06), 1e-12);
    }

    [Fact]
    public void Downhill_the_weight_pushes() =>
        Assert.Equal(-Road.GradeForceN(3, 0.4), Road.GradeForceN(3, -0.4), 1e-12);

    [Fact]
    public void Without_friction_no_slope_can_be_climbed() =>
        Assert.Equal(0, Road.SlipSlopeRad(0, 1));

    [Fact]
    public void Half_the_weight_on_driven_wheels_counts_half() =>
        Assert.Equal(Math.Atan(0.6), Road.SlipSlopeRad(1.2, 0.5), 1e-15);

    [Theory]
    [InlineData(1.0, 1.0)]
    [InlineData(0.75, 0.6666667)]
    [InlineData(0.5, 0.0)]
    [InlineData(0.4, 0.0)]
    public void The_same_loss_counts_when_the_wheels_drive_the_motor(double forward, double back)
    {
        var gearing = Complete(new() { OverallRatio = 40, Efficiency = forward }).Gearing;
        Assert.Equal(back, gearing.BackDrivingEfficiency, 1e-6);
    }

    [Fact]
    public void Stages_multiply_to_the_overall_ratio() =>
        Assert.Equal(
            56.0 / 12 * 2.8 * 3.5,
            Complete(
                new()
                {
                    PinionTeeth = 12,
                    SpurTeeth = 56,
                    TransmissionRatio = 2.8,
                    AxleRatio = 3.5,
                }
            ).Gearing.LowestRatio,
            1e-12
        );

    [Fact]
    public void The_largest_ratio_of_a_gearbox_is_its_lowest_gear_whatever_the_order()
    {
        var label = new DrivetrainLabel
        {
            PinionTeeth = 12,
            SpurTeeth = 48,
            AxleRatio = 3,
            Ratios = [1.5, 4],
        };
        Assert.Equal(4.0 * 4 * 3, Complete(label).Gearing.LowestRatio, 1e-12);
        Assert.Equal(
            Complete(label).Gearing.Ratios,
            Complete(label with { Ratios = [4, 1.5] }).Gearing.Ratios
        );
    }

    [Theory]
    [InlineData(AxleGear.Bevel, 0.95 * 0.95 * 0.93)]
    [InlineData(AxleGear.Worm, 0.95 * 0.95 * 0.6)]
    public void Efficiency_follows_from_the_stages(AxleGear axle, double efficiency) =>
        Assert.Equal(
            efficiency,
            Complete(new() { SpurStages = 2, AxleGear = axle }).Gearing.Efficiency,
            1e-12
        );

    [Fact]
    public void A_printed_tire_sits_lower_under_load()
    {
        var label = new VehicleLabel { MassKg = 3, TireDiameterM = 0.120 };
        var ledger = new Ledger();
        Assert.Equal(0.120, VehicleDefaults.Complete(label, ledger).TireDiameterM);
        Assert.Equal(
            0.114,
            VehicleDefaults
                .Complete(label with { TireDiameterPrinted = true }, ledger)
                .TireDiameterM,
            1e-12
        );
    }

    [Fact]
    public void With_only_a_mass_everything_else_is_assumed_and_listed()
    {
        var ledger = new Ledger();
        var vehicle = VehicleDefaults.Complete(new() { MassKg = 3 }, ledger);
        Assert.Equal(
            (0.115, 40, 0.75),
            (vehicle.TireDiameterM, vehicle.Gearing.LowestRatio, vehicle.Gearing.Efficiency)
        );
        Assert.Equal(
            [
                "vehicle.tireDiameterMm",
                "vehicle.drivenWeightShare",
                "vehicle.motorCount",
                "vehicle.drivetrain.overallRatio",
                "vehicle.drivetrain.efficiency",
            ],
            ledger.Assumptions.Select(assumption => assumption.Path),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void A_pair_of_one_pitch_does_not_mismatch() =>
        Assert.Equal(0, new GearMesh(12, 56, 0.0008, 0.0008, 0, 1, 1).PitchMismatch);

    [Fact]
    public void Center_distance_needs_teeth_and_one_pitch()
    {
        var mesh = new GearMesh(12, 56, double.NaN, 0.0254 / 32, 0, 1, 1);
        Assert.Equal(0.0269875, mesh.CenterM, 1e-12);
        Assert.Equal(
            0.0269875,
            (mesh with { PinionModuleM = 0.0254 / 32, SpurModuleM = double.NaN }).CenterM,
            1e-12
        );
        Assert.True(double.IsNaN((mesh with { PinionTeeth = double.NaN }).CenterM));
    }
}
