using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Below 4 kHz nothing smooths the bus (M3).</summary>
public sealed class SlowSwitchingTests
{
    [Fact]
    public void The_bus_dips_under_the_whole_motor_current_while_on()
    {
        var label = SampleRig.Brushless with
        {
            Accessories = [],
            Controller = SampleRig.Brushless.Controller with { PwmFrequencyHz = 2000 },
        };
        var rig = SampleRig.Of(label);
        var climb = SteadyCases.Climb(rig);
        var source = rig.SourceAt(CaseRunner.HalfCharge, true);
        // While on, the rippling current is more than its mean: what the pack gives in the mean, over the duty.
        var others = rig.Auxiliary.CurrentA;
        var on = others + ((climb.BatteryCurrentA - others) / climb.DutyRatio);
        Assert.True(on > climb.MotorCurrentA + others);
        Assert.Equal(source.OpenCircuitV - (source.ResistanceOhm * on), climb.BusVoltageV, 1e-9);
    }
}
