using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What ripple and edges heat and draw (M3), by hand arithmetic: 10 V bus, 20 A, a pack of 20 mΩ.</summary>
public sealed class BridgeLossTests
{
    private const double MotorOhm = 0.03;

    private static Rig Of(
        double hertz,
        int motors = 2,
        Freewheel freewheel = Freewheel.Diode,
        double edgeS = 0,
        double? inductanceH = 20e-6
    ) =>
        SampleRig.Of(
            SampleRig.Brushless with
            {
                Controller = SampleRig.Brushless.Controller with
                {
                    PwmFrequencyHz = hertz,
                    Freewheel = freewheel,
                    EdgeTimeS = edgeS,
                },
                Motor = SampleRig.Brushless.Motor with { InductanceH = inductanceH },
                Vehicle = SampleRig.Brushless.Vehicle with { MotorCount = motors },
            }
        );

    // Switched fast, and nothing known that could ripple.
    private static Rig Smooth(double edgeS) => Of(10_000, edgeS: edgeS, inductanceH: null);

    private static BridgeLoss Loss(Rig rig, double duty, double motorA = 20) =>
        BridgeLoss.Of(
            rig,
            new Source(11, 0.02),
            new Bus(10, duty, 5, 0, true, false),
            motorA,
            MotorOhm
        );

    [Theory]
    [InlineData(7999, 0.4, 20, true)]
    [InlineData(16000, 0.4, 20, true)]
    [InlineData(7999, 0.0, 20, false)]
    [InlineData(7999, 1.0, 20, false)]
    [InlineData(7999, 0.4, 0, false)]
    [InlineData(7999, 0.4, -1, false)]
    public void A_current_of_known_inductance_ripples_while_it_is_switched(
        double hertz,
        double duty,
        double motorA,
        bool ripples
    )
    {
        var loss = Loss(Of(hertz), duty, motorA);

        Assert.Equal(ripples, loss.RippleA2 > 0);
        Assert.Equal(ripples, loss.RippleW > 0);
    }

    [Theory]
    [InlineData(4500, 1, Freewheel.Synchronous, 0)]
    [InlineData(4500, 2, Freewheel.Diode, 1e-6)]
    [InlineData(3000, 1, Freewheel.Synchronous, 1e-6)]
    [InlineData(3000, 2, Freewheel.Diode, 0)]
    public void What_ripple_draws_heats_motor_and_loop_and_without_capacitors_the_pack_while_on(
        double hertz,
        int motors,
        Freewheel freewheel,
        double edgeS
    )
    {
        var rig = Of(hertz, motors, freewheel, edgeS);
        var loss = Loss(rig, 0.4);
        var diodeV = freewheel == Freewheel.Diode ? 0.8 : 0;
        var loop = MotorOhm + rig.LoopOhm;
        // The diode adds its drop to what the inductance sees.
        var ripple = Ripple.MeanSquare(10 + diodeV, 0.4, loop, 20e-6, hertz);
        var pack = hertz < 4000 ? 0.4 * motors * 0.02 : 0;
        // Half of 10 V · 20 A for each edge.
        var edgeW = 0.5 * 10 * 20 * edgeS * hertz;
        // What the ripple heats comes from the bus and, over the diode's part of the time, out of the diode's loss.
        var drawnA = ripple * (loop + pack) / (10 + diodeV);

        Assert.Equal(ripple, loss.RippleA2, 1e-9);
        Assert.Equal(ripple * loop, loss.RippleW, 1e-9);
        Assert.Equal(edgeW + (diodeV * ((20 * 0.6) - drawnA)), loss.ControllerW, 1e-9);
        Assert.Equal(edgeW + (10 * drawnA), loss.BesidesW, 1e-9);
        Assert.Equal(loss.BesidesW / (0.4 * 10), loss.LiftA, 1e-9);
        Assert.Equal(loss.ControllerW + loss.RippleW, loss.DrawnW, 1e-12);
    }

    [Fact]
    public void Without_ripple_edges_and_diode_are_all_that_is_lost()
    {
        var loss = Loss(Smooth(1e-6), 0.25);

        // Edges ½·10 V·20 A·1 µs·10 kHz = 1 W, diode 0.8 V·20 A·0.75 = 12 W; 1 W while on a quarter of the time at 10 V.
        Assert.Equal((13, 0, 0), (Math.Round(loss.ControllerW, 9), loss.RippleA2, loss.RippleW));
        Assert.Equal((1, 0.4), (Math.Round(loss.BesidesW, 9), Math.Round(loss.LiftA, 9)));
        Assert.Equal(0, Loss(Smooth(0), 0.25).LiftA);
        // Fully on or off nothing switches.
        Assert.Equal((0, 0), (Loss(Smooth(1e-6), 1).DrawnW, Loss(Smooth(0), 1).BesidesW));
    }

    [Fact]
    public void Fully_off_nothing_is_lifted() => Assert.Equal(0, Loss(Smooth(0), 0).LiftA);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Without_inductance_too_nothing_ripples_fully_on_or_off(double duty) =>
        Assert.Equal(0, Loss(Of(7999, inductanceH: 0), duty).RippleA2);

    [Fact]
    public void Diode_and_edges_lose_as_much_in_a_motor_whose_resistance_is_not_known()
    {
        var bus = new Bus(10, 0.25, 5, 0, true, false);
        var loss = BridgeLoss.Of(Smooth(1e-6), new Source(11, 0.02), bus, 20, double.NaN);

        Assert.Equal(Loss(Smooth(1e-6), 0.25), loss);
        Assert.Equal(13, loss.ControllerW, 1e-9);
    }

    [Fact]
    public void Losses_are_near_when_they_differ_by_no_more_than_a_rounding()
    {
        var loss = new BridgeLoss(6, 1, 4, 0, 0);

        Assert.True(loss.Near(loss));
        Assert.True(loss.Near(loss with { RippleW = 4 + 9e-12 }));
        Assert.False(loss.Near(loss with { RippleW = 4 + 2e-11 }));
        Assert.False(loss.Near(loss with { RippleW = 4 - 2e-11 }));
    }
}
