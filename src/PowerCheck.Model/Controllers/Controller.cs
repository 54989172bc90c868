using PowerCheck.Model.Batteries;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Controllers;

/// <summary>A speed controller, every figure filled in (M3, M7). NaN is not known or not said.</summary>
public sealed record Controller
{
    /// <summary>Kinds of motor it drives; empty when not said.</summary>
    public required IReadOnlyList<MotorKind> MotorKinds { get; init; }

    /// <summary>Whether it reads a rotor position sensor; null when not said.</summary>
    public required bool? SensorInput { get; init; }

    /// <summary>What it allows the supply to be.</summary>
    public required SupplyLimits Supply { get; init; }

    /// <summary>Continuous motor current [A].</summary>
    public required double ContinuousCurrentA { get; init; }

    /// <summary>Burst motor current [A].</summary>
    public required double BurstCurrentA { get; init; }

    /// <summary>Motor current to which it limits itself [A]; NaN when it does not.</summary>
    public required double CurrentLimitA { get; init; }

    /// <summary>Resistance of both switches, cold [Ω].</summary>
    public required double OnResistanceOhm { get; init; }

    /// <summary>Growth of that resistance when hot.</summary>
    public required double HotResistanceFactor { get; init; }

    /// <summary>Where the current flows while the switch is off.</summary>
    public required Freewheel Freewheel { get; init; }

    /// <summary>Whether that was said.</summary>
    public required bool FreewheelKnown { get; init; }

    /// <summary>Switching frequency [Hz].</summary>
    public required double PwmFrequencyHz { get; init; }

    /// <summary>Whether that was said.</summary>
    public required bool PwmKnown { get; init; }

    /// <summary>Rise and fall of one switching, together [s]; 0 when not said.</summary>
    public required double EdgeTimeS { get; init; }

    /// <summary>What it does at neutral on a slope.</summary>
    public required HoldMode Hold { get; init; }

    /// <summary>Whether it starts a sensorless motor at crawling speed under control.</summary>
    public required bool LowSpeedStart { get; init; }

    /// <summary>Back-EMF under which it loses a sensorless motor [V].</summary>
    public required double LowSpeedBackEmfV { get; init; }

    /// <summary>Highest electrical speed [rad/s].</summary>
    public required double MaxElectricalSpeedRadPerS { get; init; }

    /// <summary>Vehicle mass class printed on it [kg].</summary>
    public required double VehicleMassLimitKg { get; init; }

    /// <summary>Fewest motor turns by cell count; empty when not said.</summary>
    public required IReadOnlyList<TurnLimit> MinTurns { get; init; }

    /// <summary>Voltage a cell under load at which the motor is shut off [V].</summary>
    public required double CutoffVPerCell { get; init; }

    /// <summary>Highest temperature [°C].</summary>
    public required double LimitC { get; init; }

    /// <summary>Time constant of its thermal memory [s].</summary>
    public required double ThermalTimeConstantS { get; init; }

    /// <summary>Share of its rating left at standstill with a brushless motor.</summary>
    public required double StandstillRatingShare { get; init; }

    /// <summary>Current that it draws itself [A].</summary>
    public required double QuiescentCurrentA { get; init; }

    /// <summary>Voltage drop of a freewheel diode [V], assumed.</summary>
    public const double DiodeDropV = 0.8;

    /// <summary>Resistance of both switches, hot [Ω].</summary>
    public double HotResistanceOhm => OnResistanceOhm * HotResistanceFactor;

    /// <summary>Heat that it sheds for ever in air of 25 °C [W]: i_cont²·R_on, hot.</summary>
    public double RatedHeatW => ContinuousCurrentA * ContinuousCurrentA * HotResistanceOhm;

    /// <summary>The most motor current that it gives: its limit, else its burst rating [A]; NaN when neither is said.</summary>
    public double CeilingA => double.IsNaN(CurrentLimitA) ? BurstCurrentA : CurrentLimitA;

    /// <summary>
    /// Time constant of a thermal memory from a burst rating [s]: −t_burst/ln(1 − (i_cont/i_burst)²). Source: iec60149.
    /// </summary>
    /// <param name="continuousA">Continuous current [A].</param>
    /// <param name="burstA">Burst current [A], above the continuous one.</param>
    /// <param name="burstS">How long the burst is allowed from rest [s].</param>
    public static double TimeConstantS(double continuousA, double burstA, double burstS)
    {
        var share = continuousA / burstA;
        return -burstS / Math.Log(1 - (share * share));
    }
}

/// <summary>What a controller allows its supply to be; NaN or empty is not said.</summary>
/// <param name="CellLimits">Cell counts by chemistry.</param>
/// <param name="MinCells">Fewest lithium cells.</param>
/// <param name="MaxCells">Most lithium cells.</param>
/// <param name="MinVoltageV">Lowest voltage [V].</param>
/// <param name="MaxVoltageV">Highest voltage [V].</param>
public sealed record SupplyLimits(
    IReadOnlyList<CellLimit> CellLimits,
    double MinCells,
    double MaxCells,
    double MinVoltageV,
    double MaxVoltageV
)
{
    /// <summary>Fewest and most cells allowed of a chemistry; NaN when the box does not tell.</summary>
    /// <remarks>
    /// A count that is printed for lithium is read by voltage for nickel-metal hydride: as many cells as fit the same
    /// full-charge voltage (common practice, no source).
    /// </remarks>
    /// <param name="chemistry">The pack's chemistry.</param>
    public (double Min, double Max) CellsFor(Chemistry chemistry)
    {
        foreach (var limit in CellLimits)
        {
            if (limit.Chemistry == chemistry)
            {
                return (limit.MinCells, limit.MaxCells);
            }
        }

        if (CellData.For(chemistry).Lithium)
        {
            return (MinCells, MaxCells);
        }

        var perLithium = CellData.For(Chemistry.Lipo).FullV / CellData.For(chemistry).FullV;
        return (
            Math.Ceiling((MinCells * perLithium) - 1e-9),
            Math.Floor((MaxCells * perLithium) + 1e-9)
        );
    }
}
