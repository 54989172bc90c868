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
                        "openCircuitV",
                        Parts
                            .Battery(
                                new()
                                {
                                    Chemistry = ChemistryOf(check),
                                    SeriesCells = (int)check.Number("seriesCells"),
                                }
                            )
                            .OpenCircuitV(check.Number("charge"))
                    )
                ),
            ["OpenCircuit.CellV"] = check =>
                Of(("openCircuitV", OpenCircuit.CellV(ChemistryOf(check), check.Number("charge")))),
            ["Battery.ShortResistanceOhm"] = Stack,
            ["Battery.DischargeS"] = check =>
                Of(
                    (
                        "hours",
                        Parts
                            .Battery(
                                new()
                                {
                                    CapacityCoulomb = check.Number("capacityAh") * 3600,
                                    RatedS = check.Number("ratedHours") * 3600,
                                    PeukertExponent = check.Number("exponent"),
                                }
                            )
                            .DischargeS(check.Number("currentA")) / 3600
                    )
                ),
        };

    private static Chemistry ChemistryOf(PublishedCheck check) =>
        Enum.Parse<Chemistry>(check.Word("chemistry"), ignoreCase: true);

    private static IReadOnlyDictionary<string, double> Stack(PublishedCheck check)
    {
        var battery = Parts.Battery(
            new()
            {
                SeriesCells = (int)check.Number("seriesCells"),
                ParallelCells = (int)check.Number("parallelCells"),
                CapacityCoulomb = check.Number("capacityAh") * 3600,
                CellResistanceOhm = check.Number("cellMilliohm") / 1000,
                ConnectorOhm = 0,
                TemperatureC = 25,
            }
        );
        return Of(
            ("resistanceMilliohm", battery.ShortResistanceOhm * 1000),
            ("cellCapacityAh", battery.CellCapacityCoulomb / 3600)
        );
    }
}
