using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>What a part carries between its burst and for ever (M7), against hand arithmetic.</summary>
public sealed class BurstRatingTests
{
    // 40 A for ever, 120 A for 3 s: 1 − (40/120)² = 8/9 is left of e^(−t/τ) after 3 s, so (8/9)^(t/3) after t.
    [Theory]
    [InlineData(1, 120)]
    [InlineData(3, 120)]
    [InlineData(3.000001, 120)]
    // 40/√(1 − 64/81) = 360/√17.
    [InlineData(6, 87.3128)]
    // (8/9)^10 = 0.307946; 40/√0.692054.
    [InlineData(30, 48.0828)]
    [InlineData(double.PositiveInfinity, 40)]
    public void A_part_carries_its_burst_for_its_seconds_and_less_for_longer(
        double seconds,
        double ampere
    ) => Assert.Equal(ampere, BurstRating.AllowedA(40, 120, 3, seconds), 1e-4);

    [Fact]
    public void Without_a_burst_the_lasting_current_counts_for_any_time()
    {
        Assert.Equal(40, BurstRating.AllowedA(40, double.NaN, 3, 1));
        Assert.True(double.IsNaN(BurstRating.AllowedA(double.NaN, double.NaN, 3, 1)));
    }

    [Fact]
    public void A_burst_of_unsaid_seconds_or_lasting_current_counts_as_long_as_asked()
    {
        Assert.Equal(120, BurstRating.AllowedA(40, 120, double.NaN, 60));
        Assert.Equal(120, BurstRating.AllowedA(double.NaN, 120, 3, 60));
    }
}
