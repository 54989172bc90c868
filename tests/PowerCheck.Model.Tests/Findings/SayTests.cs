using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>How figures are written in sentences.</summary>
public sealed class SayTests
{
    [Theory]
    [InlineData(0.1234, "0.123 A")]
    [InlineData(0.9996, "1 A")]
    [InlineData(1, "1 A")]
    [InlineData(1.004, "1 A")]
    [InlineData(1.0049, "1 A")]
    [InlineData(9.876, "9.88 A")]
    [InlineData(10.04, "10 A")]
    [InlineData(98.76, "98.8 A")]
    [InlineData(100.4, "100 A")]
    [InlineData(-12.34, "-12.3 A")]
    [InlineData(1234.5678, "1235 A")]
    [InlineData(double.NaN, "not known")]
    [InlineData(double.PositiveInfinity, "rising without end")]
    public void Three_digits_are_shown(double amperes, string said) =>
        Assert.Equal(said, Say.Figure(amperes, Unit.Ampere));

    [Fact]
    public void A_degree_follows_at_once_and_a_plain_number_has_no_unit()
    {
        Assert.Equal("45°", Say.Figure(Math.PI / 4, Unit.Degree));
        Assert.Equal("1.5", Say.Figure(1.5, Unit.One));
        Assert.Equal("2.2 mΩ", Say.Figure(0.0022, Unit.Milliohm));
    }

    [Theory]
    [InlineData(119.6, "120 °C")]
    [InlineData(-3.2, "-3 °C")]
    [InlineData(double.NaN, "not known")]
    [InlineData(double.PositiveInfinity, "rising without end")]
    public void Temperatures_are_whole_degrees(double celsius, string said) =>
        Assert.Equal(said, Say.Degrees(celsius));

    [Theory]
    [InlineData(119.4, "119 s")]
    [InlineData(120, "2 min")]
    [InlineData(90 * 60, "90 min")]
    [InlineData(0.5, "0.5 s")]
    public void Two_minutes_and_more_are_minutes(double seconds, string said) =>
        Assert.Equal(said, Say.Time(seconds));

    [Fact]
    public void Every_load_case_has_words_of_its_own() =>
        Assert.Distinct(Enum.GetValues<LoadCaseName>().Select(Say.Case), StringComparer.Ordinal);
}
