using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns the speed controller of a request into the model's label.</summary>
internal static class ControllerMapper
{
    public static ControllerLabel Map(ControllerRequest controller) =>
        Ratings(Matching(controller), controller);

    private static ControllerLabel Matching(ControllerRequest controller) =>
        new()
        {
            MotorKinds =
            [
                .. (controller.MotorKinds ?? []).Select(kind => Word<MotorKind>.Of(kind)!.Value),
            ],
            SensorInput = controller.SensorInput,
            CellLimits = [.. (controller.CellLimits ?? []).Select(CellLimit)],
            MinCells = controller.MinCells,
            MaxCells = controller.MaxCells,
            MinVoltageV = controller.MinVoltageV,
            MaxVoltageV = controller.MaxVoltageV,
            Hold = Word<HoldMode>.Of(controller.HoldMode),
            LowSpeedStart = controller.LowSpeedStart,
            LowSpeedBackEmfV = controller.LowSpeedBackEmfV,
            MaxElectricalSpeedRadPerS = Unit.Rpm.Of(controller.MaxElectricalSpeedRpm),
            VehicleMassLimitKg = controller.VehicleMassLimitKg,
            MinTurns = [.. (controller.MinTurns ?? []).Select(TurnLimit)],
            CutoffVPerCell = controller.CutoffVPerCell,
            ReceiverSupply = ReceiverSupply(controller.ReceiverSupply ?? new()),
        };

    private static ControllerLabel Ratings(ControllerLabel label, ControllerRequest controller) =>
        label with
        {
            ContinuousCurrentA = controller.ContinuousCurrentA,
            BurstCurrentA = controller.BurstCurrentA,
            BurstS = controller.BurstSeconds,
            CurrentLimitA = controller.CurrentLimitA,
            OnResistanceOhm = Unit.Milliohm.Of(controller.OnResistanceMilliohm),
            HotResistanceFactor = controller.HotResistanceFactor,
            Freewheel = Word<Freewheel>.Of(controller.Freewheel),
            PwmFrequencyHz = controller.PwmFrequencyHz,
            EdgeTimeS = Unit.Nanosecond.Of(controller.EdgeTimeNs),
            MaxTemperatureC = controller.MaxTemperatureC,
            ThermalTimeConstantS = controller.ThermalTimeConstantS,
            StandstillRatingShare = controller.StandstillRatingShare,
            QuiescentCurrentA = controller.QuiescentCurrentA,
        };

    private static ReceiverSupplyLabel ReceiverSupply(ReceiverSupplyRequest supply) =>
        new()
        {
            Regulator = Word<Regulator>.Of(supply.Regulator),
            VoltageV = supply.VoltageV,
            ContinuousCurrentA = supply.ContinuousCurrentA,
            PeakCurrentA = supply.PeakCurrentA,
            DropoutV = supply.DropoutV,
            MaxHeatW = supply.MaxHeatW,
            Efficiency = supply.Efficiency,
            ReceiverResetV = supply.ReceiverResetV,
        };

    private static CellLimit CellLimit(CellLimitRequest limit) =>
        new(
            Word<Chemistry>.Of(limit.Chemistry)!.Value,
            limit.MinCells!.Value,
            limit.MaxCells!.Value
        );

    private static TurnLimit TurnLimit(TurnLimitRequest limit) =>
        new(limit.Cells!.Value, limit.Turns!.Value);
}
