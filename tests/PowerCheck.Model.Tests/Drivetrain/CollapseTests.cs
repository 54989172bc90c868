using CsCheck;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>A pack gives no more than its short-circuit current, whatever is asked of it (M3).</summary>
public sealed class CollapseTests
{
    [Fact]
    public void Battery_current_never_passes_the_short_circuit_current() =>
        Gen.Select(Gen.Double[4, 20], Gen.Double[0.01, 1], Gen.Double[0, 20], Gen.Double[0.02, 0.3])
            .Sample(
                (e, r, powerW, loopOhm) =>
                {
                    var (bus, _) = Bus.AtDuty(new(e, r), new(0.1, powerW), 1, 1, loopOhm, 0);
                    Assert.True(bus.BatteryA <= e / r, $"{bus.BatteryA} A of {e / r} A");
                }
            );
}
