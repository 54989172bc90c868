using MathNet.Numerics.LinearAlgebra;
using PowerCheck.Referee.Tests.Deviations;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>Held currents and held torques for a long time: where they settle, and which never do (M6).</summary>
public sealed class RunawayTests : IClassFixture<DeviationReport>
{
    [Fact]
    public void Above_the_runaway_current_a_winding_never_settles_and_below_it_does()
    {
        var said = "";
        foreach (var rig in Integrated.All)
        {
            var (low, high) = (0.01, 1000.0);
            for (var n = 0; n < 40; n++)
            {
                var middle = Math.Sqrt(low * high);
                (low, high) = Explodes(rig.Plain, middle) ? (low, middle) : (middle, high);
            }

            said += rig.Percent("runaway current", low, rig.Check.Temperatures.RunawayCurrentA);
        }

        Assert.True(said.Length == 0, said);
    }

    // Late in the run a settling winding warms ever more slowly, an exploding one ever faster.
    private static bool Explodes(Plain plain, double currentA)
    {
        var motor = plain.Rig.Motor;
        var nodes = new Nodes(plain, 2);
        var time = 3 * motor.CaseJPerK * (motor.WindingToCaseKPerW + motor.CaseToAmbientKPerW);
        var x = nodes.Cold;
        Vector<double> Over(double seconds) =>
            nodes.Over(x, seconds, (_, _) => new Flow(currentA, 0, 0, 0, 0, 0), 1)[^1];
        double Rise()
        {
            var before = x;
            x = Over(20);
            return x[0] - before[0];
        }

        x = Over(Math.Min(time, 20 * motor.WindingJPerK * motor.WindingToCaseKPerW));
        if (!(x[0] < 1e6))
        {
            return true;
        }

        var early = Rise();
        x = Over(time);
        return !(x[0] < 1e6) || Rise() > early;
    }
}
