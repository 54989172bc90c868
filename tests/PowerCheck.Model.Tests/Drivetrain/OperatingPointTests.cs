using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Voltages, losses and heat of one motor and its controller at one point (M3), by Kirchhoff's laws.</summary>
public sealed class OperatingPointTests
{
    private static readonly Source Source = new(8, 0.02);

    private static readonly Rig Brushed = SampleRig.Of(
        SampleRig.Brushed with
        {
            Controller = SampleRig.Brushed.Controller with { OnResistanceOhm = 0.004 },
        }
    );

    private static readonly double Kt = 60 / (2 * Math.PI * 1600);

    [Theory]
    [InlineData(5, 0.3)]
    [InlineData(0, 0)]
    [InlineData(-5, 0)]
    public void Brushes_drop_their_voltage_while_the_motor_drives(double motorA, double brushV) =>
        Assert.Equal(
            (motorA * 0.09) + (Kt * 300) + brushV,
            OperatingPoint.Feeding(Brushed, Source, motorA, 300).MotorV,
            1e-9
        );

    [Theory]
    [InlineData(0.004)]
    [InlineData(0.5)]
    public void A_motor_out_of_reach_has_what_switches_and_leads_leave_of_the_bus(double switchOhm)
    {
        var rig = Brushed with
        {
            Controller = Brushed.Controller with { OnResistanceOhm = switchOhm },
        };
        var point = OperatingPoint.Feeding(rig, Source, 20, 2000);

        Assert.False(point.Bus.Reached);
        Assert.Equal(
            // 10 V over half an ohm are more than there is.
            switchOhm < 0.1
                ? point.Bus.BusV - (20 * (0.004 + rig.Leads.MotorOhm))
                : 0,
            point.MotorV,
            1e-9
        );
    }

    [Theory]
    [InlineData(7000, Freewheel.Diode, 20e-6)]
    [InlineData(7000, Freewheel.Synchronous, 20e-6)]
    [InlineData(2000, Freewheel.Diode, 70e-6)]
    public void A_duty_settles_where_losses_and_bus_agree(
        double hertz,
        Freewheel freewheel,
        double henry
    )
    {
        const double Duty = 0.4;
        var rig = SampleRig.Of(
            SampleRig.Brushless with
            {
                Controller = SampleRig.Brushless.Controller with
                {
                    PwmFrequencyHz = hertz,
                    Freewheel = freewheel,
                    EdgeTimeS = 1e-6,
                    OnResistanceOhm = 0.004,
                },
                Motor = SampleRig.Brushless.Motor with { InductanceH = henry },
                Vehicle = SampleRig.Brushless.Vehicle with { MotorCount = 2 },
            }
        );
        var source = new Source(11, 0.02);
        var point = OperatingPoint.AtDuty(rig, source, Duty, 300);
        var (bus, current) = (point.Bus, point.MotorA);
        var loss = BridgeLoss.Of(rig, source, bus, current, 0.022);
        var diodeV = freewheel == Freewheel.Diode ? 0.8 : 0;
        var others = rig.Auxiliary.CurrentA + (rig.Auxiliary.PowerW / bus.BusV);
        var carried =
            hertz < 4000
                ? 2 * (current + loss.LiftA)
                : 2 * ((Duty * current) + (loss.BesidesW / bus.BusV));

        Assert.True(loss.BesidesW > 0.1);
        Assert.Equal(11 - (0.02 * (others + carried)), bus.BusV, 1e-9);
        Assert.Equal(
            (Duty * bus.BusV) - ((1 - Duty) * diodeV) - (current * (0.004 + rig.Leads.MotorOhm)),
            point.MotorV,
            1e-9
        );
        Assert.Equal(
            (current * 0.022) + (rig.Motor.TorqueConstantNmPerA * 300),
            point.MotorV,
            1e-9
        );
        Assert.Equal((current * current * 0.004) + loss.ControllerW, point.ControllerW, 1e-9);
        Assert.Equal(loss.RippleA2, point.RippleA2, 1e-9);
    }
}
