using PowerCheck.Model.Controllers;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Shortlists.Wanted;

namespace PowerCheck.Model.Shortlists;

/// <summary>A rig whose sought part can do more than any part, and the figures in which it is then cut down.</summary>
/// <param name="Label">The rig.</param>
/// <param name="Figures">The figures, in the order in which each is settled at what it needs.</param>
internal sealed record OpenPart(RigLabel Label, IReadOnlyList<SoughtFigure> Figures)
{
    private const string Series = "battery.seriesCells";

    /// <summary>The rig with a part left open; what its caller says of the part is kept.</summary>
    /// <param name="part">The part.</param>
    /// <param name="label">The rig as the caller knows it.</param>
    public static OpenPart Of(SoughtPart part, RigLabel label) =>
        part switch
        {
            SoughtPart.Controller => Controller(label),
            SoughtPart.Battery => Battery(label),
            SoughtPart.Motor => Motor(label),
            _ => Pinion(label),
        };

    private static OpenPart Controller(RigLabel label)
    {
        var given = label.Controller;
        var supply = given.ReceiverSupply;
        SoughtFigure[] figures =
        [
            new("controller.maxVoltageV", 5, 60, AtLeast),
            new("controller.continuousCurrentA", 2, 400, AtLeast),
            new("controller.burstCurrentA", 2, 2000, AtLeast),
            new("controller.maxElectricalSpeedRpm", 5000, 1_000_000, AtLeast),
            new("controller.receiverSupply.continuousCurrentA", 0.1, 40, AtLeast),
            new("controller.receiverSupply.peakCurrentA", 0.1, 80, AtLeast),
        ];
        return new(
            label with
            {
                Controller = given with
                {
                    MaxVoltageV = given.MaxVoltageV ?? 60,
                    ContinuousCurrentA = given.ContinuousCurrentA ?? 400,
                    MaxElectricalSpeedRadPerS =
                        given.MaxElectricalSpeedRadPerS
                        ?? (
                            label.Motor.Kind == MotorKind.Brushless
                                ? Unit.Rpm.ToSi(1_000_000)
                                : null
                        ),
                    ReceiverSupply = supply with
                    {
                        Regulator = supply.Regulator ?? Regulator.Switching,
                        ContinuousCurrentA = supply.ContinuousCurrentA ?? 40,
                        PeakCurrentA = supply.PeakCurrentA ?? 80,
                    },
                },
            },
            [.. figures.Where(figure => IsOpen(label, figure))]
        );
    }

    private static OpenPart Battery(RigLabel label)
    {
        var given = label.Battery;
        SoughtFigure[] figures =
        [
            new(Series, 1, 8, Between, Whole: true),
            new("battery.capacityMah", 200, 20_000, AtLeast),
            new("battery.cellResistanceMilliohm", 0.2, 100, AtMost),
            new("battery.continuousC", 1, 200, AtLeast),
            new("battery.burstC", 1, 400, AtLeast),
        ];
        return new(
            label with
            {
                Battery = given with
                {
                    SeriesCells = given.SeriesCells ?? 3,
                    CapacityCoulomb = given.CapacityCoulomb ?? Unit.MilliampereHour.ToSi(20_000),
                    CellResistanceOhm = given.CellResistanceOhm ?? Unit.Milliohm.ToSi(0.2),
                    ContinuousC = given.ContinuousC ?? Unit.CRate.ToSi(200),
                    BurstC = given.BurstC ?? Unit.CRate.ToSi(400),
                },
            },
            [.. figures.Where(figure => IsOpen(label, figure))]
        );
    }

    private static OpenPart Motor(RigLabel label)
    {
        var given = label.Motor;
        SoughtFigure[] figures =
        [
            new("motor.kvRpmPerVolt", 300, 9000, Between),
            new("motor.resistanceMilliohm", 2, 1000, AtMost),
            new("motor.maxVoltageV", 3, 60, AtLeast),
            new("motor.maxSpeedRpm", 2000, 200_000, AtLeast),
            new("motor.continuousCurrentA", 0.5, 200, AtLeast),
        ];
        return new(
            label with
            {
                Motor = given with
                {
                    Kind = given.Kind ?? (label.Controller.MotorKinds is [var only] ? only : null),
                    MassKg = given.MassKg ?? 0.165,
                    SpeedConstantRadPerSPerV =
                        given.SpeedConstantRadPerSPerV ?? Unit.RpmPerVolt.ToSi(2000),
                    MaxVoltageV = given.MaxVoltageV ?? 60,
                    MaxSpeedRadPerS = given.MaxSpeedRadPerS ?? Unit.Rpm.ToSi(200_000),
                    ContinuousCurrentA = given.ContinuousCurrentA ?? 200,
                },
            },
            [.. figures.Where(figure => IsOpen(label, figure))]
        );
    }

    private static OpenPart Pinion(RigLabel label) =>
        new(
            label with
            {
                Vehicle = label.Vehicle with
                {
                    Drivetrain = label.Vehicle.Drivetrain with
                    {
                        PinionTeeth = label.Vehicle.Drivetrain.PinionTeeth ?? 12,
                    },
                },
            },
            [new("vehicle.drivetrain.pinionTeeth", 6, 40, Between, Whole: true)]
        );

    private static bool IsOpen(RigLabel label, SoughtFigure figure) =>
        RigFigures
            .Of(label)
            .Single(other => string.Equals(other.Path, figure.Path, StringComparison.Ordinal))
            .Read(label)
            is null;
}
