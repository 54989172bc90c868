using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>Which laps of a motor are walked, and how (M8).</summary>
public sealed class LapWalkTests
{
    private static readonly (Drive, double)[] Lap = [(Drive.Current(10, 0), 30), (Drive.Rest, 20)];

    private static MotorWarmth Motor(MotorHeat heat) =>
        new(Parts.Motor(0.004, 0.05, 1, 0.001, heat: heat), 25);

    private static LapWalk Walk(MotorWarmth warmth, (Drive, double)[] lap, double runS) =>
        new(warmth, LapWarmth.Periodic(warmth, lap), lap, runS);

    private static MotorTemperature After(
        MotorWarmth warmth,
        MotorTemperature start,
        params (Drive Drive, double Seconds)[] segments
    ) => segments.Aggregate(start, (x, s) => s.Drive.Network(warmth, x).Over(s.Seconds).Apply(x));

    [Theory]
    [InlineData(100, 72)]
    [InlineData(double.NaN, 72)]
    [InlineData(3649, 72)]
    [InlineData(7200, 144)]
    public void Laps_are_walked_for_an_hour_or_the_run_whichever_is_longer(double runS, int laps)
    {
        var heavy = Motor(Parts.Heat(caseJPerK: 6000));
        var walk = Walk(heavy, Lap, runS);
        var x = heavy.Cold;
        for (var n = 0; n < laps; n++)
        {
            Assert.Equal(x.WindingC, walk.Start(n).WindingC, 1e-6);
            x = After(heavy, x, Lap);
        }

        Assert.Equal(laps + 1, walk.Count);
        Assert.Equal(x.CaseC, walk.Start(laps).CaseC, 1e-6);
        Assert.Equal(walk.Start(laps), walk.Start(laps + 5));
    }

    [Fact]
    public void A_walk_ends_with_the_last_lap_that_changes_the_motor()
    {
        var light = Motor(Parts.Heat(windingJPerK: 2, caseJPerK: 6));
        // A time constant of half a minute or so: e^-1.4 left after each lap, a billionth after 20.
        Assert.InRange(Walk(light, Lap, 7200).Count, 10, 30);
        Assert.Equal(1, Walk(light, [(Drive.Rest, 50)], 7200).Count);
    }

    [Fact]
    public void In_runaway_a_walk_ends_with_the_first_lap_past_400_degrees()
    {
        (Drive, double)[] lap = [(Drive.Current(60, 0), 1), (Drive.Rest, 1)];
        var warmth = Motor(Parts.Heat());
        var walk = Walk(warmth, lap, 7200);
        var (x, laps) = (warmth.Cold, 0);
        for (; x.WindingC <= 400; laps++)
        {
            x = After(warmth, x, lap);
        }

        Assert.True(walk.Lap.Runaway);
        Assert.Equal(laps + 1, walk.Count);
        Assert.Equal(x.WindingC, walk.Start(laps).WindingC, 1e-6);
    }

    [Fact]
    public void Laps_after_the_second_follow_from_a_few_on_the_way_to_the_last()
    {
        var asked = 0;
        double Counted(double windingC, double magnetC)
        {
            asked++;
            return 0;
        }

        var weakening = Motor(Parts.Heat(caseJPerK: 600, beta: -0.002));
        (Drive, double)[] lap = [(Drive.Torque(0.06, 200, Counted), 30), (Drive.Rest, 20)];
        var periodic = LapWarmth.Periodic(weakening, lap);
        asked = 0;
        LapWarmth.From(weakening, lap, periodic.Start);
        var each = asked;
        asked = 0;
        var walk = new LapWalk(weakening, periodic, lap, 0);

        // Two that are driven, and one every 8 K with both ends.
        var way = walk.Start(2).DistanceK(periodic.Start);
        Assert.Equal(73, walk.Count);
        Assert.InRange(way, 40, 100);
        Assert.InRange(asked, 3 * each, (2 + 3 + (way / 8)) * (each + 2));
    }

    [Fact]
    public void A_way_along_which_winding_and_case_change_places_is_walked_too()
    {
        var warmth = Motor(Parts.Heat(caseJPerK: 600));
        var second = After(warmth, After(warmth, warmth.Cold, Lap), Lap);
        var turned = LapWarmth.Periodic(warmth, Lap) with
        {
            Start = new(second.CaseC, second.WindingC),
        };
        var walk = new LapWalk(warmth, turned, Lap, 0);

        Assert.Equal(73, walk.Count);
        // Currents are held: whatever lies around, each lap is the one after the last.
        Assert.Equal(After(warmth, second, Lap).WindingC, walk.Start(3).WindingC, 1e-9);
    }

    [Fact]
    public void Laps_past_the_twenty_thousandth_are_not_walked()
    {
        (Drive, double)[] lap = [(Drive.Current(10, 0), 0.125), (Drive.Rest, 0.125)];
        var heavy = Motor(Parts.Heat(caseJPerK: 60_000));
        var walk = Walk(heavy, lap, 6000);

        Assert.Equal(20_001, walk.Count);
        Assert.True(walk.Start(20_000).WindingC > walk.Start(19_999).WindingC);
        Assert.Equal(walk.Start(20_000), walk.After(5000.1));
        Assert.True(walk.After(4999.9).WindingC > walk.Start(19_999).WindingC);
    }
}
