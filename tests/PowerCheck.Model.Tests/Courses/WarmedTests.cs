using PowerCheck.Model.Courses;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>How far a motor has warmed (M7), by hand.</summary>
public sealed class WarmedTests
{
    private static MotorWarmth Motor(bool magnetAtCase = true) =>
        new(Parts.Motor(magnetAtCase: magnetAtCase), 25);

    [Fact]
    public void A_magnet_warms_with_the_case_and_a_winding_is_mixed_with_it()
    {
        // 20 K of 50 K in the case, 60 K + 20 K of 110 K + 50 K in both.
        Assert.Equal(new(20.0 / 50, 80.0 / 160), Warmed.Of(Motor(), new(85, 45), new(135, 75)));
        // Midway between both the magnet has 40 K of 80 K.
        Assert.Equal(
            new(40.0 / 80, 80.0 / 160),
            Warmed.Of(Motor(magnetAtCase: false), new(85, 45), new(135, 75))
        );
    }

    [Fact]
    public void A_motor_is_no_colder_than_cold_and_no_warmer_than_it_gets()
    {
        Assert.Equal(Warmed.Not, Warmed.Of(Motor(), new(20, 20), new(135, 75)));
        Assert.Equal(Warmed.Through, Warmed.Of(Motor(), new(150, 80), new(135, 75)));
    }

    [Theory]
    [InlineData(25)]
    [InlineData(24)]
    [InlineData(double.NaN)]
    public void A_motor_that_does_not_warm_is_as_warm_as_it_gets_at_once(double warmestC) =>
        Assert.Equal(
            Warmed.Through,
            Warmed.Of(Motor(), MotorTemperature.At(25), MotorTemperature.At(warmestC))
        );

    [Theory]
    [InlineData(0.1, 0.5, 0.4, 0.6, 0.1, 0.3)]
    [InlineData(0.5, 0.1, 0.6, 0.4, 0.1, 0.3)]
    [InlineData(0.9, 0.2, 0.3, 0.9, 0.6, 0.7)]
    public void Two_states_are_as_far_apart_as_the_nearer_of_both_and_as_far_off_as_the_further(
        double magnet,
        double winding,
        double otherMagnet,
        double otherWinding,
        double nearer,
        double further
    )
    {
        var (one, other) = (new Warmed(magnet, winding), new Warmed(otherMagnet, otherWinding));

        Assert.Equal((nearer, nearer), (Round(one.Apart(other)), Round(other.Apart(one))));
        Assert.Equal((further, further), (Round(one.From(other)), Round(other.From(one))));
    }

    private static double Round(double share) => Math.Round(share, 12);
}
