using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>The ripple of a fed hold: slow switching on a half-charged pack (M3, M5, M6).</summary>
public sealed class FedHoldTests
{
    private static readonly Rig Rig = SampleRig.Of(
        SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with { InductanceH = 20e-6 },
            Controller = SampleRig.Brushless.Controller with
            {
                Hold = HoldMode.Active,
                PwmFrequencyHz = 2000,
            },
        }
    );

    [Fact]
    public void A_case_of_holding_ripples_by_what_its_rms_current_has_over_the_mean()
    {
        var hold = CaseRunner.Run(Rig)[LoadCaseName.Hold];
        var drive = CaseHeat.Locked(Rig, hold, new MotorWarmth(Rig.Motor, 25)).Drive;
        var ripple =
            (hold.MotorRmsCurrentA * hold.MotorRmsCurrentA)
            - (hold.MotorCurrentA * hold.MotorCurrentA);

        Assert.True(ripple > 0.01, $"{ripple}");
        Assert.Equal(ripple, drive.Ripple!(20, 20), 1e-9);
        // A current from a full pack, or from one that sags less, ripples otherwise.
        foreach (var source in new[] { Rig.SourceAt(1, false), Rig.SourceAt(0.5, false) })
        {
            var other = OperatingPoint.Feeding(Rig, source, hold.MotorCurrentA, 0).RippleA2;
            Assert.True(Math.Abs(other - ripple) > 1e-6, $"{other} {ripple}");
        }
    }

    [Fact]
    public void A_segment_of_holding_ripples_as_the_case_does_and_asks_more_of_a_warm_magnet()
    {
        var hold = CaseRunner.Run(Rig)[LoadCaseName.Hold];
        var drive = Drives.Holding(Rig, Rig.ClimbSlopeRad);
        // At 120 °C the magnet is at 1 − 0.0011·100 = 0.89.
        var warm = OperatingPoint.Feeding(
            Rig,
            Rig.SourceAt(0.5, true),
            hold.MotorCurrentA / 0.89,
            0,
            20,
            120
        );

        Assert.Equal(
            (hold.MotorRmsCurrentA * hold.MotorRmsCurrentA)
                - (hold.MotorCurrentA * hold.MotorCurrentA),
            drive.Ripple!(20, 20),
            1e-9
        );
        Assert.Equal(warm.RippleA2, drive.Ripple(20, 120), 1e-9);
    }
}
