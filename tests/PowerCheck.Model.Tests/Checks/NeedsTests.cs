using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>What an open limit needs is found for every rig with missing figures (M13).</summary>
public sealed class NeedsTests
{
    [Theory]
    [Trait("speed", "slow")]
    [InlineData(91906)]
    [InlineData(842234)]
    [InlineData(40707)]
    [InlineData(535304)]
    public void Missing_KV_capacity_and_rating_leave_limits_open_that_say_what_they_need(int number)
    {
        var label = RandomRig.Of(number);
        string[] missing =
        [
            "motor.kvRpmPerVolt",
            "battery.capacityMah",
            "controller.continuousCurrentA",
        ];
        var result = Check.Run(
            label with
            {
                Motor = label.Motor with { SpeedConstantRadPerSPerV = null, Turns = null },
                Battery = label.Battery with { CapacityCoulomb = null },
                Controller = label.Controller with { ContinuousCurrentA = null },
            }
        );
        var open = result.Findings.Where(f => f.Outcome == Outcome.Unknown).ToArray();
        Assert.NotEmpty(open);
        Assert.All(
            open,
            f =>
            {
                Assert.NotEmpty(f.Needs);
                Assert.All(
                    f.Needs,
                    need => Assert.Contains(need.Path, missing, StringComparer.Ordinal)
                );
            }
        );
    }
}
