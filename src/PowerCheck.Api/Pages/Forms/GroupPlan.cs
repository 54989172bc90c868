namespace PowerCheck.Api.Pages.Forms;

/// <summary>A group of fields: which members stand in it, and which of them everybody sees.</summary>
/// <param name="Key">Its anchor.</param>
/// <param name="Title">Its title.</param>
/// <param name="Intro">What is asked.</param>
/// <param name="More">What stands a tap away.</param>
/// <param name="Parts">The members of a rig whose fields stand in it.</param>
/// <param name="Open">Those that everybody sees, in their order.</param>
public sealed record GroupPlan(
    string Key,
    string Title,
    string Intro,
    string More,
    IReadOnlyList<string> Parts,
    IReadOnlyList<string> Open
)
{
    /// <summary>The groups in the order in which a builder thinks of them.</summary>
    public static readonly IReadOnlyList<GroupPlan> All =
    [
        new(
            "rig",
            "Rig and gearing",
            "What it weighs and what it rolls on.",
            "More about rig and gearing",
            ["vehicle"],
            [
                "vehicle.massKg",
                "vehicle.tireDiameterMm",
                "vehicle.drivetrain.pinionTeeth",
                "vehicle.drivetrain.spurTeeth",
                "vehicle.drivetrain.transmissionRatio",
                "vehicle.drivetrain.axleRatio",
                "vehicle.drivetrain.overallRatio",
            ]
        ),
        new(
            "motor",
            "Motor",
            "What stands on the can or its box.",
            "More about the motor",
            ["motor"],
            ["motor.kind", "motor.sensored", "motor.kvRpmPerVolt", "motor.massG"]
        ),
        new(
            "controller",
            "Speed controller",
            "What stands on its label.",
            "More about the controller",
            ["controller"],
            ["controller.motorKinds", "controller.maxCells", "controller.continuousCurrentA"]
        ),
        new(
            "battery",
            "Pack",
            "What stands on the pack.",
            "More about the pack",
            ["battery"],
            ["battery.chemistry", "battery.seriesCells", "battery.capacityMah"]
        ),
        new(
            "course",
            "Course",
            "The worst climb, and how long you want to drive.",
            "More about course and day",
            ["course"],
            ["course.climbSlopeDegrees", "course.wantedMinutes"]
        ),
        new(
            "accessories",
            "Servos, winch, lights",
            "What else draws current.",
            "List what draws current",
            ["accessories"],
            []
        ),
        new(
            "wiring",
            "Leads, connector, fuse",
            "From pack to controller to motor.",
            "Give leads, connector and fuse",
            ["wiring"],
            []
        ),
        new(
            "tolerances",
            "How far off the figures are",
            "A share either side: 0.1 is 10 % up or down.",
            "Say how far off figures may be",
            ["tolerances", "id"],
            []
        ),
    ];
}
