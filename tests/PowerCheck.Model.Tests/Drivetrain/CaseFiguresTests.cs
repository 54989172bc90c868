using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Figures and obstacles of a load case (M5), by hand arithmetic.</summary>
public sealed class CaseFiguresTests
{
    private static readonly RigLabel Label = SampleRig.Brushless with
    {
        Accessories = [new() { IdleCurrentA = 2, WorkingCurrentA = 2 }],
        Motor = SampleRig.Brushless.Motor with { NoLoadPoints = [new(7.4, 2.4)] },
        Controller = SampleRig.Brushless.Controller with
        {
            OnResistanceOhm = 0.002,
            QuiescentCurrentA = 0,
            ReceiverSupply = new() { Regulator = Regulator.Linear, VoltageV = 6 },
        },
        Vehicle = SampleRig.Brushless.Vehicle with { MotorCount = 2 },
    };

    private static OperatingPoint Point(double duty) =>
        new(20, 30, 3, 500, new(11, duty, 16, 2, true, false), 7);

    [Theory]
    [InlineData(16_000, null)]
    [InlineData(16_000, 20e-6)]
    [InlineData(6000, 20e-6)]
    public void Torque_and_heat_of_the_climb_are_put_together_by_hand(double hertz, double? henry)
    {
        var rig = SampleRig.Of(
            Label with
            {
                Controller = Label.Controller with { PwmFrequencyHz = hertz },
                Motor = Label.Motor with { InductanceH = henry },
            }
        );
        var climb = SteadyCases.Climb(rig);
        var source = rig.SourceAt(CaseRunner.HalfCharge, true);
        var rms2 = climb.MotorRmsCurrentA * climb.MotorRmsCurrentA;
        var kt = 60 / (2 * Math.PI * 3300);
        var speed = climb.MotorSpeedRadPerS;

        Assert.Equal(henry is not null, rms2 > 1.0001 * climb.MotorCurrentA * climb.MotorCurrentA);
        // m·g·(sin 45° + 0.06·cos 45°)·d/2 at the wheels.
        Assert.Equal(3.4 * 9.80665 * Math.Sqrt(0.5) * 1.06 * 0.118 / 2, climb.WheelTorqueNm, 1e-9);
        Assert.Equal(
            (rms2 * 0.022) + (kt * rig.Motor.NoLoad.CurrentAt(speed) * speed),
            climb.MotorHeatW,
            1e-9
        );
        // 2 A through what the bus has over the 6 V of the linear supply.
        Assert.Equal((rms2 * 0.002) + ((climb.BusVoltageV - 6) * 2), climb.ControllerHeatW, 1e-9);
        Assert.Equal(
            climb.BatteryRmsCurrentA
                * climb.BatteryRmsCurrentA
                * (source.ResistanceOhm - rig.Leads.BatteryOhm),
            climb.BatteryHeatW,
            1e-9
        );
        Assert.Equal(climb.BatteryCurrentA, climb.BatteryRmsCurrentA);
    }

    [Fact]
    public void Brushes_heat_a_motor_by_their_drop()
    {
        var rig = SampleRig.Of(SampleRig.Brushed with { Accessories = [] });
        var climb = SteadyCases.Climb(rig);
        var current = climb.MotorCurrentA;
        var speed = climb.MotorSpeedRadPerS;
        var kt = 60 / (2 * Math.PI * 1600);

        Assert.Equal(
            (current * current * 0.09)
                + (0.3 * current)
                + (kt * rig.Motor.NoLoad.CurrentAt(speed) * speed),
            climb.MotorHeatW,
            1e-9
        );
    }

    [Theory]
    [InlineData(3999, 0.3, true)]
    [InlineData(4000, 0.3, false)]
    [InlineData(3999, 0.0, false)]
    [InlineData(3999, 1.0, false)]
    public void Below_4_kHz_the_pack_carries_all_of_the_motors_current_while_on(
        double hertz,
        double duty,
        bool pulsed
    )
    {
        var rig = SampleRig.Of(
            Label with
            {
                Controller = Label.Controller with { PwmFrequencyHz = hertz },
            }
        );
        // Of the mean of 16 A, 2 A go elsewhere: 14/0.3 + 2 A while on, with 4·30 A² of two motors' ripple; off: 2 A.
        var on = (14 / 0.3) + 2;
        var expected = pulsed ? Math.Sqrt((0.3 * ((on * on) + 120)) + (0.7 * 4)) : 16;

        Assert.Equal(expected, CaseFigures.BatteryRmsA(rig, Point(duty)), 1e-9);
    }
}
