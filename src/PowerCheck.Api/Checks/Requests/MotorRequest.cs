using PowerCheck.Api.Door;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of the motor. All figures are of one motor.</summary>
public sealed class MotorRequest
{
    /// <summary>What the caller calls it. Not used.</summary>
    [Text(120, "short can, sensored")]
    public string? Name { get; set; }

    /// <summary>How it commutates: with brushes, or by the controller.</summary>
    [Word<MotorKind>("brushless")]
    public string? Kind { get; set; }

    /// <summary>Whether it has a rotor position sensor.</summary>
    [Flag(true)]
    public bool? Sensored { get; set; }

    /// <summary>Where a brushless motor's rotor turns: inside the stator, or around it.</summary>
    [Word<RotorLayout>("inner")]
    public string? Rotor { get; set; }

    /// <summary>What its magnets are made of: hard ferrite, or neodymium-iron-boron.</summary>
    [Word<MagnetMaterial>("ndfeb")]
    public string? Magnet { get; set; }

    /// <summary>No-load speed per volt, KV.</summary>
    [Figure(nameof(Unit.RpmPerVolt), 50, 30000, 3300)]
    public double? KvRpmPerVolt { get; set; }

    /// <summary>Turns of the winding, by which such motors are often sold.</summary>
    [Figure(nameof(Unit.Turns), 0.5, 200, 13.5)]
    public double? Turns { get; set; }

    /// <summary>Slots of the armature or stator; 3 and 5 tell the speed constant from the turns.</summary>
    [Figure(nameof(Unit.One), 3, 60, 5)]
    public int? Slots { get; set; }

    /// <summary>Resistance terminal to terminal, at 20 °C unless the temperature is given.</summary>
    [Figure(nameof(Unit.Milliohm), 0.1, 10000, 22)]
    public double? ResistanceMilliohm { get; set; }

    /// <summary>Temperature at which the resistance was measured.</summary>
    [Figure(nameof(Unit.Celsius), -40, 200, 25)]
    public double? ResistanceTemperatureC { get; set; }

    /// <summary>Measured no-load points. Two of them tell how the no-load current grows with speed.</summary>
    [Items(8)]
    public IReadOnlyList<NoLoadPointRequest>? NoLoadPoints { get; set; }

    /// <summary>Share of the no-load current that is left at standstill.</summary>
    [Figure(nameof(Unit.One), 0, 1, 0.5)]
    public double? NoLoadStandstillShare { get; set; }

    /// <summary>Voltage drop of both brushes together; brushed motors only.</summary>
    [Figure(nameof(Unit.Volt), 0, 3, 0.3)]
    public double? BrushDropV { get; set; }

    /// <summary>Inductance terminal to terminal.</summary>
    [Figure(nameof(Unit.Microhenry), 0.1, 100000, 15)]
    public double? InductanceMicrohenry { get; set; }

    /// <summary>Pole pairs of the rotor.</summary>
    [Figure(nameof(Unit.One), 1, 50, 2)]
    public int? PolePairs { get; set; }

    /// <summary>Mass.</summary>
    [Figure(nameof(Unit.Gram), 1, 10000, 165)]
    public double? MassG { get; set; }

    /// <summary>Diameter of the can.</summary>
    [Figure(nameof(Unit.Millimetre), 5, 200, 36)]
    public double? CanDiameterMm { get; set; }

    /// <summary>Length of the can, without shaft.</summary>
    [Figure(nameof(Unit.Millimetre), 5, 300, 50)]
    public double? CanLengthMm { get; set; }

    /// <summary>Diameter of the shaft. The check does not use it yet.</summary>
    [Figure(nameof(Unit.Millimetre), 0.5, 30, 3.175)]
    public double? ShaftDiameterMm { get; set; }

    /// <summary>Highest voltage printed.</summary>
    [Figure(nameof(Unit.Volt), 1, 100, 12.6)]
    public double? MaxVoltageV { get; set; }

