using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>A motor over laps of 30 s of current and 20 s of rest (M8), against walking through them.</summary>
public sealed class MotorCourseTests
{
    private static MotorCourse Course(
        double runS,
        double currentA = 10,
        MotorHeat? heat = null,
        bool magnetAtCase = true
    )
    {
        var warmth = new MotorWarmth(
            Parts.Motor(heat: heat ?? Parts.Heat(), magnetAtCase: magnetAtCase),
            25
        );
        (Drive, double)[] lap = [(Drive.Current(currentA, 0), 30), (Drive.Rest, 20)];
        return new(new(warmth, LapWarmth.Periodic(warmth, lap), lap, runS), runS);
    }

    /// <summary>Temperatures after a time, in steps of at most a second.</summary>
    private static MotorTemperature Walked(
        MotorCourse course,
        double seconds,
        Func<MotorTemperature, bool>? until = null
    )
    {
        var x = course.Warmth.Cold;
        for (var t = 0.0; t < seconds && until?.Invoke(x) != true; )
        {
            var step = Math.Min(1, seconds - t);
            var drive = course.Laps.Segments[t % 50 < 30 ? 0 : 1].Drive;
            x = drive.Network(course.Warmth, x).Over(step).Apply(x);
            t += step;
        }

        return x;
    }

    [Theory]
    [InlineData(10)]
    [InlineData(35)]
    [InlineData(50)]
    [InlineData(190)]
    [InlineData(1000)]
    public void A_run_ends_where_walking_through_it_leads(double runS)
    {
        var course = Course(runS);
        var walked = Walked(course, runS);

        Assert.Equal(walked.WindingC, course.End.WindingC, 1e-6);
        Assert.Equal(walked.CaseC, course.End.CaseC, 1e-6);
    }

    [Fact]
    public void A_run_past_all_measure_or_of_unknown_length_ends_at_the_lap_that_repeats_itself()
    {
        var course = Course(1e9);

        Assert.Equal(course.Lap.Start.WindingC, course.End.WindingC, 1e-6);
        Assert.Equal(course.Lap.Start, Course(double.NaN).End);
    }

    [Theory]
    [InlineData(29.5)]
    [InlineData(79.9)]
    [InlineData(179.9)]
    public void A_limit_is_reached_when_the_winding_first_is_as_warm(double seconds)
    {
        var limit = Walked(Course(seconds), seconds).WindingC;
        var course = Course(400, heat: Parts.Heat(limitC: limit));

        Assert.Equal(seconds, course.WindingLimit.Seconds, 1e-3);
        Assert.Equal(limit, course.WindingLimit.At.WindingC, 1e-6);
        Assert.Equal(course.WindingLimit.At, course.Warm);
        // A run that ends before is warm as it ends.
        var shorter = Course(seconds - 1, heat: Parts.Heat(limitC: limit));
        Assert.Equal(seconds, shorter.WindingLimit.Seconds, 1e-3);
        Assert.Equal(shorter.End, shorter.Warm);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_magnet_reaches_its_limit_with_the_case_or_midway_to_the_winding(bool atCase)
    {
        double Magnet(MotorTemperature x) => atCase ? x.CaseC : (x.CaseC + x.WindingC) / 2;
        var limit = Magnet(Walked(Course(129.9), 129.9));
        var course = Course(400, heat: Parts.Heat(magnetLimitC: limit), magnetAtCase: atCase);

        var before = Walked(course, course.MagnetLimit.Seconds - 0.01);
        Assert.Equal(limit, Magnet(course.MagnetLimit.At), 1e-6);
        Assert.InRange(course.MagnetLimit.Seconds, 30, 129.9 + 1e-3);
        Assert.True(Magnet(before) < limit);
    }

    [Fact]
    public void A_limit_above_the_warmest_lap_is_never_reached_and_one_under_the_air_at_once()
    {
        var peak = Course(400).Lap.PeakWindingC;

        Assert.Equal(
            double.PositiveInfinity,
            Course(400, heat: Parts.Heat(limitC: peak + 0.01)).WindingLimit.Seconds
        );
        Assert.Equal(0, Course(400, heat: Parts.Heat(limitC: 20)).WindingLimit.Seconds);
    }

    [Fact]
    public void A_heavy_motor_is_looked_at_for_an_hour_or_the_run_whichever_is_longer()
    {
        var limit = Walked(Course(1, heat: Parts.Heat(caseJPerK: 6000)), 5029.9).WindingC;
        var heavy = Parts.Heat(caseJPerK: 6000, limitC: limit);

        Assert.Equal(5029.9, Course(6000, heat: heavy).WindingLimit.Seconds, 1.0);
        Assert.Equal(double.PositiveInfinity, Course(100, heat: heavy).WindingLimit.Seconds);
        Assert.Equal(double.PositiveInfinity, Course(double.NaN, heat: heavy).WindingLimit.Seconds);
    }

    [Fact]
    public void In_runaway_a_short_run_ends_hot_and_a_long_one_without_end()
    {
        // 60 A are far past √(1/(α·R·(R_wc + R_ca))) = 29 A even for three fifths of the time.
        var brief = Course(8, currentA: 60);
        var walked = Walked(brief, 8);

        Assert.True(brief.Lap.Runaway);
        Assert.Equal(walked.WindingC, brief.End.WindingC, 1e-6);
        Assert.Equal(double.PositiveInfinity, Course(500, currentA: 60).End.WindingC);
        Assert.True(double.IsNaN(Course(double.NaN, currentA: 60).End.WindingC));
        // Driven on only as far as the limit.
        Assert.Equal(120, Course(500, currentA: 60).Warm.WindingC, 1e-6);
    }

    [Fact]
    public void A_motor_of_unknown_mass_has_no_time_to_a_limit()
    {
        var course = Course(100, heat: Parts.Heat(windingJPerK: double.NaN));

        Assert.True(double.IsNaN(course.WindingLimit.Seconds));
        Assert.True(double.IsNaN(course.MagnetLimit.Seconds));
    }

    // A magnet that weakens by much: the current of each lap is another one until the motor has settled.
    private static (MotorWarmth Warmth, (Drive, double)[] Lap) Weakening()
    {
        var warmth = new MotorWarmth(
            Parts.Motor(0.004, 0.05, 1, 0.001, heat: Parts.Heat(beta: -0.002)),
            25
        );
        return (warmth, [(Drive.Torque(0.06, 200), 30), (Drive.Rest, 20)]);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(170)]
    [InlineData(900)]
    [InlineData(6030)]
    public void Each_lap_has_the_currents_of_its_own_warmth(double runS)
    {
        var (warmth, lap) = Weakening();
        var x = warmth.Cold;
        for (var left = runS; left > 0; left -= 50)
        {
            x = warmth.After(lap[0].Item1, x, Math.Min(30, left));
            x = warmth.After(Drive.Rest, x, Math.Clamp(left - 30, 0, 20));
        }

        var end = new MotorCourse(
            new(warmth, LapWarmth.Periodic(warmth, lap), lap, runS),
            runS
        ).End;

        Assert.True(x.WindingC > (runS < 100 ? 30 : 45));
        Assert.Equal(x.WindingC, end.WindingC, 0.02);
        Assert.Equal(x.CaseC, end.CaseC, 0.02);
    }
}
