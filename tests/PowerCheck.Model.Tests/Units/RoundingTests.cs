using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Units;

/// <summary>Figures as they are tried and told, by hand.</summary>
public sealed class RoundingTests
{
    [Theory]
    [InlineData(12.341, false, true, 12.4)]
    [InlineData(12.341, false, false, 12.3)]
    [InlineData(0.0123456, false, true, 0.0124)]
    [InlineData(123_456, false, false, 123_000)]
    [InlineData(12.341, true, true, 13)]
    [InlineData(12.341, true, false, 12)]
    public void What_is_counted_is_whole_and_the_rest_has_three_digits(
        double figure,
        bool counted,
        bool up,
        double shortly
    ) => Assert.Equal(shortly, Rounding.Short(figure, counted, up), 1e-12 * shortly);

    [Theory]
    [InlineData(10, 14, true, 12)]
    [InlineData(10, 13, true, 12)]
    [InlineData(13, 10, true, 11)]
    [InlineData(10, 11, true, double.NaN)]
    [InlineData(1.01, 1.02, false, double.NaN)]
    [InlineData(1.01, 1.04, false, 1.03)]
    [InlineData(1.04, 1.01, false, 1.02)]
    // What is rounded past the second is not between.
    [InlineData(59.8, 59.85, false, double.NaN)]
    public void A_figure_between_two_is_nearer_to_the_second_and_apart_from_both(
        double one,
        double other,
        bool counted,
        double between
    ) => Assert.Equal(between, Rounding.Between(one, other, counted), 1e-9);
}
