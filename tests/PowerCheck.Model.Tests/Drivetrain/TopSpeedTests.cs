using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What stops a rig at its top speed, and what it does then (M5).</summary>
public sealed class TopSpeedTests
{
    private static readonly Rig Sample = SampleRig.Of(SampleRig.Brushed with { Accessories = [] });

    private static Rig On(Func<Road, Road> change) => Sample with { Road = change(Sample.Road) };

    [Fact]
    public void A_motor_faster_than_it_may_be_does_not_reach_its_top_speed()
    {
        var ratio = Sample.Vehicle.Gearing.LowestRatio;
        var free = FullThrottleCases.Top(Sample, ratio);
        Rig Rated(double radPerS) =>
            Sample with
            {
                Motor = Sample.Motor with
                {
                    Ratings = Sample.Motor.Ratings with { MaxSpeedRadPerS = radPerS },
                },
            };

        var over = FullThrottleCases.Top(Rated(0.99 * free.MotorSpeedRadPerS), ratio);
        var just = FullThrottleCases.Top(Rated(free.MotorSpeedRadPerS), ratio);

        Assert.Equal((false, Obstacle.SpeedLimit), (over.Attainable, over.Obstacle));
        Assert.Equal((true, null), (just.Attainable, just.Obstacle));
    }

    [Fact]
    public void A_rig_too_hard_to_roll_stands_at_full_throttle_with_the_torque_of_its_stall()
    {
        var rig = On(road => road with { RollingResistance = 300 });
        var gearing = rig.Vehicle.Gearing;

        var top = FullThrottleCases.Top(rig, gearing.LowestRatio);

        Assert.Equal((false, Obstacle.Voltage), (top.Attainable, top.Obstacle));
        Assert.Equal(0, top.RoadSpeedMPerS);
        var shaft =
            rig.Motor.TorqueConstantNmPerA * (top.MotorCurrentA - rig.Motor.NoLoad.StandstillA);
        Assert.True(shaft > 0);
        Assert.Equal((top.BusVoltageV - 0.3) / (0.09 + rig.LoopOhm), top.MotorCurrentA, 1e-9);
        Assert.Equal(
            shaft * gearing.LowestRatio * gearing.Efficiency,
            top.WheelTorqueNm,
            1e-9 * top.WheelTorqueNm
        );
    }

    [Fact]
    public void Friction_that_a_stall_does_not_overcome_leaves_the_wheels_no_torque()
    {
        var stuck = Sample with { Motor = Sample.Motor with { NoLoad = new(1e4, 0) } };

        var top = FullThrottleCases.Top(stuck, Sample.Vehicle.Gearing.LowestRatio);

        Assert.Equal((0, Obstacle.Voltage), (top.WheelTorqueNm, top.Obstacle));
    }

    [Fact]
    public void Top_speed_of_another_gear_turns_the_wheels_against_the_same_rolling()
    {
        // 2.6 kg · 9.80665 m/s² · 0.06 · 59 mm, in any gear.
        var wheel = 2.6 * 9.80665 * Sample.Road.RollingResistance * 0.118 / 2;
        var ratio = Sample.Vehicle.Gearing.LowestRatio / 2;

        var top = FullThrottleCases.Top(Sample, ratio);

        Assert.Equal(wheel, top.WheelTorqueNm, 1e-9);
        Assert.Equal(top.MotorSpeedRadPerS / ratio * 0.118 / 2, top.RoadSpeedMPerS, 1e-9);
    }
}