    /// <summary>Highest rotational speed printed.</summary>
    [Figure(nameof(Unit.Rpm), 100, 300000, 50000)]
    public double? MaxSpeedRpm { get; set; }

    /// <summary>Continuous motor current printed.</summary>
    [Figure(nameof(Unit.Ampere), 0.1, 1000, 40)]
    public double? ContinuousCurrentA { get; set; }

    /// <summary>Burst motor current printed.</summary>
    [Figure(nameof(Unit.Ampere), 0.1, 5000, 90)]
    public double? BurstCurrentA { get; set; }

    /// <summary>For how long the burst is allowed.</summary>
    [Figure(nameof(Unit.Second), 0.01, 3600, 10)]
    public double? BurstSeconds { get; set; }

    /// <summary>Insulation class of the winding (IEC 60085).</summary>
    [Word<InsulationClass>("B")]
    public string? InsulationClass { get; set; }

    /// <summary>How much hotter the hottest spot of the winding is than its mean.</summary>
    [Figure(nameof(Unit.Kelvin), 0, 50, 10)]
    public double? HotSpotAllowanceK { get; set; }

    /// <summary>Highest temperature of the magnets; above it they lose strength for good.</summary>
    [Figure(nameof(Unit.Celsius), 40, 400, 120)]
    public double? MagnetMaxC { get; set; }

    /// <summary>Change of magnet strength with temperature, as a share per kelvin.</summary>
    [Figure(nameof(Unit.PerKelvin), -0.01, 0, -0.0011)]
    public double? MagnetCoefficientPerK { get; set; }

    /// <summary>What the motor is bolted to; a metal mount takes heat away.</summary>
    [Word<MotorMount>("metal")]
    public string? Mount { get; set; }

    /// <summary>Whether a fan blows over it.</summary>
    [Flag(false)]
    public bool? Fan { get; set; }

    /// <summary>Whether the motor or its compartment is sealed.</summary>
    [Flag(false)]
    public bool? Sealed { get; set; }

    /// <summary>How unevenly a locked winding heats, as a factor on its heat.</summary>
    [Figure(nameof(Unit.One), 1, 5, 1.5)]
    public double? LockedHeatFactor { get; set; }

    /// <summary>Thermal figures, where they were measured.</summary>
    public MotorThermalRequest? Thermal { get; set; }
}

/// <summary>A no-load measurement: the current drawn without load at a voltage.</summary>
public sealed class NoLoadPointRequest
{
    /// <summary>Voltage at the motor; the pack's nominal voltage when left out.</summary>
    [Figure(nameof(Unit.Volt), 0.1, 100, 7.4)]
    public double? VoltageV { get; set; }

    /// <summary>Current drawn without load.</summary>
    [Must]
    [Figure(nameof(Unit.Ampere), 0.001, 500, 2.4)]
    public double? CurrentA { get; set; }
}

/// <summary>Thermal figures of a motor.</summary>
public sealed class MotorThermalRequest
{
    /// <summary>Thermal resistance from winding to case.</summary>
    [Figure(nameof(Unit.KelvinPerWatt), 0.001, 1000, 0.9)]
    public double? WindingToCaseKPerW { get; set; }

    /// <summary>Thermal resistance from case to the air around.</summary>
    [Figure(nameof(Unit.KelvinPerWatt), 0.001, 1000, 6.5)]
    public double? CaseToAmbientKPerW { get; set; }

    /// <summary>Heat capacity of the winding, or of a brushed motor's rotor.</summary>
    [Figure(nameof(Unit.JoulePerKelvin), 0.01, 100000, 13)]
    public double? WindingJPerK { get; set; }

    /// <summary>Heat capacity of the case and all that follows its temperature.</summary>
    [Figure(nameof(Unit.JoulePerKelvin), 0.01, 100000, 60)]
    public double? CaseJPerK { get; set; }

    /// <summary>Heat capacity of the copper alone, which takes a locked motor's heat at first.</summary>
    [Figure(nameof(Unit.JoulePerKelvin), 0.01, 100000, 13)]
    public double? CopperJPerK { get; set; }
}
