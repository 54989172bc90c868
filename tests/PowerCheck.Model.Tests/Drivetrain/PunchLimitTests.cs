using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>A stated current limit holds in a punch too (M3).</summary>
public sealed class PunchLimitTests
{
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void A_punch_takes_no_more_than_the_controllers_own_limit(double limit)
    {
        var label = SampleRig.Brushless with
        {
            Controller = SampleRig.Brushless.Controller with { CurrentLimitA = limit },
        };
        var punch = CaseRunner.Punch(SampleRig.Of(label), CaseRunner.HalfCharge);
        Assert.Equal(Obstacle.CurrentLimit, punch.Obstacle);
        Assert.Equal(limit, punch.MotorCurrentA, 1e-6 * limit);
    }
}
