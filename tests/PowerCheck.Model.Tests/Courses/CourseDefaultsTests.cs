using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>What is filled in for a course that is not told, or told in part (M4, M8).</summary>
public sealed class CourseDefaultsTests
{
    private static readonly Road Road = CourseDefaults.Road(
        new() { ClimbSlopeRad = 0.8, CreepSpeedMPerS = 0.4 },
        new Ledger()
    );

    private static (Course Course, Assumption[] Listed) Complete(CourseLabel label)
    {
        var ledger = new Ledger();
        var course = CourseDefaults.Course(label, Road, ledger);
        return (
            course,
            [
                .. ledger.Assumptions.Where(a =>
                    a.Path.Contains("segments", StringComparison.Ordinal)
                ),
            ]
        );
    }

    [Fact]
    public void The_default_lap_is_listed_member_by_member()
    {
        var (course, listed) = Complete(new());

        Assert.Equal(60, course.LapS);
        Assert.Equal(
            [
                ("course.segments.0.kind", "creep", double.NaN),
                ("course.segments.0.seconds", null, 24),
                ("course.segments.0.slopeDegrees", null, 0),
                ("course.segments.0.speedMPerS", null, 0.4),
                ("course.segments.1.kind", "creep", double.NaN),
                ("course.segments.1.seconds", null, 20),
                ("course.segments.1.slopeDegrees", null, 0.4),
                ("course.segments.1.speedMPerS", null, 0.4),
                ("course.segments.2.kind", "creep", double.NaN),
                ("course.segments.2.seconds", null, 6),
                ("course.segments.2.slopeDegrees", null, 0.8),
                ("course.segments.2.speedMPerS", null, 0.4),
                ("course.segments.3.kind", "rest", double.NaN),
                ("course.segments.3.seconds", null, 10),
            ],
            listed.Select(a => (a.Path, a.Word, a.Value))
        );
        Assert.Equal(
            [Unit.Second, Unit.Degree, Unit.MetrePerSecond],
            listed.Skip(1).Take(3).Select(a => a.Unit)
        );
    }

    [Theory]
    [InlineData(SegmentKind.Creep, 0, 0.4, "slopeDegrees speedMPerS")]
    [InlineData(SegmentKind.Hold, 0.8, 0, "slopeDegrees")]
    [InlineData(SegmentKind.Rest, 0, 0, "")]
    [InlineData(SegmentKind.Jammed, 0, 0, "")]
    public void A_segment_of_which_only_the_kind_is_told_is_on_the_level_or_held_on_the_steepest_slope(
        SegmentKind kind,
        double slopeRad,
        double speedMPerS,
        string members
    )
    {
        var (course, listed) = Complete(
            new() { Segments = [new() { DurationS = 5, Kind = kind }] }
        );

        Assert.Equal(new Segment(5, kind, slopeRad, speedMPerS, 0), Assert.Single(course.Segments));
        Assert.Equal(
            members.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            listed.Select(a => a.Path["course.segments.0.".Length..])
        );
    }

    [Fact]
    public void A_segment_is_what_is_told_of_it()
    {
        var (course, listed) = Complete(
            new()
            {
                WantedS = 900,
                Segments =
                [
                    new()
                    {
                        DurationS = 5,
                        Kind = SegmentKind.Creep,
                        SlopeRad = -0.2,
                        SpeedMPerS = 0.6,
                    },
                    new()
                    {
                        DurationS = 7,
                        Kind = SegmentKind.Hold,
                        SlopeRad = 0.3,
                    },
                    new()
                    {
                        DurationS = 2,
                        Kind = SegmentKind.Jammed,
                        Throttle = 0.7,
                    },
                ],
            }
        );

        Assert.Equal(
            [
                new(5, SegmentKind.Creep, -0.2, 0.6, 0),
                new(7, SegmentKind.Hold, 0.3, 0, 0),
                new Segment(2, SegmentKind.Jammed, 0, 0, 0.7),
            ],
            course.Segments
        );
        Assert.Empty(listed);
        Assert.Equal((900, 14), (course.WantedS, course.LapS));
        Assert.True(double.IsNaN(Complete(new()).Course.WantedS));
    }
}
