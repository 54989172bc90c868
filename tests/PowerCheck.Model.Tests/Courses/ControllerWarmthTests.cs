using PowerCheck.Model.Courses;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>A controller's thermal memory over laps of three loads (M7), against walking through them.</summary>
public sealed class ControllerWarmthTests
{
    private static readonly (double Seconds, double Load)[] Lap = [(20, 0.3), (10, 2), (15, 0)];

    private static double Walked(double seconds)
    {
        var level = 0.0;
        for (var t = 0.0; t < seconds; t += 0.5)
        {
            var load = (t % 45) switch
            {
                < 20 => 0.3,
                < 30 => 2,
                _ => 0,
            };
            level = load + ((level - load) * Math.Exp(-0.5 / 60));
        }

        return level;
    }

    private static ControllerWarmth Warmth() =>
        new(
            new ThermalMemory(60, 1),
            new(
                [.. Lap.Select(part => (part.Seconds, false))],
                [new(Warmed.Through, [.. Lap.Select(part => part.Load)])]
            ),
            _ => Warmed.Through,
            3600,
            25,
            75
        );

    [Theory]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(40)]
    [InlineData(45)]
    [InlineData(115)]
    [InlineData(907)]
    public void From_cold_it_ends_the_run_where_walking_through_it_leads(double runS) =>
        Assert.Equal(Walked(runS), Warmth().Over(runS).End, 1e-9);

    [Fact]
    public void A_level_of_one_is_the_span_above_the_air() =>
        Assert.Equal(100, Warmth().TemperatureC(1));
}
