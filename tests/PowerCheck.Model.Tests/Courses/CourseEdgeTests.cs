using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>A motor over laps at the ends of what is looked at (M8).</summary>
public sealed class CourseEdgeTests
{
    private static MotorCourse Course(
        double runS,
        MotorHeat heat,
        params (Drive Drive, double Seconds)[] lap
    )
    {
        var warmth = new MotorWarmth(Parts.Motor(heat: heat), 25);
        return new(new(warmth, LapWarmth.Periodic(warmth, lap), lap, runS), runS);
    }

    private static MotorTemperature Driven(
        MotorHeat heat,
        IEnumerable<(Drive Drive, double Seconds)> segments
    )
    {
        var warmth = new MotorWarmth(Parts.Motor(heat: heat), 25);
        return segments.Aggregate(
            warmth.Cold,
            (x, s) => s.Drive.Network(warmth, x).Over(s.Seconds).Apply(x)
        );
    }

    private static readonly (Drive, double)[] Lap = [(Drive.Current(10, 0), 30), (Drive.Rest, 20)];

    [Theory]
    // 71 laps of 50 s and 29.9 s of the next, or 72 laps and as much: before the hour and after.
    [InlineData(71, 3579.9)]
    [InlineData(72, double.PositiveInfinity)]
    public void A_limit_in_the_lap_after_the_hour_is_not_looked_for(int laps, double seconds)
    {
        var heavy = Parts.Heat(caseJPerK: 6000);
        var limit = Driven(
            heavy,
            [.. Enumerable.Repeat(Lap, laps).SelectMany(lap => lap), (Drive.Current(10, 0), 29.9)]
        ).WindingC;
        var course = Course(100, Parts.Heat(caseJPerK: 6000, limitC: limit), Lap);

        Assert.Equal(seconds, course.WindingLimit.Seconds, 0.01);
    }

    [Fact]
    public void A_limit_is_reached_within_a_run_of_unknown_length_too()
    {
        var limit = Driven(Parts.Heat(), [Lap[0], Lap[1], (Drive.Current(10, 0), 25)]).WindingC;
        var course = Course(double.NaN, Parts.Heat(limitC: limit), Lap);

        Assert.Equal(75, course.WindingLimit.Seconds, 1e-3);
    }

    [Fact]
    public void A_magnet_past_all_measure_is_lost_at_the_end_of_the_piece()
    {
        // 200 A: 200²·0.05·0.00393/20 less 1/20 are 0.34/s, in 30 s e^10 times the 100 K/s·3 s of the start.
        (Drive, double)[] lap = [(Drive.Current(200, 0), 30), (Drive.Rest, 20)];
        var end = Driven(Parts.Heat(), [lap[0]]);
        var course = Course(500, Parts.Heat(magnetLimitC: 1e9), lap);

        Assert.True(end.WindingC > 1e6);
        Assert.Equal((30, end), course.MagnetLimit);
    }

    [Fact]
    public void A_lap_that_ends_past_400_degrees_is_runaway_though_the_next_begins_with_a_rest()
    {
        (Drive, double)[] lap = [(Drive.Rest, 40), (Drive.Current(60, 0), 48)];
        var end = Driven(Parts.Heat(), lap);
        var rested = Driven(Parts.Heat(), [.. lap, (Drive.Rest, 30)]);

        Assert.True(end.WindingC > 400 && rested.WindingC < 350, $"{end} {rested}");
        Assert.Equal(double.PositiveInfinity, Course(118, Parts.Heat(), lap).End.WindingC);
    }

    [Fact]
    public void A_pack_at_its_limit_has_no_time_left_even_where_it_would_cool()
    {
        var pack = new PackWarmth(SampleRig.Of(SampleRig.Brushless).Battery, 25);

        Assert.Equal(0, pack.TimeToLimit(pack.Battery.LimitC, 0));
    }
}
