using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Batteries;

namespace PowerCheck.Referee.Tests.Rigs;

/// <summary>A plain pack as the label that the check takes.</summary>
internal static class PlainBatteryLabel
{
    public static BatteryLabel Of(PlainBattery battery) =>
        new()
        {
            Chemistry = battery.Chemistry switch
            {
                PlainChemistry.Lipo => Chemistry.Lipo,
                PlainChemistry.Lihv => Chemistry.Lihv,
                PlainChemistry.Liion => Chemistry.Liion,
                PlainChemistry.Lifepo4 => Chemistry.Lifepo4,
                _ => Chemistry.Nimh,
            },
            SeriesCells = battery.SeriesCells,
            ParallelCells = battery.ParallelCells,
            CapacityCoulomb = battery.CapacityMah * 3.6,
            ContinuousC = battery.ContinuousC,
            CellResistanceOhm = battery.CellResistanceMilliohm / 1000,
            ConnectorOhm = battery.ConnectorMilliohm / 1000,
            Condition = PackCondition.New,
            TemperatureC = battery.TemperatureC,
            MassKg = battery.MassG / 1000,
            LastingResistanceFactor = battery.LastingResistanceFactor,
            ResistanceTemperatureConstantK = battery.ResistanceTemperatureConstantK,
            PackToAmbientKPerW = battery.PackToAmbientKPerW,
            ReserveShare = battery.ReserveShare,
            PeukertExponent = battery.PeukertExponent,
            RatedS = battery.RatedHours * 3600,
            MaxTemperatureC = battery.MaxTemperatureC,
        };
}
