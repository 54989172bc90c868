using PowerCheck.Model.Batteries;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Controllers;

/// <summary>What a speed controller's box says, in SI; null is what it does not say.</summary>
public sealed record ControllerLabel
{
    /// <summary>Kinds of motor it drives; empty when not said.</summary>
    public IReadOnlyList<MotorKind> MotorKinds { get; init; } = [];

    /// <summary>Whether it reads a rotor position sensor.</summary>
    public bool? SensorInput { get; init; }

    /// <summary>Cell counts allowed, by chemistry; empty when not said.</summary>
    public IReadOnlyList<CellLimit> CellLimits { get; init; } = [];

    /// <summary>Fewest lithium cells in series.</summary>
    public int? MinCells { get; init; }

    /// <summary>Most lithium cells in series.</summary>
    public int? MaxCells { get; init; }

    /// <summary>Lowest supply voltage [V].</summary>
    public double? MinVoltageV { get; init; }

    /// <summary>Highest supply voltage [V].</summary>
    public double? MaxVoltageV { get; init; }

    /// <summary>Continuous motor current [A].</summary>
    public double? ContinuousCurrentA { get; init; }

    /// <summary>Burst motor current [A].</summary>
    public double? BurstCurrentA { get; init; }

    /// <summary>For how long the burst is allowed [s].</summary>
    public double? BurstS { get; init; }

    /// <summary>Motor current to which it limits itself [A].</summary>
    public double? CurrentLimitA { get; init; }

    /// <summary>Resistance of both switches in the path, cold [Ω].</summary>
    public double? OnResistanceOhm { get; init; }

    /// <summary>Growth of the switches' resistance when hot, 1 or more.</summary>
    public double? HotResistanceFactor { get; init; }

    /// <summary>Where the current flows while the switch is off.</summary>
    public Freewheel? Freewheel { get; init; }

    /// <summary>Switching frequency [Hz].</summary>
    public double? PwmFrequencyHz { get; init; }

    /// <summary>Rise and fall of one switching, together [s].</summary>
    public double? EdgeTimeS { get; init; }

    /// <summary>What it does at neutral on a slope.</summary>
    public HoldMode? Hold { get; init; }

    /// <summary>Whether it starts and holds a sensorless motor at crawling speed under control.</summary>
    public bool? LowSpeedStart { get; init; }

    /// <summary>Back-EMF under which it loses a sensorless motor [V].</summary>
    public double? LowSpeedBackEmfV { get; init; }

    /// <summary>Highest electrical speed [rad/s], mechanical speed times pole pairs.</summary>
    public double? MaxElectricalSpeedRadPerS { get; init; }

    /// <summary>Vehicle mass class printed on it [kg].</summary>
    public double? VehicleMassLimitKg { get; init; }

    /// <summary>Fewest motor turns allowed by cell count; empty when not said.</summary>
    public IReadOnlyList<TurnLimit> MinTurns { get; init; } = [];

    /// <summary>Voltage a cell under load at which it shuts the motor off [V].</summary>
    public double? CutoffVPerCell { get; init; }

    /// <summary>Highest temperature of its case or switches [°C].</summary>
    public double? MaxTemperatureC { get; init; }

    /// <summary>Time constant of its thermal memory [s].</summary>
    public double? ThermalTimeConstantS { get; init; }

    /// <summary>Share of its rating left at standstill with a brushless motor, 0 to 1.</summary>
    public double? StandstillRatingShare { get; init; }

    /// <summary>Current that it draws itself [A].</summary>
    public double? QuiescentCurrentA { get; init; }

    /// <summary>Its receiver supply.</summary>
    public ReceiverSupplyLabel ReceiverSupply { get; init; } = new();
}

/// <summary>What the box says of the receiver supply, in SI; null is what it does not say.</summary>
public sealed record ReceiverSupplyLabel
{
    /// <summary>Linear or switching.</summary>
    public Regulator? Regulator { get; init; }

    /// <summary>Output voltage [V].</summary>
    public double? VoltageV { get; init; }

    /// <summary>Continuous output current [A].</summary>
    public double? ContinuousCurrentA { get; init; }

    /// <summary>Peak output current [A].</summary>
    public double? PeakCurrentA { get; init; }

    /// <summary>Voltage that it needs above its output [V].</summary>
    public double? DropoutV { get; init; }

    /// <summary>Heat that a linear one can shed [W].</summary>
    public double? MaxHeatW { get; init; }

    /// <summary>Efficiency of a switching one, 0 to 1.</summary>
    public double? Efficiency { get; init; }

    /// <summary>Voltage under which the receiver resets [V].</summary>
    public double? ReceiverResetV { get; init; }
}

/// <summary>Cell counts that a controller allows for one chemistry.</summary>
/// <param name="Chemistry">The chemistry.</param>
/// <param name="MinCells">Fewest cells in series.</param>
/// <param name="MaxCells">Most cells in series.</param>
public readonly record struct CellLimit(Chemistry Chemistry, int MinCells, int MaxCells);

/// <summary>Fewest turns that a controller allows at a cell count.</summary>
/// <param name="Cells">Cells in series.</param>
/// <param name="Turns">Fewest turns.</param>
public readonly record struct TurnLimit(int Cells, double Turns);

/// <summary>Where the motor current flows while the switch is off.</summary>
public enum Freewheel
{
    /// <summary>Through the other switch.</summary>
    Synchronous,

    /// <summary>Through a diode.</summary>
    Diode,
}

/// <summary>What a controller does at neutral on a slope.</summary>
public enum HoldMode
{
    /// <summary>Shorts the winding: the rig creeps back slowly.</summary>
    DragBrake,

    /// <summary>Feeds current to stand still.</summary>
    Active,

    /// <summary>Nothing: the rig rolls.</summary>
    None,
}

/// <summary>How a receiver supply makes its voltage.</summary>
public enum Regulator
{
    /// <summary>Burns the difference.</summary>
    Linear,

    /// <summary>Converts it.</summary>
    Switching,
}
