using PowerCheck.Model.Courses;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>
/// The laps whose loads stand for all others (M7): those of a motor whose laps are walked by hand.
/// </summary>
public sealed class ControllerLoadsTests
{
    private static MotorTemperature[] Starts(LapWalk laps)
    {
        var starts = new MotorTemperature[laps.Count];
        starts[0] = laps.Warmth.Cold;
        for (var n = 1; n < starts.Length; n++)
        {
            starts[n] = HeldLaps.Driven(laps, starts[n - 1])[^1];
        }

        return starts;
    }

    private static Warmed Share(MotorTemperature x, MotorTemperature warmest) =>
        new(
            (x.CaseC - 25) / (warmest.CaseC - 25),
            (x.WindingC + x.CaseC - 50) / (warmest.WindingC + warmest.CaseC - 50)
        );

    private static double Off(Warmed one, Warmed other) =>
        Math.Max(Math.Abs(one.Magnet - other.Magnet), Math.Abs(one.Winding - other.Winding));

    private static void Same(LapLoads expected, LapLoads lap)
    {
        Assert.True(Off(expected.Warmed, lap.Warmed) < 1e-6, $"{expected.Warmed} {lap.Warmed}");
        Assert.Equal(expected.Loads, lap.Loads, (a, b) => Math.Abs(a - b) < 1e-6);
    }

    private static MotorTemperature Point(
        MotorTemperature from,
        MotorTemperature to,
        double share
    ) =>
        new(
            ((1 - share) * from.WindingC) + (share * to.WindingC),
            ((1 - share) * from.CaseC) + (share * to.CaseC)
        );

    [Theory]
    // Whether a lap starts near the first point and near the second, and whether the second lap starts too warm already.
    [InlineData(50, 20, 150, 1, 5, true, true, false)]
    [InlineData(120, 20, 600, 1, 5, true, false, false)]
    [InlineData(300, 2, 60, 1, 5, false, false, false)]
    [InlineData(900, 2, 60, 1, 5, false, false, true)]
    // A winding at 0.92 with a case at 0.87.
    [InlineData(500, 20, 400, 5, 0.5, false, false, true)]
    public void Laps_between_start_nearest_to_two_shares_of_the_way_or_just_there(
        double lapS,
        double windingJPerK,
        double caseJPerK,
        double windingToCase,
        double caseToAmbient,
        bool firstNear,
        bool secondNear,
        bool late
    )
    {
        var laps = HeldLaps.Of(
            Parts.Heat(windingJPerK, caseJPerK, windingToCase, caseToAmbient),
            12,
            0.6 * lapS,
            0.4 * lapS
        );
        var warmest = laps.Lap.Start;
        var rated = HeldLaps.Rig.Controller.RatedHeatW;
        var starts = Starts(laps);
        var second = Share(starts[1], warmest);
        Assert.Equal(late, Math.Max(second.Magnet, second.Winding) > 0.9);
        var expected = new List<LapLoads>
        {
            new(new(0, 0), HeldLaps.Loads(laps, laps.Warmth.Cold)),
            // What the lap that repeats itself takes is told, not worked out again.
            new(new(1, 1), [7 / rated, 7 / rated]),
            new(second, HeldLaps.Loads(laps, starts[1])),
        };
        foreach (var (share, near) in ((double, bool)[])[(0.4, firstNear), (0.75, secondNear)])
        {
            var point = Point(late ? laps.Warmth.Cold : starts[1], warmest, share);
            var wanted = Share(point, warmest);
            var nearest = starts.Skip(2).MinBy(x => Off(Share(x, warmest), wanted));
            Assert.Equal(near, Off(Share(nearest, warmest), wanted) < 0.12 * (1 - share));
            var start = near ? nearest : point;
            expected.Add(new(Share(start, warmest), HeldLaps.Loads(laps, start)));
        }

        var loads = HeldLaps.Standing(laps, 7);

        Assert.Equal([(30, false), (20, true)], loads.Segments);
        Assert.Equal(expected.Count, loads.Laps.Count);
        Assert.All(expected.Zip(loads.Laps), pair => Same(pair.First, pair.Second));
    }
}
