using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What the motor has to turn (M4), against hand arithmetic.</summary>
public sealed class WheelLoadTests
{
    private static readonly Rig Sample = SampleRig.Of(SampleRig.Brushless);

    private static Rig With(
        double efficiency = 0.75,
        double rolling = 0.06,
        double friction = 1.2
    ) =>
        Sample with
        {
            Vehicle = Sample.Vehicle with
            {
                MassKg = 3,
                TireDiameterM = 0.12,
                Gearing = Sample.Vehicle.Gearing with { Ratios = [40], Efficiency = efficiency },
            },
            Road = Sample.Road with { RollingResistance = rolling, Friction = friction },
        };

    [Fact]
    public void A_climb_is_weight_and_rolling_over_radius_ratio_and_efficiency()
    {
        var load = WheelLoad.Creep(With(), 40, Math.PI / 4, 0.3);
        // 3·9.80665·(0.70711 + 0.06·0.70711) = 22.0512 N; × 0.06 m = 1.32307 N·m; / (40·0.75) = 0.0441025 N·m.
        Assert.Equal(1.32307, load.WheelNm, 1e-5);
        Assert.Equal(0.0441025, load.ShaftNm, 1e-6);
        // 0.3 m/s / 0.06 m · 40 = 200 rad/s.
        Assert.Equal(200, load.SpeedRadPerS, 1e-9);
    }

    [Fact]
    public void The_level_without_rolling_resistance_needs_nothing() =>
        Assert.Equal(0, WheelLoad.Creep(With(rolling: 0), 40, 0, 0.3).ShaftNm);

    [Fact]
    public void Downhill_the_losses_help()
    {
        var load = WheelLoad.Creep(With(), 40, -Math.PI / 4, 0.3);
        // 20.803·(0.06 − 1)·0.06 = −1.17330 N·m; back-driving efficiency 2 − 1/0.75 = 2/3.
        Assert.Equal(-1.17330, load.WheelNm, 1e-4);
        Assert.Equal(-1.17330 * 2 / 3 / 40, load.ShaftNm, 1e-6);
    }

    [Fact]
    public void A_self_locking_drive_needs_no_brake_downhill() =>
        Assert.Equal(0, WheelLoad.Creep(With(0.5), 40, -Math.PI / 4, 0.3).ShaftNm, 1e-15);

    [Fact]
    public void Slipping_tires_return_friction_and_roll_besides()
    {
        var load = WheelLoad.Slip(With(), 40, 0.3);
        // (1.2 + 0.06)·3·9.80665·0.06 = 2.22415 N·m.
        Assert.Equal(2.22415, load.WheelNm, 1e-5);
        Assert.Equal(2.22415 / 30, load.ShaftNm, 1e-6);
    }

    [Fact]
    public void Slipping_tires_return_only_the_share_of_the_weight_that_they_carry()
    {
        var rig = With();
        rig = rig with { Vehicle = rig.Vehicle with { DrivenWeightShare = 0.6 } };
        // (1.2 + 0.06)·3·9.80665·0.6·0.06 = 1.33449 N·m.
        Assert.Equal(1.33449, WheelLoad.Slip(rig, 40, 0.3).WheelNm, 1e-5);
    }

    [Fact]
    public void Standing_on_a_slope_friction_takes_its_share()
    {
        var rig = With();
        // 20.803·(1 − 0.06)·0.06·(2/3)/40 − kt·i0(0).
        var friction = rig.Motor.TorqueConstantNmPerA * rig.Motor.NoLoad.StandstillA;
        Assert.Equal(
            (1.17330 * 2 / 3 / 40) - friction,
            WheelLoad.HoldingNm(rig, Math.PI / 4),
            1e-6
        );
        Assert.True(WheelLoad.HoldingNm(rig, 0) < 0);
    }

    [Fact]
    public void Two_motors_share_the_torque()
    {
        var one = With();
        var two = one with { Vehicle = one.Vehicle with { MotorCount = 2 } };
        Assert.Equal(
            WheelLoad.Creep(one, 40, 0.5, 0.3).ShaftNm / 2,
            WheelLoad.Creep(two, 40, 0.5, 0.3).ShaftNm,
            1e-15
        );
        Assert.Equal(
            WheelLoad.Creep(one, 40, 0.5, 0.3).WheelNm,
            WheelLoad.Creep(two, 40, 0.5, 0.3).WheelNm
        );
    }

    [Fact]
    public void The_climb_is_judged_where_the_tires_let_go_if_that_comes_first()
    {
        var slick = With(friction: 0.5);
        Assert.Equal(Math.Atan(0.5), slick.ClimbSlopeRad, 1e-15);
        Assert.Equal(slick.Road.SlopeRad, With(friction: 3).ClimbSlopeRad);
        Assert.Equal(Obstacle.Traction, SteadyCases.Climb(slick).Obstacle);
    }

    [Fact]
    public void At_the_edge_of_traction_climb_and_slip_differ_by_the_slope_of_the_weight()
    {
        // On atan µ the wheels carry (µ + Crr)·m·g·cos θ: the slip on the level times cos θ.
        var rig = With(friction: 0.5);
        var edge = Road.SlipSlopeRad(0.5, 1);
        Assert.Equal(
            WheelLoad.Slip(rig, 40, 0.3).WheelNm * Math.Cos(edge),
            WheelLoad.Creep(rig, 40, edge, 0.3).WheelNm,
            1e-12
        );
    }
}
