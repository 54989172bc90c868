using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Batteries.BatteryLabel>;

namespace PowerCheck.Model.Batteries;

/// <summary>Every measured or printed figure of a pack (M2, M12); cells are counted and have no spread.</summary>
public static class BatteryFigures
{
    /// <summary>The figures.</summary>
    public static IReadOnlyList<LabelFigure<BatteryLabel>> All => [.. Electrical, .. Heat];

    private static readonly Figure[] Electrical =
    [
        new(
            "battery.seriesCells",
            Unit.Cells,
            pack => pack.SeriesCells,
            (pack, value) => pack with { SeriesCells = Math.Max(1, (int)Math.Round(value)) },
            Spread.None,
            1
        ),
        new(
            "battery.capacityMah",
            Unit.MilliampereHour,
            pack => pack.CapacityCoulomb,
            (pack, value) => pack with { CapacityCoulomb = value },
            LabelSpreads.Held
        ),
        new(
            "battery.continuousC",
            Unit.CRate,
            pack => pack.ContinuousC,
            (pack, value) => pack with { ContinuousC = value },
            LabelSpreads.Ampere
        ),
        new(
            "battery.burstC",
            Unit.CRate,
            pack => pack.BurstC,
            (pack, value) => pack with { BurstC = value },
            LabelSpreads.Ampere
        ),
        new(
            "battery.burstSeconds",
            Unit.Second,
            pack => pack.BurstS,
            (pack, value) => pack with { BurstS = value },
            Spread.None
        ),
        new(
            "battery.cellResistanceMilliohm",
            Unit.Milliohm,
            pack => pack.CellResistanceOhm,
            (pack, value) => pack with { CellResistanceOhm = value },
            LabelSpreads.Label
        ),
        new(
            "battery.connectorMilliohm",
            Unit.Milliohm,
            pack => pack.ConnectorOhm,
            (pack, value) => pack with { ConnectorOhm = value },
            LabelSpreads.Label
        ),
        new(
            "battery.lastingResistanceFactor",
            Unit.One,
            pack => pack.LastingResistanceFactor,
            (pack, value) => pack with { LastingResistanceFactor = value },
            LabelSpreads.Label,
            1
        ),
        new(
            "battery.resistanceTemperatureConstantK",
            Unit.Kelvin,
            pack => pack.ResistanceTemperatureConstantK,
            (pack, value) => pack with { ResistanceTemperatureConstantK = value },
            LabelSpreads.Label
        ),
        new(
            "battery.reserveShare",
            Unit.One,
            pack => pack.ReserveShare,
            (pack, value) => pack with { ReserveShare = value },
            Spread.None,
            0.01,
            0.9
        ),
        new(
            "battery.peukertExponent",
            Unit.One,
            pack => pack.PeukertExponent,
            (pack, value) => pack with { PeukertExponent = value },
            Spread.Absolute(0.02),
            1
        ),
        new(
            "battery.ratedHours",
            Unit.Hour,
            pack => pack.RatedS,
            (pack, value) => pack with { RatedS = value },
            Spread.None
        ),
    ];

    private static readonly Figure[] Heat =
    [
        new(
            "battery.temperatureC",
            Unit.Celsius,
            pack => pack.TemperatureC,
            (pack, value) => pack with { TemperatureC = value },
            Spread.None
        ),
        new(
            "battery.massG",
            Unit.Gram,
            pack => pack.MassKg,
            (pack, value) => pack with { MassKg = value },
            LabelSpreads.Measured
        ),
        new(
            "battery.packToAmbientKPerW",
            Unit.KelvinPerWatt,
            pack => pack.PackToAmbientKPerW,
            (pack, value) => pack with { PackToAmbientKPerW = value },
            LabelSpreads.Label
        ),
        new(
            "battery.maxTemperatureC",
            Unit.Celsius,
            pack => pack.MaxTemperatureC,
            (pack, value) => pack with { MaxTemperatureC = value },
            Spread.None
        ),
    ];
}
