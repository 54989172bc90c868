using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Controllers;

/// <summary>Fills in what a controller's box does not say (M3, M7); every fill goes through the ledger.</summary>
public static class ControllerDefaults
{
    /// <summary>Switching frequency from which on no ripple counts where no inductance is given [Hz], assumed.</summary>
    public const double SmoothFromHz = 8000;

    /// <summary>Switching frequency assumed when none is said [Hz].</summary>
    /// <param name="label">What the box says.</param>
    /// <param name="brushless">Whether the motor is brushless.</param>
    public static double PwmFrequencyHz(ControllerLabel label, bool brushless) =>
        label.PwmFrequencyHz ?? (brushless ? 16_000 : 8_000);

    /// <summary>The controller, complete.</summary>
    /// <param name="label">What the box says.</param>
    /// <param name="brushless">Whether the motor is brushless.</param>
    /// <param name="chemistry">The pack's chemistry, for the cut-off.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static Controller Complete(
        ControllerLabel label,
        bool brushless,
        Chemistry chemistry,
        Ledger ledger
    )
    {
        var continuous = ledger.Known(
            label.ContinuousCurrentA,
            "controller.continuousCurrentA",
            Unit.Ampere,
            2,
            500
        );
        return new Controller
        {
            MotorKinds = label.MotorKinds,
            SensorInput = label.SensorInput,
            Supply = new(
                label.CellLimits,
                label.MinCells ?? double.NaN,
                label.MaxCells ?? double.NaN,
                label.MinVoltageV ?? double.NaN,
                label.MaxVoltageV ?? double.NaN
            ),
            ContinuousCurrentA = continuous,
            BurstCurrentA = label.BurstCurrentA ?? double.NaN,
            CurrentLimitA = label.CurrentLimitA ?? double.NaN,
            OnResistanceOhm = OnResistance(label, continuous, ledger),
            HotResistanceFactor = ledger.Figure(
                label.HotResistanceFactor,
                "controller.hotResistanceFactor",
                Unit.One,
                1.3,
                Spread.Interval(1.15, 1.6),
                "switches are more resistive when hot",
                "slva"
            ),
            Freewheel = ledger.Word(
                label.Freewheel,
                "controller.freewheel",
                Freewheel.Synchronous,
                "assumed: the other switch carries the freewheel current"
            ),
            FreewheelKnown = label.Freewheel is not null,
            PwmFrequencyHz = ledger.Figure(
                label.PwmFrequencyHz,
                "controller.pwmFrequencyHz",
                Unit.Hertz,
                PwmFrequencyHz(label, brushless),
                Spread.Factor(2),
                "assumed: 16 kHz with brushless, 8 kHz with brushed motors"
            ),
            PwmKnown = label.PwmFrequencyHz is not null,
            EdgeTimeS = label.EdgeTimeS ?? 0,
            Hold = ledger.Word(
                label.Hold,
                "controller.holdMode",
                HoldMode.DragBrake,
                "assumed: a drag brake, as in crawling controllers"
            ),
            LowSpeedStart = LowSpeedStart(label, brushless, ledger),
            LowSpeedBackEmfV = LowSpeedBackEmf(label, brushless, ledger),
            MaxElectricalSpeedRadPerS = label.MaxElectricalSpeedRadPerS ?? double.NaN,
            VehicleMassLimitKg = label.VehicleMassLimitKg ?? double.NaN,
            MinTurns = label.MinTurns,
            CutoffVPerCell = ledger.Figure(
                label.CutoffVPerCell,
                "controller.cutoffVPerCell",
                Unit.Volt,
                CellData.For(chemistry).CutoffV,
                Spread.Absolute(0.1),
                "assumed: usual cut-off of the chemistry under load",
                "cells"
            ),
            LimitC = ledger.Figure(
                label.MaxTemperatureC,
                "controller.maxTemperatureC",
                Unit.Celsius,
                100,
                Spread.Absolute(15),
                "assumed: shuts down or fails from 100 °C on"
            ),
            ThermalTimeConstantS = TimeConstant(label, ledger),
            StandstillRatingShare = Standstill(label, brushless, ledger),
            QuiescentCurrentA = ledger.Figure(
                label.QuiescentCurrentA,
                "controller.quiescentCurrentA",
                Unit.Ampere,
                0.05,
                Spread.Factor(2),
                "assumed: what the controller draws itself"
            ),
        };
    }

    private static double OnResistance(ControllerLabel label, double continuous, Ledger ledger) =>
        ledger.Figure(
            label.OnResistanceOhm,
            "controller.onResistanceMilliohm",
            Unit.Milliohm,
            double.IsNaN(continuous) ? 2e-3 : 0.09 / continuous,
            Spread.Relative(0.5),
            double.IsNaN(continuous)
                ? "assumed: 2 mΩ, where the continuous current is not known"
                : "assumed: 0.09 V over the continuous current, both switches"
        );

    private static double TimeConstant(ControllerLabel label, Ledger ledger)
    {
        if (
            label is { ThermalTimeConstantS: null, BurstS: { } seconds, BurstCurrentA: { } burst }
            && burst > label.ContinuousCurrentA
        )
        {
            return Controller.TimeConstantS(label.ContinuousCurrentA.Value, burst, seconds);
        }

        return ledger.Figure(
            label.ThermalTimeConstantS,
            "controller.thermalTimeConstantS",
            Unit.Second,
            30,
            Spread.Factor(2),
            "assumed: 30 s, where no burst with its seconds is printed"
        );
    }

    private static bool LowSpeedStart(ControllerLabel label, bool brushless, Ledger ledger) =>
        brushless
        && ledger.Word(
            label.LowSpeedStart,
            "controller.lowSpeedStart",
            false,
            "assumed: without a sensor it needs back-EMF to know where the rotor stands"
        );

    private static double LowSpeedBackEmf(ControllerLabel label, bool brushless, Ledger ledger) =>
        brushless
            ? ledger.Figure(
                label.LowSpeedBackEmfV,
                "controller.lowSpeedBackEmfV",
                Unit.Volt,
                0.3,
                Spread.Interval(0.15, 0.5),
                "assumed: back-EMF that a sensorless controller needs"
            )
            : 0;

    private static double Standstill(ControllerLabel label, bool brushless, Ledger ledger) =>
        brushless
            ? ledger.Figure(
                label.StandstillRatingShare,
                "controller.standstillRatingShare",
                Unit.One,
                0.7,
                Spread.Interval(0.58, 1),
                "assumed: at standstill one phase pair carries all"
            )
            : 1;
}
