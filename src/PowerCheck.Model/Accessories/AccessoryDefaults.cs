using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Accessories;

/// <summary>Fills in what is not known of servos, winch and receiver supply (M9).</summary>
public static class AccessoryDefaults
{
    /// <summary>Full voltage of two lithium cells, for which linear supplies are commonly rated [V], assumed.</summary>
    private const double LinearRatedAtV = 8.4;

    /// <summary>The receiver supply and what hangs on it, complete.</summary>
    /// <param name="supply">What the controller's box says of it.</param>
    /// <param name="accessories">What hangs on it; null when not said.</param>
    /// <param name="duty">Share of the time at work; null when not said.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static ReceiverSupply Complete(
        ReceiverSupplyLabel supply,
        IReadOnlyList<AccessoryLabel>? accessories,
        double? duty,
        Ledger ledger
    )
    {
        var regulator = ledger.Word(
            supply.Regulator,
            Path + "regulator",
            Regulator.Switching,
            "assumed: a switching supply"
        );
        var voltage = Figure(
            supply.VoltageV,
            Path + "voltageV",
            Unit.Volt,
            6,
            "assumed: 6 V",
            ledger
        );
        var continuous = Figure(
            supply.ContinuousCurrentA,
            Path + "continuousCurrentA",
            Unit.Ampere,
            3,
            "assumed: 3 A, as small controllers give",
            ledger
        );
        var linear = regulator == Regulator.Linear;
        var (receiver, battery) = Sum(accessories, ledger);
        return new(
            regulator,
            voltage,
            continuous,
            Figure(
                supply.PeakCurrentA,
                Path + "peakCurrentA",
                Unit.Ampere,
                1.5 * continuous,
                "assumed: half more than continuously",
                ledger
            ),
            Figure(supply.DropoutV, Path + "dropoutV", Unit.Volt, 0.5, "assumed: 0.5 V", ledger),
            linear
                ? Figure(
                    supply.MaxHeatW,
                    Path + "maxHeatW",
                    Unit.Watt,
                    Math.Max(0.5, (LinearRatedAtV - voltage) * continuous),
                    "assumed: the heat of its continuous current on two full lithium cells",
                    ledger
                )
                : double.NaN,
            linear
                ? 1
                : Figure(
                    supply.Efficiency,
                    Path + "efficiency",
                    Unit.One,
                    0.85,
                    "assumed: 0.85",
                    ledger
                ),
            Figure(
                supply.ReceiverResetV,
                Path + "receiverResetV",
                Unit.Volt,
                4,
                "assumed: a receiver resets under 4 V",
                ledger
            ),
            receiver,
            battery,
            ledger.Figure(
                duty,
                "course.accessoryDuty",
                Unit.One,
                0.3,
                Spread.Interval(0.1, 0.6),
                "assumed: servos work for three tenths of the time"
            )
        );
    }

    /// <summary>What hangs on a receiver supply where nothing is said: one servo and the radio.</summary>
    public static readonly IReadOnlyList<AccessoryLabel> Usual =
    [
        new() { Kind = AccessoryKind.Servo },
        new() { Kind = AccessoryKind.Radio },
    ];

    private const string Path = "controller.receiverSupply.";

    private static double Figure(
        double? given,
        string path,
        Unit unit,
        double assumed,
        string basis,
        Ledger ledger
    ) => ledger.Figure(given, path, unit, assumed, Spread.Relative(0.4), basis);

    private static (Currents Receiver, Currents Battery) Sum(
        IReadOnlyList<AccessoryLabel>? accessories,
        Ledger ledger
    )
    {
        IReadOnlyList<AccessoryLabel> list =
            accessories ?? [new AccessoryLabel(), new AccessoryLabel()];
        var kinds = accessories is null ? new[] { AccessoryKind.Servo, AccessoryKind.Radio } : null;
        Currents receiver = default;
        Currents battery = default;
        for (var n = 0; n < list.Count; n++)
        {
            var assumed = kinds?[n] ?? AccessoryKind.Other;
            var (supply, currents) = Complete(list[n], assumed, $"accessories.{n}", ledger);
            if (supply == AccessorySupply.Receiver)
            {
                receiver = Add(receiver, currents);
            }
            else
            {
                battery = Add(battery, currents);
            }
        }

        return (receiver, battery);
    }

    private static (AccessorySupply Supply, Currents Currents) Complete(
        AccessoryLabel label,
        AccessoryKind assumed,
        string path,
        Ledger ledger
    )
    {
        var kind = ledger.Word(
            label.Kind,
            $"{path}.kind",
            assumed,
            $"assumed: {Words.Of(assumed)}"
        );
        var supply = ledger.Word(
            label.Supply,
            $"{path}.supply",
            AccessorySupply.Receiver,
            "assumed: fed by the receiver supply"
        );
        var (idle, working, jammed) = Typical(kind);
        return (
            supply,
            new(
                Current(label.IdleCurrentA, $"{path}.idleCurrentA", idle, ledger),
                Current(label.WorkingCurrentA, $"{path}.workingCurrentA", working, ledger),
                Current(label.JammedCurrentA, $"{path}.jammedCurrentA", jammed, ledger)
            )
        );
    }

    private static double Current(double? given, string path, double assumed, Ledger ledger) =>
        ledger.Figure(
            given,
            path,
            Unit.Ampere,
            assumed,
            Spread.Factor(2),
            "assumed: typical of its kind"
        );

    private static (double Idle, double Working, double Jammed) Typical(AccessoryKind kind) =>
        kind switch
        {
            AccessoryKind.Servo => (0.05, 0.8, 2.5),
            AccessoryKind.Winch => (0.05, 2.0, 4.0),
            AccessoryKind.Light => (0.2, 0.2, 0.2),
            AccessoryKind.Fan => (0.2, 0.2, 0.4),
            AccessoryKind.Radio => (0.05, 0.05, 0.05),
            _ => (0.1, 0.2, 0.2),
        };

    private static Currents Add(Currents a, Currents b) =>
        new(a.IdleA + b.IdleA, a.WorkingA + b.WorkingA, a.JammedA + b.JammedA);
}
