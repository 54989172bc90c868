using CsCheck;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Full throttle on packs from stiff to nearly flat: the point keeps Kirchhoff's laws and the torque (M3, M5).</summary>
public sealed class WeakPackTests
{
    [Theory]
    [InlineData(MotorKind.Brushless)]
    [InlineData(MotorKind.Brushed)]
    public void A_turning_motor_carries_its_torque_and_the_bus_what_is_drawn(MotorKind kind)
    {
        var rig = SampleRig.Of(kind == MotorKind.Brushed ? SampleRig.Brushed : SampleRig.Brushless);
        Gen.Select(Gen.Double[4, 20], Gen.Double[0.001, 2], Gen.Double[0, 0.1])
            .Sample(
                (openV, sourceOhm, torqueNm) =>
                {
                    var source = new Source(openV, sourceOhm);
                    var point = FullThrottleCases.Point(rig, source, torqueNm);
                    if (point.SpeedRadPerS > 0)
                    {
                        var asked = rig.Motor.CurrentFor(torqueNm, point.SpeedRadPerS);
                        var drawn =
                            point.MotorA
                            + rig.Auxiliary.CurrentA
                            + (rig.Auxiliary.PowerW / point.Bus.BusV);
                        Assert.Equal(asked, point.MotorA, 1e-6 * (1 + asked));
                        Assert.Equal(drawn, point.Bus.BatteryA, 1e-6 * (1 + drawn));
                        Assert.Equal(openV - (sourceOhm * drawn), point.Bus.BusV, 1e-6);
                    }

                    Assert.InRange(point.Bus.BatteryA, 0, openV / sourceOhm);
                    Assert.InRange(point.MotorA, 0, openV / sourceOhm);
                },
                iter: 2000
            );
    }
}
