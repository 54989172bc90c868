using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>A limit that is just met, to the last bit, is reached (M6).</summary>
public sealed class JustMetTests
{
    // 40 W in the winding, from cold.
    private static readonly TwoNode Warming = new(Parts.Heat(), 0, 0, 40, 25);
    private static readonly MotorTemperature Cold = MotorTemperature.At(25);

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void At_the_end_of_a_time(double windingWeight)
    {
        var end = Warming.Over(10).Apply(Cold);
        var limit = end.Weighted(windingWeight);

        Assert.True(limit > 25);
        Assert.True(Warming.Reaches(Cold, end, windingWeight, limit));
        Assert.Equal(10, Warming.FirstCrossing(Cold, windingWeight, limit, 10), 1e-6);
        Assert.False(Warming.Reaches(Cold, end, windingWeight, limit + 1e-9));
    }

    [Fact]
    public void At_the_turn_of_a_case_that_a_hot_winding_warms()
    {
        var cooling = new TwoNode(Parts.Heat(), 0, 0, 0, 25);
        var start = new MotorTemperature(300, 25);
        var end = cooling.Over(600).Apply(start);
        var highest = cooling.Peak(start, 0, 600);

        Assert.True(highest > 80 && end.CaseC < 50);
        Assert.True(cooling.Reaches(start, end, 0, highest));
        Assert.False(cooling.Reaches(start, end, 0, highest + 1e-9));
    }

    [Fact]
    public void By_a_motor_that_rests_in_air_of_that_temperature()
    {
        var warmth = new MotorWarmth(Parts.Motor(heat: Parts.Heat(limitC: 25)), 25);

        Assert.Equal(
            (0, double.PositiveInfinity),
            warmth.TimesToLimits(Drive.Rest, warmth.Cold, warmth.Cold)
        );
    }
}
