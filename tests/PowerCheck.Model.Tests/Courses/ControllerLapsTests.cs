using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>When a controller's growing level reaches its limit lap after lap (M7), by hand.</summary>
public sealed class ControllerLapsTests
{
    private const double TauS = 60;

    // A lap of 60 s under load and 60 s of rest, half of the level left after each.
    private static ControllerWarmth Warmth(
        double cold,
        double half,
        double warm,
        Func<double, Warmed>? warmed = null
    ) =>
        new(
            new ThermalMemory(TauS / Math.Log(2), 1),
            new(
                [(60, false), (60, false)],
                [
                    new(Warmed.Not, [cold, 0]),
                    new(new(0.5, 0.5), [half, 0]),
                    new(Warmed.Through, [warm, 0]),
                ]
            ),
            warmed ?? (_ => Warmed.Through),
            3600,
            25,
            75
        );

    private static double Seconds(ControllerWarmth warmth, double runS = 60)
    {
        var (rig, course, _) = RigCompletion.Of(SampleRig.Brushless);
        return PartNodes
            .Controller(rig, course, CaseRunner.Run(rig), warmth, runS)
            .CourseTimeToLimitS;
    }

    [Theory]
    // Half of 4 after a minute; 1 after that share of it: 60·log₂(4/3).
    [InlineData(4, 24.90224995673063)]
    // 0.9 after the first minute, 0.45 before the next: 60·log₂((1.8 − 0.45)/0.8) in it.
    [InlineData(1.8, 165.29325012980813)]
    // 2/3 of the load at most in the end: never.
    [InlineData(1.49, double.PositiveInfinity)]
    [InlineData(1, double.PositiveInfinity)]
    [InlineData(double.NaN, double.NaN)]
    public void A_level_grows_by_what_the_laps_before_have_left(double load, double seconds) =>
        Assert.Equal(seconds, Seconds(Warmth(load, load, load)), 1e-9);

    [Fact]
    public void A_cold_lap_that_takes_more_may_be_the_highest()
    {
        // A cold winding lets 3 through, a warm one 1: half of 3 after the first minute.
        var warmth = Warmth(3, 2, 1, lap => new(Math.Min(1, lap), 0));
        Assert.Equal((0.75, 1.5), warmth.Over(120));
        Assert.Equal(60 * Math.Log2(3 / 2.0), Seconds(warmth, 120), 1e-9);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.25, 1.75)]
    [InlineData(0.5, 2)]
    [InlineData(1, 1)]
    public void Loads_follow_magnet_or_winding_along_the_parabola_through_the_three_laps(
        double warmed,
        double load
    )
    {
        // 1 + 4s − 4s².
        var loads = new ControllerLoads(
            [(60, false), (30, true)],
            [new(Warmed.Not, [1, 1]), new(new(0.5, 0.5), [2, 2]), new(Warmed.Through, [1, 1])]
        );
        Assert.Equal([(60, load), (30, 1)], loads.At(new(warmed, 0)));
        Assert.Equal([(60, 1), (30, load)], loads.At(new(0, warmed)));
    }

    [Fact]
    public void A_run_of_very_many_laps_ends_as_the_lap_that_repeats_itself_does()
    {
        var warmth = Warmth(1.2, 1.2, 1.2);
        // x = (x/2 + 0.6)/2 at the start of a lap.
        Assert.Equal(0.4, warmth.StartLevel, 1e-12);
        Assert.Equal(0.8, warmth.PeakLevel, 1e-12);
        Assert.Equal(0.4, warmth.Over(120e9).End, 1e-9);
        Assert.Equal(0.8, warmth.Over(120e9 + 60).End, 1e-6);
    }
}
