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
            ["Bus.Feeding/behind"] = Behind,
            ["Bus.VoltageUnderPower"] = UnderPower,
            ["Ripple.MeanSquare"] = PeakToPeak,
            ["Ripple.MeanSquare/resistor"] = OnResistor,
            ["Source.MaxPowerW"] = check => Of(("power", Pack(check).MaxPowerW)),
            ["Controller.RatedHeatW"] = check =>
                Of(
                    (
                        "heat",
                        Parts
                            .Controller(
                                new()
                                {
                                    OnResistanceOhm = 2 * check.Si("device"),
                                    ContinuousCurrentA = check.Si("current"),
                                    HotResistanceFactor = 1,
                                }
                            )
                            .RatedHeatW
                    )
                ),
            ["Bridge.LossW"] = check => Of(("heat", Extra(check, Freewheel.Synchronous))),
            ["Bridge.LossW/diode"] = check => Of(("heat", Extra(check, Freewheel.Diode))),
            ["ReceiverSupply.HeatW"] = Receiver,
        };

    private static Source Pack(PublishedCheck check) =>
        new(check.Si("voltage"), check.Si("resistance"));

    private static IReadOnlyDictionary<string, double> Feeding(PublishedCheck check)
    {
        var bus = Bus.Feeding(
            new(check.Si("voltage"), check.Si("source")),
            Parts.Nothing,
            1,
            check.Si("motor"),
            check.Si("needed")
        );
        return Of(
            ("duty", bus.Duty),
            ("battery", bus.BatteryA),
            ("input", bus.BusV * bus.BatteryA),
            ("equivalent", bus.BusV / bus.BatteryA)
        );
    }

    // A motor that asks for all of the voltage gets what the lead leaves.
    private static IReadOnlyDictionary<string, double> Behind(PublishedCheck check)
    {
        var volt = check.Si("voltage");
        var lead = new Source(volt, check.Si("perLength") * check.Si("length"));
        var bus = Bus.Feeding(lead, Parts.Nothing, 1, check.Si("current"), volt);
        return Of(("drop", volt - bus.BusV));
    }

    private static IReadOnlyDictionary<string, double> AtDuty(PublishedCheck check)
    {
        var (bus, motorA) = Bus.AtDuty(
            new(check.Si("voltage"), check.Si("source")),
            Parts.Nothing,
            1,
            check.Si("duty"),
            check.Si("resistance"),
            0
        );
        return Of(("motor", motorA), ("battery", bus.BatteryA), ("mean", bus.Duty * bus.BusV));
    }

    private static IReadOnlyDictionary<string, double> UnderPower(PublishedCheck check)
    {
        var power = check.Si("power");
        var bus = Bus.VoltageUnderPower(Pack(check), power);
        return Of(("bus", bus), ("current", power / bus), ("noPoint", double.IsNaN(bus) ? 1 : 0));
    }

    // A triangle of that height has a mean square of its square over twelve.
    private static IReadOnlyDictionary<string, double> PeakToPeak(PublishedCheck check)
    {
        var ripple = Ripple.MeanSquare(
            check.Si("voltage"),
            check.Si("duty"),
            check.Si("loop"),
            check.Si("inductance"),
            check.Si("frequency")
        );
        return Of(("peakToPeak", Math.Sqrt(12 * ripple)));
    }

    private static IReadOnlyDictionary<string, double> OnResistor(PublishedCheck check)
    {
        var (volt, duty, r) = (check.Si("voltage"), check.Si("duty"), check.Si("resistance"));
        var (_, mean) = Bus.AtDuty(new(volt, 0), Parts.Nothing, 1, duty, r, 0);
        var ripple = Ripple.MeanSquare(volt, duty, r, 0, check.Si("frequency"));
        var square = (mean * mean) + ripple;
        return Of(("rms", Math.Sqrt(square) * r), ("output", square * r));
    }

    private static double Extra(PublishedCheck check, Freewheel freewheel) =>
        Bridge
            .Of(
                Parts.Controller(
                    new()
                    {
                        ContinuousCurrentA = 60,
                        Freewheel = freewheel,
                        EdgeTimeS = check.Si("edgeTime", 0),
                        PwmFrequencyHz = check.Si("pwmFrequency", 16_000),
                    }
                )
            )
            .LossW(check.Si("motor"), new(check.Si("bus"), check.Si("duty"), 0, 0, true, false));

    private static IReadOnlyDictionary<string, double> Receiver(PublishedCheck check)
    {
        var (bus, current) = (check.Si("bus"), check.Si("outputCurrent"));
        var supply = new ReceiverSupply(
            check.Si("linear") > 0 ? Regulator.Linear : Regulator.Switching,
            check.Si("outputVoltage"),
            3,
            5,
            0.5,
            double.NaN,
            check.Si("efficiency", 1),
            4,
            new(current, current, current),
            default,
            1
        );
        return Of(
            ("heat", supply.HeatW(bus, current)),
            ("bus", supply.Load.CurrentA + (supply.Load.PowerW / bus))
        );
    }
}
