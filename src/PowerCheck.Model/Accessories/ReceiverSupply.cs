using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Accessories;

/// <summary>The receiver supply and what hangs on it, every figure filled in (M9).</summary>
/// <param name="Regulator">Linear or switching.</param>
/// <param name="VoltageV">Output voltage [V].</param>
/// <param name="ContinuousCurrentA">Continuous output current [A].</param>
/// <param name="PeakCurrentA">Peak output current [A].</param>
/// <param name="DropoutV">Voltage that it needs above its output [V].</param>
/// <param name="MaxHeatW">Heat that a linear one can shed [W]; NaN for a switching one.</param>
/// <param name="Efficiency">Efficiency of a switching one.</param>
/// <param name="ReceiverResetV">Voltage under which the receiver resets [V].</param>
/// <param name="FromReceiver">Currents of what hangs on the receiver supply.</param>
/// <param name="FromBattery">Currents of what hangs on the pack itself.</param>
/// <param name="Duty">Share of the time at work.</param>
public sealed record ReceiverSupply(
    Regulator Regulator,
    double VoltageV,
    double ContinuousCurrentA,
    double PeakCurrentA,
    double DropoutV,
    double MaxHeatW,
    double Efficiency,
    double ReceiverResetV,
    Currents FromReceiver,
    Currents FromBattery,
    double Duty
)
{
    /// <summary>Mean output current: idle, and at work for a share of the time [A].</summary>
    public double MeanOutputA => FromReceiver.Mean(Duty);

    /// <summary>
    /// What it draws from the bus: a linear one the output's current, a switching one the output's power over its
    /// efficiency; things on the pack itself draw their own current.
    /// </summary>
    public AuxiliaryLoad Load =>
        Regulator == Regulator.Linear
            ? new(MeanOutputA + FromBattery.Mean(Duty), 0)
            : new(FromBattery.Mean(Duty), VoltageV * MeanOutputA / Efficiency);

    /// <summary>Heat at an output current [W]: linear (V_bus − V_out)·i; switching V_out·i·(1/η − 1).</summary>
    /// <param name="busV">Bus voltage [V].</param>
    /// <param name="outputA">Output current [A].</param>
    public double HeatW(double busV, double outputA) =>
        Regulator == Regulator.Linear
            ? Math.Max(0, busV - VoltageV) * outputA
            : VoltageV * outputA * ((1 / Efficiency) - 1);

    /// <summary>
    /// Mean heat that counts for the controller's thermal memory [W]: a linear one's; a switching one's small loss is taken
    /// to be in the controller's rating.
    /// </summary>
    /// <param name="busV">Bus voltage [V].</param>
    public double MemoryHeatW(double busV) =>
        Regulator == Regulator.Linear ? HeatW(busV, MeanOutputA) : 0;

    /// <summary>Output voltage left at a bus voltage [V]: what was set, or the bus less the dropout.</summary>
    /// <param name="busV">Bus voltage [V].</param>
    public double OutputV(double busV) => Math.Max(0, Math.Min(VoltageV, busV - DropoutV));
}

/// <summary>Sums of currents [A].</summary>
/// <param name="IdleA">At rest [A].</param>
/// <param name="WorkingA">At work [A].</param>
/// <param name="JammedA">Jammed [A].</param>
public readonly record struct Currents(double IdleA, double WorkingA, double JammedA)
{
    /// <summary>Mean with work for a share of the time [A].</summary>
    /// <param name="duty">The share.</param>
    public double Mean(double duty) => IdleA + (duty * (WorkingA - IdleA));
}

/// <summary>What else than the motors draws from the bus.</summary>
/// <param name="CurrentA">At constant current [A].</param>
/// <param name="PowerW">At constant power [W].</param>
public readonly record struct AuxiliaryLoad(double CurrentA, double PowerW);
