using MathNet.Numerics.RootFinding;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Tests.Rigs;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about cells and packs.</summary>
internal static class BatteryRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Battery.OpenCircuitV"] = check =>
                Of(
                    (
                        "openCircuit",
                        Pack(check, new() { SeriesCells = (int)check.Si("seriesCells") })
                            .OpenCircuitV(check.Si("charge"))
                    )
                ),
            ["Battery.FullV"] = check => Of(("full", OneCell(check).FullV)),
            ["Battery.NominalV"] = check => Of(("nominal", OneCell(check).NominalV)),
            ["Battery.Cell"] = check => Of(("cutoff", OneCell(check).Cell.CutoffV)),
            ["OpenCircuit.CellV"] = check =>
                Of(
                    ("openCircuit", CellV(check, check.Si("charge"))),
                    ("overFull", CellV(check, check.Si("charge")) / OneCell(check).FullV)
                ),
            ["OpenCircuit.CellV/fall"] = check =>
                Of(("fall", CellV(check, check.Si("from")) - CellV(check, check.Si("to")))),
            ["OpenCircuit.CellV/charge"] = check =>
                Of(
                    (
                        "charge",
                        Brent.FindRoot(
                            charge => CellV(check, charge) - check.Si("openCircuit"),
                            0,
                            1
                        )
                    )
                ),
            ["OpenCircuit.CellV/mean"] = Mean,
            ["Battery.ShortResistanceOhm"] = Stack,
            ["Battery.DischargeS"] = Discharge,
        };

    public static Battery Pack(PublishedCheck check, BatteryLabel label) =>
        Parts.Battery(label with { Chemistry = ChemistryOf(check) });

    private static Battery OneCell(PublishedCheck check) => Pack(check, new() { SeriesCells = 1 });

    private static Chemistry ChemistryOf(PublishedCheck check) =>
        Enum.Parse<Chemistry>(check.Word("chemistry"), ignoreCase: true);

    private static double CellV(PublishedCheck check, double charge) =>
        OpenCircuit.CellV(ChemistryOf(check), charge);

    // Trapezoids between the document's points.
    private static IReadOnlyDictionary<string, double> Mean(PublishedCheck check)
    {
        var charges = check.List("charge");
        var mean = charges
            .Zip(charges.Skip(1))
            .Sum(x => (x.Second - x.First) * (CellV(check, x.First) + CellV(check, x.Second)) / 2);
        return Of(("openCircuit", mean), ("energy", mean * check.Si("capacity", double.NaN)));
    }

    private static IReadOnlyDictionary<string, double> Stack(PublishedCheck check)
    {
        var battery = Parts.Battery(
            new()
            {
                SeriesCells = (int)check.Si("seriesCells"),
                ParallelCells = (int)check.Si("parallelCells"),
                CapacityCoulomb = check.Si("capacity"),
                CellResistanceOhm = check.Si("cell"),
                ConnectorOhm = 0,
                TemperatureC = 25,
            }
        );
        return Of(
            ("resistance", battery.ShortResistanceOhm),
            ("cellCapacity", battery.CellCapacityCoulomb)
        );
    }

    private static IReadOnlyDictionary<string, double> Discharge(PublishedCheck check)
    {
        var current = check.Si("current");
        var time = Parts
            .Battery(
                new()
                {
                    CapacityCoulomb = check.Si("capacity"),
                    RatedS = check.Si("rated"),
                    PeukertExponent = check.Si("exponent"),
                }
            )
            .DischargeS(current);
        return Of(("time", time), ("charge", current * time));
    }
}
