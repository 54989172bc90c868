using MathNet.Numerics.OdeSolvers;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>Thermal memory (M7), against integrating dθ/dt = (k − θ)/τ, and in its limits.</summary>
public sealed class ThermalMemoryTests
{
    private static readonly ThermalMemory Memory = new(30, 1);

    [Theory]
    [InlineData(0, 2.5, 10)]
    [InlineData(0.8, 0.1, 45)]
    [InlineData(0.3, 0.3, 100)]
    public void A_level_is_what_integration_gives(double level, double load, double seconds) =>
        Assert.Equal(
            RungeKutta.FourthOrder(level, 0, seconds, 2000, (_, x) => (load - x) / 30)[^1],
            Memory.After(level, load, seconds),
            1e-9
        );

    [Fact]
    public void No_time_changes_nothing_and_a_long_time_reaches_the_load()
    {
        Assert.Equal(0.4, Memory.After(0.4, 3, 0), 1e-15);
        Assert.Equal(3, Memory.After(0.4, 3, 1e6), 1e-12);
    }

    [Theory]
    [InlineData(0, 2)]
    [InlineData(0.6, 1.2)]
    public void The_time_to_the_limit_leads_to_the_limit(double level, double load)
    {
        // τ·ln((k − θ₀)/(k − 1)).
        var time = Memory.TimeToLimit(level, load);
        Assert.Equal(30 * Math.Log((load - level) / (load - 1)), time, 1e-12);
        Assert.Equal(1, Memory.After(level, load, time), 1e-12);
    }

    [Fact]
    public void The_rating_itself_lasts_for_ever_and_the_limit_itself_no_time()
    {
        Assert.True(double.IsInfinity(Memory.TimeToLimit(0, 1)));
        Assert.Equal(0, Memory.TimeToLimit(1, 5));
    }

    [Fact]
    public void Warm_air_leaves_less_time() =>
        Assert.True(new ThermalMemory(30, 0.8).TimeToLimit(0, 2) < Memory.TimeToLimit(0, 2));

    [Fact]
    public void What_is_not_known_stays_not_known()
    {
        Assert.True(double.IsNaN(Memory.TimeToLimit(0, double.NaN)));
        Assert.True(double.IsNaN(Memory.TimeToLimit(double.NaN, 2)));
        Assert.True(double.IsNaN(Memory.After(0, double.NaN, 5)));
    }
}
