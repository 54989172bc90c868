using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Courses.CourseLabel>;

namespace PowerCheck.Model.Courses;

/// <summary>Every measured figure of the day and the course (M4, M8, M12); what is asked for has no spread.</summary>
public static class CourseFigures
{
    /// <summary>The figures that every course has.</summary>
    public static IEnumerable<LabelFigure<CourseLabel>> All =>
        [
            .. Day,
            .. Judging.Select(figure =>
                figure.In<CourseLabel>(
                    course => course.Judging,
                    (course, judging) => course with { Judging = judging }
                )
            ),
        ];

    private static readonly Figure[] Day =
    [
        new(
            "course.ambientC",
            Unit.Celsius,
            course => course.AmbientC,
            (course, value) => course with { AmbientC = value },
            Spread.None
        ),
        new(
            "course.climbSlopeDegrees",
            Unit.Degree,
            course => course.ClimbSlopeRad,
            (course, value) => course with { ClimbSlopeRad = value },
            Spread.None
        ),
        new(
            "course.creepSpeedMPerS",
            Unit.MetrePerSecond,
            course => course.CreepSpeedMPerS,
            (course, value) => course with { CreepSpeedMPerS = value },
            Spread.None
        ),
        new(
            "course.rollingResistanceCoefficient",
            Unit.One,
            course => course.RollingResistanceCoefficient,
            (course, value) => course with { RollingResistanceCoefficient = value },
            LabelSpreads.Label,
            0,
            1
        ),
        new(
            "course.frictionCoefficient",
            Unit.One,
            course => course.FrictionCoefficient,
            (course, value) => course with { FrictionCoefficient = value },
            LabelSpreads.Label
        ),
        new(
            "course.wantedMinutes",
            Unit.Minute,
            course => course.WantedS,
            (course, value) => course with { WantedS = value },
            Spread.None
        ),
        new(
            "course.jamSlipFactor",
            Unit.One,
            course => course.JamSlipFactor,
            (course, value) => course with { JamSlipFactor = value },
            Spread.None,
            1
        ),
        new(
            "course.accessoryDuty",
            Unit.One,
            course => course.AccessoryDuty,
            (course, value) => course with { AccessoryDuty = value },
            Spread.None,
            0,
            1
        ),
        new(
            "course.holdCreepMPerS",
            Unit.MetrePerSecond,
            course => course.HoldCreepMPerS,
            (course, value) => course with { HoldCreepMPerS = value },
            Spread.None
        ),
    ];

    private static readonly LabelFigure<JudgingLabel>[] Judging =
    [
        new(
            "course.judging.climbSeconds",
            Unit.Second,
            judging => judging.ClimbS,
            (judging, value) => judging with { ClimbS = value },
            Spread.None
        ),
        new(
            "course.judging.holdSeconds",
            Unit.Second,
            judging => judging.HoldS,
            (judging, value) => judging with { HoldS = value },
            Spread.None
        ),
        new(
            "course.judging.slipSeconds",
            Unit.Second,
            judging => judging.SlipS,
            (judging, value) => judging with { SlipS = value },
            Spread.None
        ),
        new(
            "course.judging.punchSeconds",
            Unit.Second,
            judging => judging.PunchS,
            (judging, value) => judging with { PunchS = value },
            Spread.None
        ),
        new(
            "course.judging.jamSeconds",
            Unit.Second,
            judging => judging.JamS,
            (judging, value) => judging with { JamS = value },
            Spread.None
        ),
    ];

    /// <summary>The figures of a segment.</summary>
    /// <param name="n">Its place in the lap, from 0.</param>
    public static IEnumerable<LabelFigure<CourseLabel>> Segment(int n) =>
        SegmentOf($"course.segments.{n}.")
            .Select(figure =>
                figure.In<CourseLabel>(
                    course => course.Segments[n],
                    (course, segment) =>
                        course with
                        {
                            Segments =
                            [
                                .. course.Segments.Select((old, at) => at == n ? segment : old),
                            ],
                        }
                )
            );

    private static IEnumerable<LabelFigure<SegmentLabel>> SegmentOf(string path) =>
        [
            new(
                $"{path}seconds",
                Unit.Second,
                segment => segment.DurationS,
                (segment, value) => segment with { DurationS = value },
                Spread.None
            ),
            new(
                $"{path}slopeDegrees",
                Unit.Degree,
                segment => segment.SlopeRad,
                (segment, value) => segment with { SlopeRad = value },
                Spread.None
            ),
            new(
                $"{path}speedMPerS",
                Unit.MetrePerSecond,
                segment => segment.SpeedMPerS,
                (segment, value) => segment with { SpeedMPerS = value },
                Spread.None
            ),
            new(
                $"{path}throttle",
                Unit.One,
                segment => segment.Throttle,
                (segment, value) => segment with { Throttle = value },
                Spread.None
            ),
        ];
}
