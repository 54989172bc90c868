using PowerCheck.Model.Courses;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>A winding in a warm case gets warmer than where it settles before the case has cooled.</summary>
public sealed class OvershootTests
{
    private static readonly Drive Held = Drive.Current(14.77, 0);

    private static MotorWarmth Motor(double limitC) =>
        new(Parts.Motor(heat: Parts.Heat(limitC: limitC)), 25);

    // Where the drive settles, and from there up to where it passes on the way, started in a case as warm as the winding.
    private static (MotorWarmth Warmth, MotorTemperature Start, double FirstS) Case()
    {
        var settled = Motor(1000).Settled(Held);
        var start = MotorTemperature.At(settled.WindingC - 2);
        var limit = settled.WindingC + 2;
        var seconds = Enumerable
            .Range(1, 600)
            .First(s => Motor(1000).After(Held, start, s).WindingC >= limit);
        return (Motor(limit), start, seconds);
    }

    [Fact]
    public void A_limit_above_where_it_settles_is_reached_from_a_warm_case()
    {
        var (warmth, start, first) = Case();

        var (winding, _) = warmth.TimesToLimits(Held, start, warmth.Settled(Held));

        Assert.InRange(winding, first - 1, first);
        Assert.Equal(
            double.PositiveInfinity,
            warmth.TimesToLimits(Held, warmth.Cold, warmth.Settled(Held)).WindingS
        );
    }

    [Fact]
    public void A_locked_winding_is_looked_at_all_the_same()
    {
        var (warmth, start, _) = Case();
        var locked = new LockedWinding(warmth, Held);

        var time = locked.TimeToLimit(start);

        Assert.True(double.IsFinite(time));
        Assert.Equal(warmth.Motor.Heat.WindingLimitC, locked.AfterC(start, time), 1e-3);
    }

    [Fact]
    public void A_case_hotter_than_the_limit_warms_a_winding_without_current_past_it()
    {
        var warmth = Motor(60);
        var start = new MotorTemperature(55, 110);
        var locked = new LockedWinding(warmth, Drive.Rest);

        var time = locked.TimeToLimit(start);

        Assert.True(double.IsFinite(time));
        Assert.Equal(60, locked.AfterC(start, time), 1e-3);
    }

    [Fact]
    public void A_hot_winding_warms_a_cool_case_past_where_it_settles()
    {
        // 300 °C in 20 J/K and 25 °C in 60 J/K would meet at 94 °C, were nothing lost to the air.
        var warmth = new MotorWarmth(Parts.Motor(heat: Parts.Heat(magnetLimitC: 80)), 25);
        var start = new MotorTemperature(300, 25);
        var first = Enumerable
            .Range(1, 100)
            .First(s => warmth.After(Drive.Rest, start, s).CaseC >= 80);

        var (_, magnet) = warmth.TimesToLimits(Drive.Rest, start, warmth.Settled(Drive.Rest));

        Assert.InRange(magnet, first - 1, first);
    }

    [Fact]
    public void A_throttle_that_drives_nothing_leaves_a_locked_winding_as_it_is_for_now()
    {
        var locked = new LockedWinding(Motor(120), Drive.Throttle(_ => new(0, 0), 1.5));

        Assert.Equal(60, locked.AfterC(new(60, 25), 2));
        Assert.Equal(double.PositiveInfinity, locked.TimeToLimit(new(60, 25)));
    }

    [Fact]
    public void A_run_without_end_warms_the_cases_after_it()
    {
        var warmth = Motor(1000);
        var lap = new[] { (Held, 30.0), (Drive.Rest, 30.0) };
        var course = new MotorCourse(
            new(warmth, LapWarmth.Periodic(warmth, lap), lap, double.PositiveInfinity),
            double.PositiveInfinity
        );

        Assert.True(course.End.WindingC > 40);
        Assert.Equal(course.End, course.Warm);
    }
}
