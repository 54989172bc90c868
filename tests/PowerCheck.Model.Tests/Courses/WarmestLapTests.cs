using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>From which lap on a controller's load grows no more (M7), and what is told where laps are alike or not known.</summary>
public sealed class WarmestLapTests
{
    private static LapWalk Laps(MotorHeat heat, double currentA, double lapS = 2) =>
        HeldLaps.Of(heat, currentA, lapS / 2, lapS / 2);

    private static LapWalk RunningAway(double limitC = 120) => Laps(Parts.Heat(limitC: limitC), 60);

    [Fact]
    public void A_motor_that_settles_is_warmest_in_the_lap_that_repeats_itself()
    {
        var laps = Laps(Parts.Heat(), 10);

        Assert.False(laps.Lap.Runaway);
        Assert.Equal(laps.Lap.Start, ControllerLoads.Warmest(laps));
    }

    [Fact]
    public void In_runaway_a_motor_is_warmest_at_the_start_of_the_last_lap_that_ends_within_the_limit()
    {
        var sixth = RunningAway().Start(6).WindingC;

        Assert.True(RunningAway().Lap.Runaway && sixth < 120);
        Assert.Equal(RunningAway().Start(5), ControllerLoads.Warmest(RunningAway(sixth)));
        Assert.Equal(RunningAway().Start(5), ControllerLoads.Warmest(RunningAway(sixth + 0.01)));
        Assert.Equal(RunningAway().Start(4), ControllerLoads.Warmest(RunningAway(sixth - 0.01)));
    }

    [Fact]
    public void In_runaway_past_the_limit_at_once_it_is_warmest_cold() =>
        Assert.Equal(MotorTemperature.At(25), ControllerLoads.Warmest(RunningAway(25.1)));

    [Fact]
    public void In_runaway_within_every_limit_it_is_warmest_at_the_start_of_the_last_lap_that_is_walked()
    {
        var laps = RunningAway(1000);

        Assert.True(laps.Start(laps.Count - 1).WindingC > 400);
        Assert.Equal(laps.Start(laps.Count - 2), ControllerLoads.Warmest(laps));
    }

    [Fact]
    public void In_runaway_the_warmest_lap_is_worked_out()
    {
        var laps = Laps(Parts.Heat(caseJPerK: 20), 60, 3);
        var warmest = ControllerLoads.Warmest(laps);
        var loads = HeldLaps.Standing(laps, 7).Laps;

        Assert.True(laps.Lap.Runaway && warmest.WindingC > 80);
        Assert.Equal(Warmed.Through, loads[1].Warmed);
        Assert.Equal(
            HeldLaps.Loads(laps, warmest),
            loads[1].Loads,
            (a, b) => Math.Abs(a - b) < 1e-9
        );
        Assert.Equal(5, loads.Count);
    }

    [Fact]
    public void A_second_lap_as_warm_as_the_one_that_repeats_itself_is_not_told_twice()
    {
        // A time constant of 40 s or so, and half an hour for each lap.
        var loads = HeldLaps.Standing(Laps(Parts.Heat(2, 6), 10, 1800), 7).Laps;

        Assert.Equal(
            [(0, 0), (1, 1), (0.4, 0.4), (0.75, 0.75)],
            loads.Select(lap => (Round(lap.Warmed.Magnet), Round(lap.Warmed.Winding)))
        );
    }

    private static double Round(double share) => Math.Round(share, 6);

    [Fact]
    public void A_motor_of_unknown_mass_has_the_loads_of_the_lap_that_repeats_itself_at_any_time()
    {
        var loads = HeldLaps.Standing(Laps(Parts.Heat(windingJPerK: double.NaN), 10, 50), 7).Laps;
        var each = 7 / HeldLaps.Rig.Controller.RatedHeatW;

        Assert.Equal([Warmed.Not, Warmed.Through], loads.Select(lap => lap.Warmed));
        Assert.All(loads, lap => Assert.Equal([each, each], lap.Loads));
    }
}
