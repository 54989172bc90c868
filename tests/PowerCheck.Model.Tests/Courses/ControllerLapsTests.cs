using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>After how many laps a controller's growing peak is at its limit (M7), by halving.</summary>
public sealed class ControllerLapsTests
{
    private static double Laps(double start, double peak, double decay)
    {
        var (rig, course, _) = RigCompletion.Of(SampleRig.Brushless);
        var warmth = new ControllerWarmth(new(30, 1), start, peak, decay, [(60, 1)], 25, 75);
        return PartNodes.Controller(rig, course, CaseRunner.Run(rig), warmth, 60).CourseTimeToLimitS
            / course.LapS;
    }

    [Theory]
    // 2 − 2/2ⁿ: 1 after a lap, which is the limit.
    [InlineData(2, 2, 0.5, 1)]
    // 1.25 − 1/2ⁿ: 1 after two.
    [InlineData(1, 1.25, 0.5, 2)]
    // 1.2 − 1/2ⁿ: 0.95 after two, 1.075 after three.
    [InlineData(1, 1.2, 0.5, 3)]
    // Past it within the first lap.
    [InlineData(0.5, 2, 0.5, 1)]
    // The limit itself is never passed, nor is anything where nothing decays within ten thousand laps.
    [InlineData(1, 1, 0.5, double.PositiveInfinity)]
    [InlineData(1, 1.5, 1, 10_000)]
    [InlineData(double.NaN, double.NaN, 0.5, double.NaN)]
    public void A_peak_grows_by_what_the_laps_before_have_left(
        double start,
        double peak,
        double decay,
        double laps
    ) => Assert.Equal(laps, Laps(start, peak, decay), 1e-9);
}
