namespace PowerCheck.Api.Pages.Forms;

/// <summary>Names of the fields of the course and of what else draws current.</summary>
internal static class CourseLabels
{
    public static readonly IReadOnlyDictionary<string, Label> All = new Dictionary<string, Label>(
        StringComparer.Ordinal
    )
    {
        ["course.ambientC"] = new("Air temperature"),
        ["course.climbSlopeDegrees"] = new("Steepest slope to climb"),
        ["course.creepSpeedMPerS"] = new("Creep speed"),
        ["course.rollingResistanceCoefficient"] = new("Rolling resistance", "Over the weight."),
        ["course.frictionCoefficient"] = new(
            "Grip of the tires",
            "Friction over the weight; 1.2 is soft rubber on rock."
        ),
        ["course.wantedMinutes"] = new("Minutes wanted on one charge"),
        ["course.jamSlipFactor"] = new("Throttle into a wedge", "Times the current that slips."),
        ["course.accessoryDuty"] = new("Servos and winch work", "Share of the time."),
        ["course.holdCreepMPerS"] = new("Counts as holding, up to"),
        ["course.segments"] = new("Your lap, piece by piece", "It is repeated."),
        ["course.segments.0.seconds"] = new("Lasts"),
        ["course.segments.0.kind"] = new("What happens"),
        ["course.segments.0.slopeDegrees"] = new("Slope", "Below zero downhill."),
        ["course.segments.0.speedMPerS"] = new("Speed"),
        ["course.segments.0.throttle"] = new("Throttle when wedged", "A share."),
        ["course.judging"] = new("How long each moment is judged"),
        ["course.judging.climbSeconds"] = new("Climbing"),
        ["course.judging.holdSeconds"] = new("Standing on the slope"),
        ["course.judging.slipSeconds"] = new("Tires slipping"),
        ["course.judging.punchSeconds"] = new("Full throttle"),
        ["course.judging.jamSeconds"] = new("Wheel wedged"),
        ["accessories"] = new("Servos, winch, lights"),
        ["accessories.0.name"] = new("Name", "For you; not used."),
        ["accessories.0.kind"] = new("What it is"),
        ["accessories.0.supply"] = new("Fed by"),
        ["accessories.0.idleCurrentA"] = new("At rest"),
        ["accessories.0.workingCurrentA"] = new("At work"),
        ["accessories.0.jammedCurrentA"] = new("Jammed"),
    };
}
