using PowerCheck.Model.Materials;

namespace PowerCheck.Model.Motors;

/// <summary>
/// A motor as the equivalent direct-current machine (M1), every figure filled in. NaN is not known.
/// </summary>
/// <remarks>
/// v = i·R(T) + ω·ke + v_brush; shaft torque q = kt·(i − i0(ω)); ke = kt in SI. Brushed and brushless alike; resistance
/// terminal to terminal. Saturation and commutation are left out: torque at several times the rated current is
/// optimistic, and so is speed under load, by about 5 %. Sources: mjc, msl.
/// </remarks>
public sealed record Motor
{
    /// <summary>Brushed or brushless.</summary>
    public required MotorKind Kind { get; init; }

    /// <summary>Whether the kind was said or only assumed.</summary>
    public required bool KindKnown { get; init; }

    /// <summary>Whether it has a rotor position sensor; null when not said.</summary>
    public required bool? Sensored { get; init; }

    /// <summary>Whether the magnet sits at the case (brushed, outer rotor) and not between winding and case.</summary>
    public required bool MagnetAtCase { get; init; }

    /// <summary>Magnet material.</summary>
    public required MagnetMaterial Magnet { get; init; }

    /// <summary>Torque constant, and back-EMF constant, magnet at 20 °C [N·m/A = V·s/rad].</summary>
    public required double TorqueConstantNmPerA { get; init; }

    /// <summary>Resistance terminal to terminal, winding at 20 °C [Ω].</summary>
    public required double ResistanceOhm { get; init; }

    /// <summary>Voltage drop of both brushes [V]; 0 for brushless.</summary>
    public required double BrushDropV { get; init; }

    /// <summary>No-load current against speed.</summary>
    public required NoLoadLine NoLoad { get; init; }

    /// <summary>Inductance terminal to terminal [H].</summary>
    public required double InductanceH { get; init; }

    /// <summary>Pole pairs.</summary>
    public required double PolePairs { get; init; }

    /// <summary>Turns of the winding; NaN when not said.</summary>
    public required double Turns { get; init; }

    /// <summary>Can diameter [m].</summary>
    public required double CanDiameterM { get; init; }

    /// <summary>What the box says of its limits.</summary>
    public required MotorRatings Ratings { get; init; }

    /// <summary>Its heat network and temperature limits.</summary>
    public required MotorHeat Heat { get; init; }

    /// <summary>No-load speed per volt, KV, magnet at 20 °C [rad/(s·V)].</summary>
    public double SpeedConstantRadPerSPerV => 1 / TorqueConstantNmPerA;

    /// <summary>Resistance with the winding at a temperature [Ω].</summary>
    /// <param name="windingC">Winding temperature [°C].</param>
    public double ResistanceAt(double windingC) => ResistanceOhm * Copper.Growth(windingC);

    /// <summary>Torque constant with the magnet at a temperature [N·m/A]: a hot magnet is a weaker one.</summary>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public double TorqueConstantAt(double magnetC) =>
        TorqueConstantNmPerA * (1 + (Heat.MagnetCoefficientPerK * (magnetC - 20)));

    /// <summary>Motor current for a shaft torque [A]: q/kt + i0(ω).</summary>
    /// <param name="torqueNm">Shaft torque [N·m].</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public double CurrentFor(double torqueNm, double speedRadPerS, double magnetC = 20) =>
        (torqueNm / TorqueConstantAt(magnetC)) + NoLoad.CurrentAt(speedRadPerS);

    /// <summary>Shaft torque of a motor current [N·m]: kt·(i − i0(ω)).</summary>
    /// <param name="currentA">Motor current [A].</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    public double TorqueOf(double currentA, double speedRadPerS) =>
        TorqueConstantNmPerA * (currentA - NoLoad.CurrentAt(speedRadPerS));

    /// <summary>Back-EMF and brush drop together [V]: what the supply must overcome before current flows.</summary>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    public double CounterVoltage(double speedRadPerS) =>
        (TorqueConstantNmPerA * speedRadPerS) + BrushDropV;

