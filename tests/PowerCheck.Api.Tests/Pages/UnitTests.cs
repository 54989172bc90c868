using CsCheck;
using PowerCheck.Api.Display;
using PowerCheck.Api.Paths;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Tests.Pages;

/// <summary>Units are for the eye: the rig keeps its figures.</summary>
public class UnitTests
{
    private static readonly Unit[] Units =
    [
        Unit.Kilogram,
        Unit.Gram,
        Unit.Millimetre,
        Unit.Celsius,
        Unit.MetrePerSecond,
    ];

    [Fact]
    public void A_figure_is_converted_only_where_it_converts_back() =>
        Gen.Select(Gen.Int[0, Units.Length - 1], Gen.Double[-40, 2000], Gen.Int[0, 6])
            .Sample(drawn =>
            {
                var own = Units[drawn.Item1];
                var canonical = Math.Round(drawn.Item2, drawn.Item3).ToString("R");
                var (text, beside) = DisplayUnits.Imperial.Field(canonical, own);

                if (beside is null)
                {
                    var name = DisplayUnits.Imperial.Instead(own)!.Name;
                    Assert.Equal(
                        double.Parse(canonical),
                        OtherUnits.From(own, name)!(double.Parse(text))
                    );
                }
                else
                {
                    Assert.Equal($"{canonical} {own.Symbol}", text);
                }
            });

    // NIST SP 811 (2008), appendix B.8: 0.453 592 37 kg, 25.4 mm, 0.3048 m/s, exact; Fahrenheit 1.8·°C + 32.
    [Theory]
    [InlineData("3.62873896", "kg", "8")]
    [InlineData("116.84", "mm", "4.6")]
    [InlineData("35", "°C", "95")]
    [InlineData("0.3048", "m/s", "1")]
    public void What_was_given_in_pounds_or_inches_is_shown_as_it_was(
        string canonical,
        string symbol,
        string shown
    ) =>
        Assert.Equal(
            (shown, null),
            DisplayUnits.Imperial.Field(canonical, Units.Single(unit => unit.Symbol == symbol))
        );

    [Fact]
    public async Task A_figure_that_would_change_keeps_its_unit_and_says_the_other()
    {
        var page = (
            await Service.Get("/?vehicle.massKg=3.2&spread=none&remedies=none&units=imperial")
        ).Text;

        Assert.Contains(("vehicle.massKg[lb]", "3.2 kg"), PageText.Sent(page));
        Assert.Contains(
            "About 7.055 lb; a bare number is pounds.",
            PageText.Notes(page, "vehicle.massKg")
        );
    }

    [Fact]
    public void A_distance_between_temperatures_has_no_zero_of_its_own() =>
        Assert.Equal("14.4 °F", DisplayUnits.Imperial.ShowSpan(8, "°C"));
}
