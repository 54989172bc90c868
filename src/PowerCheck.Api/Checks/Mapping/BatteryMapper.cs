using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns the pack of a request into the model's label.</summary>
internal static class BatteryMapper
{
    public static BatteryLabel Map(BatteryRequest battery) =>
        new()
        {
            Chemistry = Word<Chemistry>.Of(battery.Chemistry),
            SeriesCells = battery.SeriesCells,
            ParallelCells = battery.ParallelCells,
            CapacityCoulomb = Unit.MilliampereHour.Of(battery.CapacityMah),
            ContinuousC = battery.ContinuousC,
            BurstC = battery.BurstC,
            BurstS = battery.BurstSeconds,
            CellResistanceOhm = Unit.Milliohm.Of(battery.CellResistanceMilliohm),
            ConnectorOhm = Unit.Milliohm.Of(battery.ConnectorMilliohm),
            Condition = Word<PackCondition>.Of(battery.Condition),
            TemperatureC = battery.TemperatureC,
            MassKg = Unit.Gram.Of(battery.MassG),
            LastingResistanceFactor = battery.LastingResistanceFactor,
            ResistanceTemperatureConstantK = battery.ResistanceTemperatureConstantK,
            PackToAmbientKPerW = battery.PackToAmbientKPerW,
            PeukertExponent = battery.PeukertExponent,
            RatedS = Unit.Hour.Of(battery.RatedHours),
            ReserveShare = battery.ReserveShare,
            MaxTemperatureC = battery.MaxTemperatureC,
        };
}