    /// <summary>
    /// Speed at which a supply of <paramref name="voltageV"/> behind <paramref name="resistanceOhm"/> gives a shaft
    /// torque [rad/s]; below 0 when it cannot. Solves V = (q/kt + i0(ω))·R + ω·ke + v_brush, which is linear in ω.
    /// </summary>
    /// <param name="voltageV">Supply voltage [V].</param>
    /// <param name="resistanceOhm">Resistance of the whole loop, motor included [Ω].</param>
    /// <param name="torqueNm">Shaft torque [N·m].</param>
    public double SpeedAt(double voltageV, double resistanceOhm, double torqueNm)
    {
        var standing = (torqueNm / TorqueConstantNmPerA) + NoLoad.StandstillA;
        var rise = TorqueConstantNmPerA + (NoLoad.SlopeAPerRadPerS * resistanceOhm);
        return (voltageV - BrushDropV - (standing * resistanceOhm)) / rise;
    }

    /// <summary>Heat of iron and friction [W]: kt·i0(ω)·ω.</summary>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    public double SpinHeatW(double speedRadPerS) =>
        TorqueConstantNmPerA * NoLoad.CurrentAt(speedRadPerS) * speedRadPerS;
}

/// <summary>No-load current against speed, a straight line (M1).</summary>
/// <param name="StandstillA">At standstill: Coulomb friction [A].</param>
/// <param name="SlopeAPerRadPerS">Growth with speed [A·s/rad].</param>
public readonly record struct NoLoadLine(double StandstillA, double SlopeAPerRadPerS)
{
    /// <summary>No-load current at a speed [A].</summary>
    /// <param name="speedRadPerS">Speed [rad/s], 0 or more.</param>
    public double CurrentAt(double speedRadPerS) => StandstillA + (SlopeAPerRadPerS * speedRadPerS);
}

/// <summary>What the box says of a motor's limits; NaN is not said.</summary>
/// <param name="MaxVoltageV">Highest voltage [V].</param>
/// <param name="MaxSpeedRadPerS">Highest speed [rad/s].</param>
/// <param name="ContinuousCurrentA">Continuous current [A].</param>
/// <param name="BurstCurrentA">Burst current [A].</param>
/// <param name="BurstS">For how long [s].</param>
public sealed record MotorRatings(
    double MaxVoltageV,
    double MaxSpeedRadPerS,
    double ContinuousCurrentA,
    double BurstCurrentA,
    double BurstS
);

/// <summary>A motor's heat network (M6): winding w, case c, and what they stand. NaN is not known.</summary>
/// <param name="WindingJPerK">Heat capacity of the winding or brushed rotor [J/K].</param>
/// <param name="CaseJPerK">Heat capacity of the case [J/K].</param>
/// <param name="CopperJPerK">Heat capacity of the copper alone [J/K].</param>
/// <param name="WindingToCaseKPerW">Thermal resistance winding to case [K/W].</param>
/// <param name="CaseToAmbientKPerW">Thermal resistance case to ambient [K/W].</param>
/// <param name="SpinHeatInWinding">Whether iron loss and friction heat the rotor (brushed) and not the case.</param>
/// <param name="LockedHeatFactor">Unevenness of the heat in a locked winding.</param>
/// <param name="WindingLimitC">What the mean winding temperature may reach: class less hot spot [°C].</param>
/// <param name="MagnetLimitC">What the magnet may reach [°C].</param>
/// <param name="MagnetCoefficientPerK">Change of magnet strength [1/K], negative.</param>
public sealed record MotorHeat(
    double WindingJPerK,
    double CaseJPerK,
    double CopperJPerK,
    double WindingToCaseKPerW,
    double CaseToAmbientKPerW,
    bool SpinHeatInWinding,
    double LockedHeatFactor,
    double WindingLimitC,
    double MagnetLimitC,
    double MagnetCoefficientPerK
);
