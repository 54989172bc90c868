using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Drivetrain;

/// <summary>How a controller's bridge switches, as loop and bus see it (M3). The default is an ideal bridge.</summary>
/// <param name="FreewheelV">Drop of the freewheel path while the bridge is off [V]; 0 for synchronous switches.</param>
/// <param name="EdgeShare">
/// Share of the motor current that switching losses draw besides, ½·t_edge·f, while the bridge switches at all.
/// </param>
/// <param name="Unsmoothed">Whether the pack carries the motor current while on: no capacitor smooths the bus.</param>
public readonly record struct Bridge(double FreewheelV, double EdgeShare, bool Unsmoothed)
{
    /// <summary>The bridge of a controller. Below 4 kHz of switching the bus counts as unsmoothed, assumed.</summary>
    /// <param name="controller">The controller.</param>
    public static Bridge Of(Controller controller) =>
        new(
            controller.Freewheel == Freewheel.Diode ? Controller.DiodeDropV : 0,
            0.5 * controller.EdgeTimeS * controller.PwmFrequencyHz,
            !(controller.PwmFrequencyHz >= Ripple.UnsmoothedBelowHz)
        );

    /// <summary>
    /// Duty at which the bridge makes a mean voltage [1]: (v + V_f)/(V + V_f), for the freewheel path drops V_f while off.
    /// </summary>
    /// <param name="neededV">Mean voltage that it must make [V].</param>
    /// <param name="busV">Bus voltage [V].</param>
    public double DutyFor(double neededV, double busV) =>
        (neededV + FreewheelV) / (busV + FreewheelV);

    /// <summary>Losses of one controller beyond its switches' resistance, without ripple [W]. Source: slva.</summary>
    /// <remarks>
    /// V_f·i·(1 − D) of the freewheel path, and the loss of switching. A braking motor is shorted through the switches.
    /// </remarks>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="bus">The bus.</param>
    public double LossW(double motorA, Bus bus) =>
        (FreewheelV > 0 && motorA > 0 ? FreewheelV * motorA * (1 - bus.Duty) : 0)
        + EdgeW(motorA, bus);

    /// <summary>Loss of switching where the bridge switches at all [W]: ½·V·i·t_edge·f.</summary>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="bus">The bus.</param>
    public double EdgeW(double motorA, Bus bus) =>
        motorA > 0 && bus.Duty is > 0 and < 1 ? EdgeShare * motorA * bus.BusV : 0;
}
