using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Model.Courses;

/// <summary>Fills in what is not known of the day and the course (M4, M8, M11).</summary>
public static class CourseDefaults
{
    /// <summary>The road, complete.</summary>
    /// <param name="label">What is known.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static Road Road(CourseLabel label, Ledger ledger) =>
        new(
            ledger.Figure(
                label.AmbientC,
                "course.ambientC",
                Unit.Celsius,
                25,
                Spread.Absolute(8),
                "assumed: a mild day"
            ),
            ledger.Figure(
                label.ClimbSlopeRad,
                "course.climbSlopeDegrees",
                Unit.Degree,
                Unit.Degree.ToSi(45),
                Spread.None,
                "assumed: 45° is the steepest to climb"
            ),
            ledger.Figure(
                label.CreepSpeedMPerS,
                "course.creepSpeedMPerS",
                Unit.MetrePerSecond,
                0.3,
                Spread.Relative(0.3),
                "assumed: a slow walk"
            ),
            ledger.Figure(
                label.RollingResistanceCoefficient,
                "course.rollingResistanceCoefficient",
                Unit.One,
                0.06,
                Spread.Relative(0.5),
                "assumed: soft, foam-filled tires on rock; no published figure"
            ),
            ledger.Figure(
                label.FrictionCoefficient,
                "course.frictionCoefficient",
                Unit.One,
                1.2,
                Spread.Relative(0.25),
                "assumed: soft rubber on rock; no published figure"
            ),
            ledger.Figure(
                label.JamSlipFactor,
                "course.jamSlipFactor",
                Unit.One,
                2,
                Spread.Interval(1.2, 4),
                "assumed: a driver eases off at twice the current that slips the tires"
            ),
            ledger.Figure(
                label.HoldCreepMPerS,
                "course.holdCreepMPerS",
                Unit.MetrePerSecond,
                0.1,
                Spread.Factor(1.5),
                "assumed: slower than this, a rig counts as holding"
            )
        );

    /// <summary>The course, complete.</summary>
    /// <param name="label">What is known.</param>
    /// <param name="road">The road.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static Course Course(CourseLabel label, Road road, Ledger ledger) =>
        new(
            Segments(label.Segments, road, ledger),
            label.WantedS ?? double.NaN,
            Judging(label.Judging, ledger)
        );

    private static Segment[] Segments(IReadOnlyList<SegmentLabel> given, Road road, Ledger ledger)
    {
        if (given.Count > 0)
        {
            return [.. given.Select((segment, n) => Complete(segment, n, road, ledger))];
        }

        Segment[] lap =
        [
            new(24, SegmentKind.Creep, 0, road.CreepMPerS, 0),
            new(20, SegmentKind.Creep, road.SlopeRad / 2, road.CreepMPerS, 0),
            new(6, SegmentKind.Creep, road.SlopeRad, road.CreepMPerS, 0),
            new(10, SegmentKind.Rest, 0, 0, 0),
        ];
        for (var n = 0; n < lap.Length; n++)
        {
            List(lap[n], DefaultPaths[n], ledger);
        }

        return lap;
    }

    private static readonly SegmentPaths[] DefaultPaths =
    [
        new("course.segments.0"),
        new("course.segments.1"),
        new("course.segments.2"),
        new("course.segments.3"),
    ];

    // The default lap is listed member by member, so that each can be given instead.
    private static void List(Segment segment, SegmentPaths paths, Ledger ledger)
    {
        const string Basis =
            "assumed lap: 24 s creep on the level, 20 s at half the slope, 6 s at the slope, 10 s rest";
        ledger.Word<SegmentKind>(null, paths.Kind, segment.Kind, Basis);
        ledger.Figure(
            null,
            paths.Seconds,
            Unit.Second,
            segment.DurationS,
            Spread.Relative(0.3),
            Basis
        );
        if (segment.Kind == SegmentKind.Creep)
        {
            ledger.Figure(
                null,
                paths.SlopeDegrees,
                Unit.Degree,
                segment.SlopeRad,
                Spread.None,
                Basis
            );
            ledger.Figure(
                null,
                paths.SpeedMPerS,
                Unit.MetrePerSecond,
                segment.SpeedMPerS,
                Spread.None,
                FollowsCreep
            );
        }
    }

    // Whoever draws rigs from what is printed draws the creep speed alone.
    private const string FollowsCreep = "assumed: the creep speed, which it follows";

    private static Segment Complete(SegmentLabel label, int n, Road road, Ledger ledger)
    {
        var paths = new SegmentPaths($"course.segments.{n}");
        var onSlope = label.Kind is SegmentKind.Creep or SegmentKind.Hold;
        return new(
            label.DurationS,
            label.Kind,
            onSlope
                ? ledger.Figure(
                    label.SlopeRad,
                    paths.SlopeDegrees,
                    Unit.Degree,
                    label.Kind == SegmentKind.Hold ? road.SlopeRad : 0,
                    Spread.None,
                    "assumed: creep on the level, hold on the steepest slope"
                )
                : 0,
            label.Kind == SegmentKind.Creep
                ? ledger.Figure(
                    label.SpeedMPerS,
                    paths.SpeedMPerS,
                    Unit.MetrePerSecond,
                    road.CreepMPerS,
                    Spread.None,
                    FollowsCreep
                )
                : 0,
            label.Throttle ?? 0
        );
    }

    private static Judging Judging(JudgingLabel label, Ledger ledger) =>
        new(
            Seconds(label.ClimbS, "course.judging.climbSeconds", 60, ledger),
            Seconds(label.HoldS, "course.judging.holdSeconds", 30, ledger),
            Seconds(label.SlipS, "course.judging.slipSeconds", 3, ledger),
            Seconds(label.PunchS, "course.judging.punchSeconds", 3, ledger),
            Seconds(label.JamS, "course.judging.jamSeconds", 2, ledger)
        );

    private static double Seconds(double? given, string path, double assumed, Ledger ledger) =>
        ledger.Figure(
            given,
            path,
            Unit.Second,
            assumed,
            Spread.None,
            "assumed: how long such a moment lasts"
        );

    /// <summary>The members of a segment.</summary>
    private sealed class SegmentPaths(string path)
    {
        public string Kind { get; } = path + ".kind";

        public string Seconds { get; } = path + ".seconds";

        public string SlopeDegrees { get; } = path + ".slopeDegrees";

        public string SpeedMPerS { get; } = path + ".speedMPerS";
    }
}
