using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What ripple heats and draws (M3), by hand arithmetic.</summary>
public sealed class BridgeLossTests
{
    private const double MotorOhm = 0.03;

    private static Rig Of(double hertz, int motors = 2) =>
        SampleRig.Of(
            SampleRig.Brushless with
            {
                Controller = SampleRig.Brushless.Controller with { PwmFrequencyHz = hertz },
                Motor = SampleRig.Brushless.Motor with { InductanceH = 20e-6 },
                Vehicle = SampleRig.Brushless.Vehicle with { MotorCount = motors },
            }
        );

    private static BridgeLoss Loss(Rig rig, Bridge bridge, double duty, double motorA = 20) =>
        BridgeLoss.Of(
            rig,
            bridge,
            new Source(11, 0.02),
            new Bus(10, duty, 5, 0, true, false),
            motorA,
            MotorOhm
        );

    [Theory]
    [InlineData(8000, 0.4, 20, false)]
    [InlineData(7999, 0.4, 20, true)]
    [InlineData(7999, 0.0, 20, false)]
    [InlineData(7999, 1.0, 20, false)]
    [InlineData(7999, 0.4, 0, false)]
    [InlineData(7999, 0.4, -1, false)]
    public void A_current_ripples_while_switched_below_8_kHz(
        double hertz,
        double duty,
        double motorA,
        bool ripples
    )
    {
        var loss = Loss(Of(hertz), default, duty, motorA);

        Assert.Equal(ripples, loss.RippleA2 > 0);
        Assert.Equal(ripples, loss.RippleW > 0);
    }

    [Theory]
    [InlineData(false, 1)]
    [InlineData(false, 2)]
    [InlineData(true, 1)]
    [InlineData(true, 2)]
    public void Ripple_heats_motor_and_loop_and_without_capacitors_the_pack_while_on(
        bool unsmoothed,
        int motors
    )
    {
        var rig = Of(3000, motors);
        var loss = Loss(rig, new(0.8, 0.01, unsmoothed), 0.4);
        // The diode adds its drop to what the inductance sees.
        var ripple = Ripple.MeanSquare(10.8, 0.4, MotorOhm + rig.LoopOhm, 20e-6, 3000);
        var pack = unsmoothed ? 0.4 * motors * 0.02 : 0;

        Assert.Equal(ripple, loss.RippleA2, 1e-9);
        Assert.Equal(ripple * (MotorOhm + rig.LoopOhm + pack), loss.RippleW, 1e-9);
        Assert.Equal(20 * ((0.8 * 0.6) + (0.01 * 10)), loss.ControllerW, 1e-9);
        Assert.Equal(loss.ControllerW + loss.RippleW, loss.DrawnW, 1e-12);
    }

    [Fact]
    public void Losses_are_near_when_they_differ_by_no_more_than_a_rounding()
    {
        var loss = new BridgeLoss(6, 1, 4);

        Assert.True(loss.Near(loss));
        Assert.True(loss.Near(new(6, 1, 4 + 9e-12)));
        Assert.False(loss.Near(new(6, 1, 4 + 2e-11)));
        Assert.False(loss.Near(new(6, 1, 4 - 2e-11)));
    }
}
