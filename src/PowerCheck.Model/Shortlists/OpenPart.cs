using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Shortlists.Wanted;

namespace PowerCheck.Model.Shortlists;

/// <summary>A rig whose sought part can do more than any part, and the figures in which it is then cut down.</summary>
/// <param name="Label">The rig.</param>
/// <param name="Figures">The figures, in the order in which each is settled at what it needs.</param>
/// <param name="Assumed">What was assumed of the part itself.</param>
internal sealed record OpenPart(
    RigLabel Label,
    IReadOnlyList<SoughtFigure> Figures,
    IReadOnlyList<Assumption> Assumed
)
{
    private const string MotorMass = "motor.massG";

    /// <summary>A motor of which nothing is said is a short can of a common size [kg], assumed.</summary>
    private const double MotorMassKg = 0.165;

    private const string Burst = "controller.burstCurrentA";

    private static readonly SoughtFigure[] Controller =
    [
        new("controller.maxVoltageV", 5, 60, AtLeast),
        new("controller.continuousCurrentA", 2, 400, AtLeast),
        new(Burst, 2, 2000, AtLeast, LeftOut: true),
        // Now that its burst current is not assumed from it any more.
        new("controller.continuousCurrentA", 2, 400, AtLeast, Again: true),
        new("controller.receiverSupply.continuousCurrentA", 0.1, 40, AtLeast),
        new("controller.receiverSupply.peakCurrentA", 0.1, 80, AtLeast),
    ];

    private static readonly SoughtFigure Commutation = new(
        "controller.maxElectricalSpeedRpm",
        5000,
        1_000_000,
        AtLeast
    );

    private static readonly SoughtFigure[] Battery =
    [
        new("battery.seriesCells", 1, 8, Between, Whole: true),
        new("battery.cellResistanceMilliohm", 0.2, 100, AtMost),
        new("battery.capacityMah", 200, 20_000, AtLeast),
        new("battery.continuousC", 1, 200, AtLeast),
        new("battery.burstC", 1, 400, AtLeast),
    ];

    private static readonly SoughtFigure[] Motor =
    [
        new("motor.kvRpmPerVolt", 300, 9000, Between),
        new("motor.resistanceMilliohm", 2, 1000, AtMost, LeftOut: true),
        new("motor.maxVoltageV", 3, 60, AtLeast),
        new("motor.maxSpeedRpm", 2000, 200_000, AtLeast),
        new("motor.continuousCurrentA", 0.5, 200, AtLeast),
    ];

    private static readonly SoughtFigure[] Pinion =
    [
        new("vehicle.drivetrain.pinionTeeth", 6, 40, Between, Whole: true),
    ];

    /// <summary>The rig with a part left open; what its caller says of the part is kept.</summary>
    /// <param name="part">The part.</param>
    /// <param name="label">The rig as the caller knows it.</param>
    public static OpenPart Of(SoughtPart part, RigLabel label) =>
        part switch
        {
            SoughtPart.Controller => Of(
                label,
                label.Motor.Kind == MotorKind.Brushless ? [.. Controller, Commutation] : Controller
            ),
            SoughtPart.Battery => Of(label, Battery),
            SoughtPart.Motor => OfMotor(label),
            _ => Of(label, Pinion),
        };

    /// <summary>What the paths of the part's members begin with.</summary>
    /// <param name="part">The part.</param>
    public static string Prefix(SoughtPart part) =>
        part switch
        {
            SoughtPart.Motor => "motor.",
            SoughtPart.Controller => "controller.",
            SoughtPart.Battery => "battery.",
            _ => Pinion[0].Path,
        };

    private static OpenPart Of(RigLabel label, SoughtFigure[] figures)
    {
        var sought = figures.Where(figure => figure.In(label).Read(label) is null).ToArray();
        var open = sought
            .Where(figure => !figure.Again || Array.Exists(sought, other => other.LeftOut))
            .ToArray();
        return new(open.Aggregate(label, (rig, figure) => figure.Open(rig)), open, []);
    }

    private static OpenPart OfMotor(RigLabel label)
    {
        var motor = label.Motor with
        {
            Kind = label.Motor.Kind ?? (label.Controller.MotorKinds is [var only] ? only : null),
            MassKg = label.Motor.MassKg ?? MotorMassKg,
        };
        return Of(label with { Motor = motor }, Motor) with
        {
            Assumed = label.Motor.MassKg is null
                ?
                [
                    new(
                        MotorMass,
                        MotorMassKg,
                        null,
                        Unit.Gram,
                        Spread.None,
                        "assumed: a short can of a common size",
                        "assumed"
                    ),
                ]
                : [],
        };
    }
}
