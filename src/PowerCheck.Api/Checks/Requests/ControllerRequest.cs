using PowerCheck.Api.Door;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of the speed controller. Currents are motor currents unless said otherwise.</summary>
public sealed class ControllerRequest
{
    /// <summary>What the caller calls it. Not used.</summary>
    [Text(120, "small sensored controller")]
    public string? Name { get; set; }

    /// <summary>Kinds of motor that it drives.</summary>
    [Items(2)]
    [Word<MotorKind>("brushless")]
    public IReadOnlyList<string>? MotorKinds { get; set; }

    /// <summary>Whether it reads a rotor position sensor.</summary>
    [Flag(true)]
    public bool? SensorInput { get; set; }

    /// <summary>Cell counts allowed, by chemistry. Not beside minCells and maxCells.</summary>
    [Items(5)]
    public IReadOnlyList<CellLimitRequest>? CellLimits { get; set; }

    /// <summary>Fewest lithium cells in series.</summary>
    [Figure(nameof(Unit.Cells), 1, 24, 2)]
    public int? MinCells { get; set; }

    /// <summary>Most lithium cells in series.</summary>
    [Figure(nameof(Unit.Cells), 1, 24, 3)]
    public int? MaxCells { get; set; }

    /// <summary>Lowest supply voltage.</summary>
    [Figure(nameof(Unit.Volt), 1, 100, 6)]
    public double? MinVoltageV { get; set; }

    /// <summary>Highest supply voltage.</summary>
    [Figure(nameof(Unit.Volt), 1, 100, 12.6)]
    public double? MaxVoltageV { get; set; }

    /// <summary>Continuous motor current.</summary>
    [Figure(nameof(Unit.Ampere), 0.5, 1000, 60)]
    public double? ContinuousCurrentA { get; set; }

    /// <summary>Burst motor current.</summary>
    [Figure(nameof(Unit.Ampere), 0.5, 5000, 300)]
    public double? BurstCurrentA { get; set; }

    /// <summary>For how long the burst is allowed.</summary>
    [Figure(nameof(Unit.Second), 0.01, 3600, 1)]
    public double? BurstSeconds { get; set; }

    /// <summary>Motor current to which the controller limits itself.</summary>
    [Figure(nameof(Unit.Ampere), 0.5, 5000, 120)]
    public double? CurrentLimitA { get; set; }

    /// <summary>Resistance of both switches in the current's path, cold.</summary>
    [Figure(nameof(Unit.Milliohm), 0.01, 10000, 1.5)]
    public double? OnResistanceMilliohm { get; set; }

    /// <summary>Growth of the switches' resistance when hot.</summary>
    [Figure(nameof(Unit.One), 1, 3, 1.3)]
    public double? HotResistanceFactor { get; set; }

    /// <summary>Where the current flows while the switch is off: through the other switch, or through a diode.</summary>
    [Word<Freewheel>("synchronous")]
    public string? Freewheel { get; set; }

    /// <summary>Switching frequency.</summary>
    [Figure(nameof(Unit.Hertz), 50, 200000, 16000)]
    public double? PwmFrequencyHz { get; set; }

    /// <summary>Rise and fall of one switching, together.</summary>
    [Figure(nameof(Unit.Nanosecond), 0, 100000, 100)]
    public double? EdgeTimeNs { get; set; }

    /// <summary>What it does at neutral on a slope: short the winding, feed current to stand still, or nothing.</summary>
    [Word<HoldMode>("dragBrake")]
    public string? HoldMode { get; set; }

    /// <summary>Whether it starts and holds a sensorless motor at crawling speed under control.</summary>
    [Flag(false)]
    public bool? LowSpeedStart { get; set; }

    /// <summary>Back-EMF under which it loses a sensorless motor.</summary>
    [Figure(nameof(Unit.Volt), 0, 5, 0.3)]
    public double? LowSpeedBackEmfV { get; set; }

    /// <summary>Highest electrical speed: motor speed times pole pairs.</summary>
    [Figure(nameof(Unit.Rpm), 1000, 2000000, 240000)]
    public double? MaxElectricalSpeedRpm { get; set; }

