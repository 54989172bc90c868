using PowerCheck.Model.Courses;
using PowerCheck.Model.Curves;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Curves;

/// <summary>Temperatures along the course.</summary>
public sealed class CourseCurveTests
{
    private static RigLabel Wanting(double minutes) =>
        SampleRig.Brushless with
        {
            Course = new() { WantedS = minutes * 60 },
        };

    private static CourseCurve Curve(RigLabel label) =>
        CurveReport.Of(label, SpreadMethod.None).Course;

    private static TemperatureReport Temperatures(RigLabel label) =>
        SampleRig.Inspect(label).Result.Temperatures;

    [Theory]
    [InlineData(0.7)]
    [InlineData(20)]
    [InlineData(90)]
    [InlineData(600)]
    public void It_ends_where_the_check_ends(double minutes)
    {
        var curve = Curve(Wanting(minutes));

        Assert.True(curve.Whole);
        Assert.Equal(minutes * 60, curve.EndS);
        AssertEnds(Temperatures(Wanting(minutes)), curve.Points[^1]);
    }

    private static void AssertEnds(TemperatureReport report, CoursePoint end)
    {
        Assert.Equal(report.MotorWinding.CourseEndC, end.WindingC);
        Assert.Equal(report.MotorMagnet.CourseEndC, end.MagnetC);
        Assert.Equal(report.MotorCase.CourseEndC, end.CaseC);
        Assert.Equal(report.Controller.CourseEndC, end.ControllerC, 1e-9);
        Assert.Equal(report.Battery.CourseEndC, end.BatteryC);
    }

    [Fact]
    [Trait("speed", "slow")]
    public void Random_rigs_end_where_their_check_ends()
    {
        var whole = 0;
        for (var n = 1; n <= 120; n++)
        {
            var label = RandomRig.Of(n);
            var curve = Curve(label);
            if (curve.Whole)
            {
                whole++;
                AssertEnds(Temperatures(label), curve.Points[^1]);
            }

            Assert.InRange(curve.Points.Count, 0, 260);
        }

        Assert.InRange(whole, 40, 120);
    }

    [Fact]
    public void It_starts_cold()
    {
        var start = Curve(Wanting(20)).Points[0];

        Assert.Equal(new(0, 25, 25, 25, 25, start.BatteryC), start);
        Assert.Equal(SampleRig.Of(Wanting(20)).Battery.TemperatureC, start.BatteryC);
    }

    [Fact]
    public void Time_rises_and_every_segment_of_the_first_lap_has_its_end()
    {
        double[] times = [.. Curve(Wanting(20)).Points.Select(point => point.Seconds)];

        Assert.All(times.Zip(times.Skip(1)), pair => Assert.True(pair.Second > pair.First));
        Assert.All(new[] { 24.0, 44, 50, 60 }, end => Assert.Contains(end, times));
    }

    // What stands between the points was computed by walking the course again up to there.
    [Fact]
    public void Every_point_is_the_end_of_a_run_of_that_length()
    {
        var curve = Curve(Wanting(20));

        foreach (var point in curve.Points.Where((_, n) => n % 30 == 7))
        {
            var label = Wanting(point.Seconds / 60);
            AssertEnds(Temperatures(label), Curve(label).Points[^1]);
            Assert.Equal(Temperatures(label).Controller.CourseEndC, point.ControllerC, 1e-6);
            Assert.Equal(Temperatures(label).MotorWinding.CourseEndC, point.WindingC, 1e-6);
        }
    }

    [Fact]
    public void A_heavier_rig_is_warmer_all_along()
    {
        var light = Curve(Wanting(20)).Points;
        var heavy = Curve(
            Wanting(20) with
            {
                Vehicle = SampleRig.Brushless.Vehicle with { MassKg = 4.4 },
            }
        ).Points;

        Assert.All(
            light.Zip(heavy).Skip(1),
            pair =>
            {
                Assert.Equal(pair.First.Seconds, pair.Second.Seconds);
                Assert.True(pair.Second.WindingC > pair.First.WindingC);
                Assert.True(pair.Second.ControllerC > pair.First.ControllerC);
                Assert.True(pair.Second.BatteryC > pair.First.BatteryC);
            }
        );
    }

    private static RigLabel Burning { get; } =
        Wanting(30) with
        {
            Vehicle = new()
            {
                MassKg = 9,
                Drivetrain = new() { OverallRatio = 16 },
            },
        };

    [Fact]
    public void A_runaway_ends_at_400_degrees()
    {
        var curve = Curve(Burning);

        Assert.True(curve.Runaway);
        Assert.False(curve.Whole);
        Assert.InRange(curve.EndS, 1, (30 * 60) - 1);
        Assert.Equal(400, curve.Points[^1].WindingC, 1e-6);
        Assert.All(curve.Points.SkipLast(1), point => Assert.InRange(point.WindingC, 25, 400));
        Assert.InRange(curve.Points.Count, 100, 260);
    }

    [Fact]
    public void A_run_of_unknown_length_has_no_curve()
    {
        var curve = Curve(new() { Vehicle = new() { MassKg = 3 } });

        Assert.Equal((0, 0.0, false), (curve.Points.Count, curve.EndS, curve.Runaway));
        Assert.Null(
            CurveReport.Of(new() { Vehicle = new() { MassKg = 3 } }, SpreadMethod.Linear).Bands
        );
    }

    [Fact]
    public void What_never_runs_down_is_shown_for_an_hour()
    {
        var curve = Curve(
            SampleRig.Brushless with
            {
                Course = new()
                {
                    Segments = [new() { DurationS = 30, Kind = SegmentKind.Rest }],
                    AccessoryDuty = 0,
                },
                Controller = SampleRig.Brushless.Controller with { QuiescentCurrentA = 0 },
                Accessories = [],
            }
        );

        Assert.False(curve.Whole);
        Assert.Equal(3600, curve.EndS);
    }

    [Fact]
    public void Many_short_laps_are_shown_by_some_of_them()
    {
        var curve = Curve(
            Wanting(120) with
            {
                Course = new()
                {
                    WantedS = 7200,
                    Segments =
                    [
                        .. Enumerable.Repeat(
                            new SegmentLabel { DurationS = 1, Kind = SegmentKind.Creep },
                            30
                        ),
                    ],
                },
            }
        );

        Assert.True(curve.Whole);
        Assert.InRange(curve.Points.Count, 200, 300);
    }
}
