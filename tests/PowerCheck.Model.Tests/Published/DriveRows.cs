using PowerCheck.Model.Accessories;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about controller, bus and receiver supply.</summary>
internal static class DriveRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Bus.Feeding"] = Feeding,
            ["Bus.AtDuty/duty"] = AtDuty,
            ["Bus.VoltageUnderPower"] = UnderPower,
            ["Source.MaxPowerW"] = check => Of(("powerW", Pack(check).MaxPowerW)),
            ["Controller.RatedHeatW"] = check =>
                Of(
                    (
                        "heatW",
                        Parts
                            .Controller(
                                new()
                                {
                                    OnResistanceOhm = check.Number("onResistanceOhm"),
                                    ContinuousCurrentA = check.Number("currentA"),
                                    HotResistanceFactor = 1,
                                }
                            )
                            .RatedHeatW
                    )
                ),
            ["Bridge.LossW"] = check => Of(("heatW", Extra(check, Freewheel.Synchronous))),
            ["Bridge.LossW/diode"] = check => Of(("heatW", Extra(check, Freewheel.Diode))),
            ["ReceiverSupply.HeatW"] = Receiver,
        };

    private static Source Pack(PublishedCheck check) =>
        new(check.Number("voltageV"), check.Number("resistanceOhm"));

    private static IReadOnlyDictionary<string, double> Feeding(PublishedCheck check)
    {
        var bus = Bus.Feeding(
            new(check.Number("voltageV"), check.Number("sourceOhm")),
            Parts.Nothing,
            1,
            check.Number("motorA"),
            check.Number("neededV")
        );
        return Of(
            ("duty", bus.Duty),
            ("batteryA", bus.BatteryA),
            ("inputW", bus.BusV * bus.BatteryA)
        );
    }

    private static IReadOnlyDictionary<string, double> AtDuty(PublishedCheck check)
    {
        var (bus, motorA) = Bus.AtDuty(
            new(check.Number("voltageV"), check.Number("sourceOhm")),
            Parts.Nothing,
            1,
            check.Number("duty"),
            check.Number("resistanceOhm"),
            0
        );
        return Of(("motorA", motorA), ("batteryA", bus.BatteryA), ("meanV", bus.Duty * bus.BusV));
    }

    private static IReadOnlyDictionary<string, double> UnderPower(PublishedCheck check)
    {
        var power = check.Number("powerW");
        var bus = Bus.VoltageUnderPower(Pack(check), power);
        return Of(("busV", bus), ("currentA", power / bus), ("noPoint", double.IsNaN(bus) ? 1 : 0));
    }

    private static double Extra(PublishedCheck check, Freewheel freewheel) =>
        Bridge
            .Of(
                Parts.Controller(
                    new()
                    {
                        ContinuousCurrentA = 60,
                        Freewheel = freewheel,
                        EdgeTimeS = check.Number("edgeTimeNs", 0) * 1e-9,
                        PwmFrequencyHz = check.Number("pwmFrequencyHz", 16_000),
                    }
                )
            )
            .LossW(
                check.Number("motorA"),
                new(check.Number("busV"), check.Number("duty"), 0, 0, true, false)
            );

    private static IReadOnlyDictionary<string, double> Receiver(PublishedCheck check)
    {
        var (bus, current) = (check.Number("busV"), check.Number("outputA"));
        var supply = new ReceiverSupply(
            check.Number("linear") > 0 ? Regulator.Linear : Regulator.Switching,
            check.Number("outputV"),
            3,
            5,
            0.5,
            double.NaN,
            check.Number("efficiency", 1),
            4,
            new(current, current, current),
            default,
            1
        );
        return Of(
            ("heatW", supply.HeatW(bus, current)),
            ("busA", supply.Load.CurrentA + (supply.Load.PowerW / bus))
        );
    }
}