    /// <summary>Mass class of vehicle printed on the label.</summary>
    [Figure(nameof(Unit.Kilogram), 0.05, 50, 3)]
    public double? VehicleMassLimitKg { get; set; }

    /// <summary>Fewest motor turns allowed, by cell count.</summary>
    [Items(8)]
    public IReadOnlyList<TurnLimitRequest>? MinTurns { get; set; }

    /// <summary>Voltage a cell under load at which it shuts the motor off.</summary>
    [Figure(nameof(Unit.Volt), 0.5, 4, 3.2)]
    public double? CutoffVPerCell { get; set; }

    /// <summary>Highest temperature of its case or switches.</summary>
    [Figure(nameof(Unit.Celsius), 50, 200, 100)]
    public double? MaxTemperatureC { get; set; }

    /// <summary>Time constant of its thermal memory.</summary>
    [Figure(nameof(Unit.Second), 0.1, 3600, 30)]
    public double? ThermalTimeConstantS { get; set; }

    /// <summary>Share of its rating left at standstill with a brushless motor.</summary>
    [Figure(nameof(Unit.One), 0.1, 1, 0.7)]
    public double? StandstillRatingShare { get; set; }

    /// <summary>Battery current that it draws itself.</summary>
    [Figure(nameof(Unit.Ampere), 0, 5, 0.05)]
    public double? QuiescentCurrentA { get; set; }

    /// <summary>Its supply for receiver and servos.</summary>
    public ReceiverSupplyRequest? ReceiverSupply { get; set; }
}

/// <summary>Cell counts that a controller allows for one chemistry.</summary>
public sealed class CellLimitRequest
{
    /// <summary>The chemistry.</summary>
    [Must]
    [Word<Chemistry>("nimh")]
    public string? Chemistry { get; set; }

    /// <summary>Fewest cells in series.</summary>
    [Must]
    [Figure(nameof(Unit.Cells), 1, 24, 5)]
    public int? MinCells { get; set; }

    /// <summary>Most cells in series.</summary>
    [Must]
    [Figure(nameof(Unit.Cells), 1, 24, 9)]
    public int? MaxCells { get; set; }
}

/// <summary>Fewest motor turns that a controller allows at a cell count.</summary>
public sealed class TurnLimitRequest
{
    /// <summary>Cells in series.</summary>
    [Must]
    [Figure(nameof(Unit.Cells), 1, 24, 3)]
    public int? Cells { get; set; }

    /// <summary>Fewest turns.</summary>
    [Must]
    [Figure(nameof(Unit.Turns), 0.5, 200, 21)]
    public double? Turns { get; set; }
}

/// <summary>What is known of the controller's supply for receiver and servos.</summary>
public sealed class ReceiverSupplyRequest
{
    /// <summary>How it makes its voltage: by burning the difference, or by converting it.</summary>
    [Word<Regulator>("switching")]
    public string? Regulator { get; set; }

    /// <summary>Output voltage.</summary>
    [Figure(nameof(Unit.Volt), 1, 30, 6)]
    public double? VoltageV { get; set; }

    /// <summary>Continuous output current.</summary>
    [Figure(nameof(Unit.Ampere), 0.05, 100, 3)]
    public double? ContinuousCurrentA { get; set; }

    /// <summary>Peak output current.</summary>
    [Figure(nameof(Unit.Ampere), 0.05, 200, 6)]
    public double? PeakCurrentA { get; set; }

    /// <summary>Voltage that it needs above its output.</summary>
    [Figure(nameof(Unit.Volt), 0, 10, 0.5)]
    public double? DropoutV { get; set; }

    /// <summary>Heat that a linear one can shed.</summary>
    [Figure(nameof(Unit.Watt), 0.01, 1000, 7)]
    public double? MaxHeatW { get; set; }

    /// <summary>Efficiency of a switching one.</summary>
    [Figure(nameof(Unit.One), 0.1, 1, 0.85)]
    public double? Efficiency { get; set; }

    /// <summary>Voltage under which the receiver resets.</summary>
    [Figure(nameof(Unit.Volt), 0, 12, 3.5)]
    public double? ReceiverResetV { get; set; }
}
