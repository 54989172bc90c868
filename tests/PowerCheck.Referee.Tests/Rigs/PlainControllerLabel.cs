using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Motors;

namespace PowerCheck.Referee.Tests.Rigs;

/// <summary>A plain controller as the label that the check takes.</summary>
internal static class PlainControllerLabel
{
    public static ControllerLabel Of(PlainController controller, bool brushed) =>
        new()
        {
            MotorKinds = [brushed ? MotorKind.Brushed : MotorKind.Brushless],
            SensorInput = brushed ? null : controller.SensorInput,
            MaxCells = controller.MaxCells,
            MaxVoltageV = controller.MaxVoltageV,
            ContinuousCurrentA = controller.ContinuousCurrentA,
            BurstCurrentA = controller.BurstCurrentA,
            BurstS = controller.BurstSeconds,
            CurrentLimitA = controller.CurrentLimitA,
            OnResistanceOhm = controller.OnResistanceMilliohm / 1000,
            HotResistanceFactor = controller.HotResistanceFactor,
            Freewheel = controller.DiodeFreewheel ? Freewheel.Diode : Freewheel.Synchronous,
            PwmFrequencyHz = controller.PwmFrequencyKhz * 1000,
            EdgeTimeS = controller.EdgeTimeNs * 1e-9,
            Hold = controller.Hold switch
            {
                PlainHold.DragBrake => HoldMode.DragBrake,
                PlainHold.Active => HoldMode.Active,
                _ => HoldMode.None,
            },
            LowSpeedStart = brushed ? null : controller.LowSpeedStart,
            LowSpeedBackEmfV = brushed ? null : controller.LowSpeedBackEmfV,
            CutoffVPerCell = controller.CutoffVPerCell,
            MaxTemperatureC = controller.MaxTemperatureC,
            ThermalTimeConstantS = controller.ThermalTimeConstantS,
            StandstillRatingShare = brushed ? null : controller.StandstillRatingShare,
            QuiescentCurrentA = controller.QuiescentCurrentA,
            ReceiverSupply = Of(controller.ReceiverSupply),
        };

    private static ReceiverSupplyLabel Of(PlainReceiverSupply supply) =>
        new()
        {
            Regulator = supply.Linear ? Regulator.Linear : Regulator.Switching,
            VoltageV = supply.VoltageV,
            ContinuousCurrentA = supply.ContinuousCurrentA,
            PeakCurrentA = supply.PeakCurrentA,
            DropoutV = supply.DropoutV,
            MaxHeatW = supply.MaxHeatW,
            Efficiency = supply.Efficiency,
            ReceiverResetV = supply.ReceiverResetV,
        };
}
