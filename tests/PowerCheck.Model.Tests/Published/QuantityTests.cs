using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Printed figures are read right.</summary>
public sealed class QuantityTests
{
    [Theory]
    [InlineData("12.10 V/krpm", 0.1155465)]
    [InlineData("57 oz-in", 0.4025085)]
    [InlineData("1340 g·cm²", 1.34e-4)]
    [InlineData("140 °F", 60)]
    [InlineData("368.15 K (absolute)", 95)]
    [InlineData("32 1/in", 1259.8425)]
    [InlineData("0.9989 Ω/kft", 0.00327723)]
    [InlineData("10381 cmil", 5.26013e-6)]
    [InlineData("100 rpm/V", 10.471976)]
    [InlineData("0.231 rpm/(mN·m)", 24.1903)]
    [InlineData("-0.12 %/K", -0.0012)]
    [InlineData("0.5", 0.5)]
    [InlineData("2 Wh", 7200)]
    [InlineData("45 °", 0.785398)]
    [InlineData("10000 rpm", 1047.1976)]
    [InlineData("30 µH", 3e-5)]
    [InlineData("50 ns", 5e-8)]
    public void A_printed_figure_is_brought_to_SI(string text, double si)
    {
        var quantity = new Quantity(text);
        Assert.Equal(si, quantity.Si, 2e-6 * Math.Abs(si));
        Assert.Equal(quantity.Figure, quantity.Unit.FromSi(quantity.Si), 1e-9);
    }

    [Theory]
    [InlineData("12.10 V", 0.01)]
    [InlineData("693 oz-in", 1)]
    [InlineData("1.543e-8 Ω·m", 1e-11)]
    [InlineData("0.9", 0.1)]
    public void Its_last_digit_counts(string text, double digit) =>
        Assert.Equal(digit, new Quantity(text).LastDigit, 1e-9 * digit);

    [Fact]
    public void The_units_of_the_model_are_as_large_as_those_written_out()
    {
        Unit[] units =
        [
            Unit.One,
            Unit.Ampere,
            Unit.Volt,
            Unit.Watt,
            Unit.WattHour,
            Unit.Milliohm,
            Unit.Microhenry,
            Unit.RpmPerVolt,
            Unit.Rpm,
            Unit.Second,
            Unit.Minute,
            Unit.Hour,
            Unit.Nanosecond,
            Unit.Celsius,
            Unit.Kelvin,
            Unit.PerKelvin,
            Unit.KelvinPerWatt,
            Unit.JoulePerKelvin,
            Unit.Gram,
            Unit.Kilogram,
            Unit.Millimetre,
            Unit.Degree,
            Unit.NewtonMetre,
            Unit.Awg,
        ];
        Assert.All(
            units,
            unit => Assert.Equal(PrintedUnit.Of(unit.Symbol).Size, unit.Si, 1e-12 * unit.Si)
        );
    }

    [Fact]
    public void A_unit_that_is_not_known_is_refused() =>
        Assert.Throws<ArgumentException>(() => new Quantity("3 furlong").Unit);
}
