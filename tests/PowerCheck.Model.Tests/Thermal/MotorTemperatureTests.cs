using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>Readings of winding and case, by hand.</summary>
public sealed class MotorTemperatureTests
{
    [Theory]
    [InlineData(100, 60, 93, 58, 7)]
    [InlineData(93, 58, 100, 70, 12)]
    [InlineData(80, 40, 80, 40, 0)]
    public void Readings_are_as_far_apart_as_the_larger_difference(
        double windingC,
        double caseC,
        double otherWindingC,
        double otherCaseC,
        double kelvin
    ) =>
        Assert.Equal(
            kelvin,
            new MotorTemperature(windingC, caseC).DistanceK(new(otherWindingC, otherCaseC)),
            1e-12
        );

    [Theory]
    // Up and on up: the guess stays.
    [InlineData(50, 70, 80, 80, 60)]
    [InlineData(90, 70, 60, 60, 60)]
    // Up and back, or down and back: halfway.
    [InlineData(50, 90, 80, 85, 65)]
    [InlineData(90, 50, 60, 55, 65)]
    // No move before: nothing to turn back from.
    [InlineData(70, 70, 80, 80, 60)]
    [InlineData(70, 70, 60, 60, 60)]
    public void A_guess_that_turns_back_is_halved(
        double beforeC,
        double lastC,
        double nextC,
        double windingC,
        double caseC
    ) =>
        Assert.Equal(
            new(windingC, caseC),
            new MotorTemperature(nextC, 60).Damped(new(lastC, 70), new(beforeC, 40))
        );
}
