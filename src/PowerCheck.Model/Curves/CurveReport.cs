using PowerCheck.Model.Courses;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Curves;

/// <summary>What pictures of a check show beyond its figures.</summary>
/// <param name="Slope">Currents of the steady climb over the slope.</param>
/// <param name="Course">Temperatures along the course, from cold.</param>
/// <param name="Bands">How wide they lie; null where spread was not asked for or there is no course to show.</param>
public sealed record CurveReport(SlopeCurve Slope, CourseCurve Course, CourseBands? Bands)
{
    /// <summary>The curves of a rig.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="spread">How the spread of its figures is carried; with none there are no bands.</param>
    /// <param name="stop">Tells that nobody waits for them any more.</param>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public static CurveReport Of(
        RigLabel label,
        SpreadMethod spread,
        CancellationToken stop = default
    )
    {
        stop.ThrowIfCancellationRequested();
        var complete = RigCompletion.Of(label);
        var driven = DrivenCourse.Of(complete.Rig, complete.Course);
        var course = CourseCurve.Of(driven, complete.Course);
        return new(
            SlopeCurve.Of(complete.Rig),
            course,
            spread == SpreadMethod.None ? null : CourseBands.Of(label, complete, course, stop)
        );
    }
}
