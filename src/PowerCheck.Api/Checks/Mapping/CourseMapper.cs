using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns the course of a request into the model's label.</summary>
internal static class CourseMapper
{
    public static CourseLabel Map(CourseRequest course) =>
        new()
        {
            AmbientC = course.AmbientC,
            ClimbSlopeRad = Unit.Degree.Of(course.ClimbSlopeDegrees),
            CreepSpeedMPerS = course.CreepSpeedMPerS,
            RollingResistanceCoefficient = course.RollingResistanceCoefficient,
            FrictionCoefficient = course.FrictionCoefficient,
            WantedS = Unit.Minute.Of(course.WantedMinutes),
            JamSlipFactor = course.JamSlipFactor,
            AccessoryDuty = course.AccessoryDuty,
            HoldCreepMPerS = course.HoldCreepMPerS,
            Segments = [.. (course.Segments ?? []).Select(Segment)],
            Judging = Judging(course.Judging ?? new()),
        };

    private static SegmentLabel Segment(SegmentRequest segment) =>
        new()
        {
            DurationS = segment.Seconds!.Value,
            Kind = Word<SegmentKind>.Of(segment.Kind)!.Value,
            SlopeRad = Unit.Degree.Of(segment.SlopeDegrees),
            SpeedMPerS = segment.SpeedMPerS,
            Throttle = segment.Throttle,
        };

    private static JudgingLabel Judging(JudgingRequest judging) =>
        new()
        {
            ClimbS = judging.ClimbSeconds,
            HoldS = judging.HoldSeconds,
            SlipS = judging.SlipSeconds,
            PunchS = judging.PunchSeconds,
            JamS = judging.JamSeconds,
        };
}
