using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Courses;

namespace PowerCheck.Model.Rigs;

/// <summary>A rig with what was assumed for it put in its place, so that single figures can be moved.</summary>
public static class RigFill
{
    /// <summary>
    /// The rig as its caller would say it who gave what was assumed: completed, it is the same rig. What follows another
    /// figure is left out and goes on following it.
    /// </summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="complete">The same, completed.</param>
    public static RigLabel Of(RigLabel label, RigCompletion complete)
    {
        var assumed = complete.Ledger.Assumptions.ToDictionary(a => a.Path, StringComparer.Ordinal);
        var filled = Lists(label, complete, assumed);
        foreach (var figure in RigFigures.Of(filled))
        {
            if (assumed.TryGetValue(figure.Path, out var a) && a.Spread != Spread.None)
            {
                filled = figure.Write(filled, a.Value);
            }
        }

        return filled;
    }

    // Lists that were left out, written out so that their figures have a place.
    private static RigLabel Lists(
        RigLabel label,
        RigCompletion complete,
        Dictionary<string, Assumption> assumed
    )
    {
        var filled = label with
        {
            Accessories = label.Accessories ?? AccessoryDefaults.Usual,
            Course = label.Course with { Segments = Segments(label.Course, complete.Course) },
        };
        return
            label.Motor.NoLoadPoints.Count == 0
            && assumed.TryGetValue("motor.noLoadPoints.0.currentA", out var noLoad)
            ? filled with
            {
                Motor = label.Motor with { NoLoadPoints = [new(null, noLoad.Value)] },
            }
            : filled;
    }

    private static IReadOnlyList<SegmentLabel> Segments(CourseLabel label, Course course) =>
        label.Segments.Count > 0
            ? label.Segments
            :
            [
                .. course.Segments.Select(segment => new SegmentLabel
                {
                    DurationS = segment.DurationS,
                    Kind = segment.Kind,
                    SlopeRad = segment.SlopeRad,
                }),
            ];
}
