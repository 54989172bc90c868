using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Controllers.ControllerLabel>;

namespace PowerCheck.Model.Controllers;

/// <summary>Every measured or printed figure of a speed controller and its receiver supply (M3, M7, M9, M12).</summary>
public static class ControllerFigures
{
    /// <summary>The figures.</summary>
    public static IReadOnlyList<LabelFigure<ControllerLabel>> All =>
        [
            .. Ratings,
            .. Electronics,
            .. Supply.Select(figure =>
                figure.In<ControllerLabel>(
                    controller => controller.ReceiverSupply,
                    (controller, supply) => controller with { ReceiverSupply = supply }
                )
            ),
        ];

    private static readonly Figure[] Ratings =
    [
        new(
            "controller.minVoltageV",
            Unit.Volt,
            controller => controller.MinVoltageV,
            (controller, value) => controller with { MinVoltageV = value },
            Spread.None
        ),
        new(
            "controller.maxVoltageV",
            Unit.Volt,
            controller => controller.MaxVoltageV,
            (controller, value) => controller with { MaxVoltageV = value },
            Spread.None
        ),
        new(
            "controller.continuousCurrentA",
            Unit.Ampere,
            controller => controller.ContinuousCurrentA,
            (controller, value) => controller with { ContinuousCurrentA = value },
            LabelSpreads.Ampere
        ),
        new(
            "controller.burstCurrentA",
            Unit.Ampere,
            controller => controller.BurstCurrentA,
            (controller, value) => controller with { BurstCurrentA = value },
            LabelSpreads.Ampere
        ),
        new(
            "controller.burstSeconds",
            Unit.Second,
            controller => controller.BurstS,
            (controller, value) => controller with { BurstS = value },
            Spread.None
        ),
        new(
            "controller.currentLimitA",
            Unit.Ampere,
            controller => controller.CurrentLimitA,
            (controller, value) => controller with { CurrentLimitA = value },
            LabelSpreads.Label
        ),
        new(
            "controller.maxElectricalSpeedRpm",
            Unit.Rpm,
            controller => controller.MaxElectricalSpeedRadPerS,
            (controller, value) => controller with { MaxElectricalSpeedRadPerS = value },
            Spread.None
        ),
        new(
            "controller.vehicleMassLimitKg",
            Unit.Kilogram,
            controller => controller.VehicleMassLimitKg,
            (controller, value) => controller with { VehicleMassLimitKg = value },
            Spread.None
        ),
        new(
            "controller.cutoffVPerCell",
            Unit.Volt,
            controller => controller.CutoffVPerCell,
            (controller, value) => controller with { CutoffVPerCell = value },
            Spread.Absolute(0.05)
        ),
        new(
            "controller.maxTemperatureC",
            Unit.Celsius,
            controller => controller.MaxTemperatureC,
            (controller, value) => controller with { MaxTemperatureC = value },
            LabelSpreads.Kelvin
        ),
    ];

    private static readonly Figure[] Electronics =
    [
        new(
            "controller.onResistanceMilliohm",
            Unit.Milliohm,
            controller => controller.OnResistanceOhm,
            (controller, value) => controller with { OnResistanceOhm = value },
            LabelSpreads.Label
        ),
        new(
            "controller.hotResistanceFactor",
            Unit.One,
            controller => controller.HotResistanceFactor,
            (controller, value) => controller with { HotResistanceFactor = value },
            LabelSpreads.Label,
            1
        ),
        new(
            "controller.pwmFrequencyHz",
            Unit.Hertz,
            controller => controller.PwmFrequencyHz,
            (controller, value) => controller with { PwmFrequencyHz = value },
            LabelSpreads.Held
        ),
        new(
            "controller.edgeTimeNs",
            Unit.Nanosecond,
            controller => controller.EdgeTimeS,
            (controller, value) => controller with { EdgeTimeS = value },
            LabelSpreads.Label
        ),
        new(
            "controller.lowSpeedBackEmfV",
            Unit.Volt,
            controller => controller.LowSpeedBackEmfV,
            (controller, value) => controller with { LowSpeedBackEmfV = value },
            LabelSpreads.Label
        ),
        new(
            "controller.thermalTimeConstantS",
            Unit.Second,
            controller => controller.ThermalTimeConstantS,
            (controller, value) => controller with { ThermalTimeConstantS = value },
            LabelSpreads.Label
        ),
        new(
            "controller.standstillRatingShare",
            Unit.One,
            controller => controller.StandstillRatingShare,
            (controller, value) => controller with { StandstillRatingShare = value },
            LabelSpreads.Label,
            0.01,
            1
        ),
        new(
            "controller.quiescentCurrentA",
            Unit.Ampere,
            controller => controller.QuiescentCurrentA,
            (controller, value) => controller with { QuiescentCurrentA = value },
            LabelSpreads.Label
        ),
    ];

    private static readonly LabelFigure<ReceiverSupplyLabel>[] Supply =
    [
        new(
            "controller.receiverSupply.voltageV",
            Unit.Volt,
            supply => supply.VoltageV,
            (supply, value) => supply with { VoltageV = value },
            LabelSpreads.Measured
        ),
        new(
            "controller.receiverSupply.continuousCurrentA",
            Unit.Ampere,
            supply => supply.ContinuousCurrentA,
            (supply, value) => supply with { ContinuousCurrentA = value },
            LabelSpreads.Ampere
        ),
        new(
            "controller.receiverSupply.peakCurrentA",
            Unit.Ampere,
            supply => supply.PeakCurrentA,
            (supply, value) => supply with { PeakCurrentA = value },
            LabelSpreads.Ampere
        ),
        new(
            "controller.receiverSupply.dropoutV",
            Unit.Volt,
            supply => supply.DropoutV,
            (supply, value) => supply with { DropoutV = value },
            LabelSpreads.Label,
            0
        ),
        new(
            "controller.receiverSupply.maxHeatW",
            Unit.Watt,
            supply => supply.MaxHeatW,
            (supply, value) => supply with { MaxHeatW = value },
            LabelSpreads.Label
        ),
        new(
            "controller.receiverSupply.efficiency",
            Unit.One,
            supply => supply.Efficiency,
            (supply, value) => supply with { Efficiency = value },
            LabelSpreads.Held,
            0.01,
            1
        ),
        new(
            "controller.receiverSupply.receiverResetV",
            Unit.Volt,
            supply => supply.ReceiverResetV,
            (supply, value) => supply with { ReceiverResetV = value },
            LabelSpreads.Held
        ),
    ];
}
