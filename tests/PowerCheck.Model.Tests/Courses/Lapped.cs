using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>A rig on its lap that repeats itself, as the course runs it.</summary>
internal sealed record Lapped(
    Rig Rig,
    Course Course,
    SegmentLoad[] Segments,
    MotorWarmth Warmth,
    LapWarmth Periodic,
    LapLoad Lap
)
{
    /// <summary>The motor lap after lap.</summary>
    public LapWalk Walk() =>
        new(Warmth, Periodic, [.. Segments.Select(s => (s.Drive, s.Segment.DurationS))], 0);

    /// <summary>The controller's memory over it.</summary>
    public ControllerWarmth Controller() =>
        ControllerWarmth.Of(Rig, Segments, Walk(), Lap.At(CaseRunner.HalfCharge));

    public static Lapped Of(RigLabel label) => Of(label, static segment => [segment]);

    /// <summary>With each segment in the parts in which a check runs it.</summary>
    public static Lapped InParts(RigLabel label) => Of(label, static segment => segment.Parts());

    private static Lapped Of(RigLabel label, Func<Segment, IEnumerable<Segment>> cut)
    {
        var (rig, course, _) = RigCompletion.Of(label);
        var segments = course
            .Segments.SelectMany(cut)
            .Select(s => SegmentLoad.Of(rig, s))
            .ToArray();
        var warmth = new MotorWarmth(rig.Motor, rig.Road.AmbientC);
        var periodic = LapWarmth.Periodic(
            warmth,
            [.. segments.Select(s => (s.Drive, s.Segment.DurationS))]
        );
        return new(
            rig,
            course,
            segments,
            warmth,
            periodic,
            new LapLoad(rig, segments, warmth, periodic)
        );
    }
}
