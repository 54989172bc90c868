namespace PowerCheck.Model.Motors;

/// <summary>What a motor's box says, in SI; null is what it does not say.</summary>
public sealed record MotorLabel
{
    /// <summary>Brushed or brushless.</summary>
    public MotorKind? Kind { get; init; }

    /// <summary>Whether it has a rotor position sensor.</summary>
    public bool? Sensored { get; init; }

    /// <summary>Inner or outer rotor (brushless).</summary>
    public RotorLayout? Rotor { get; init; }

    /// <summary>Magnet material.</summary>
    public MagnetMaterial? Magnet { get; init; }

    /// <summary>No-load speed per volt, KV [rad/(s·V)], above 0.</summary>
    public double? SpeedConstantRadPerSPerV { get; init; }

    /// <summary>Turns of the winding, by which such motors are often sold.</summary>
    public double? Turns { get; init; }

    /// <summary>Armature or stator slots: 3 or 5 where turns are to be read.</summary>
    public int? Slots { get; init; }

    /// <summary>Resistance terminal to terminal [Ω] at <see cref="ResistanceTemperatureC"/>.</summary>
    public double? ResistanceOhm { get; init; }

    /// <summary>Temperature at which the resistance was measured [°C].</summary>
    public double? ResistanceTemperatureC { get; init; }

    /// <summary>Measured no-load points: current drawn at a voltage, unloaded.</summary>
    public IReadOnlyList<NoLoadPoint> NoLoadPoints { get; init; } = [];

    /// <summary>Share of the no-load current that is left at standstill, 0 to 1.</summary>
    public double? NoLoadStandstillShare { get; init; }

    /// <summary>Voltage drop of both brushes [V].</summary>
    public double? BrushDropV { get; init; }

    /// <summary>Inductance terminal to terminal [H].</summary>
    public double? InductanceH { get; init; }

    /// <summary>Pole pairs of the rotor (brushless).</summary>
    public int? PolePairs { get; init; }

    /// <summary>Mass [kg].</summary>
    public double? MassKg { get; init; }

    /// <summary>Can diameter [m].</summary>
    public double? CanDiameterM { get; init; }

    /// <summary>Can length [m].</summary>
    public double? CanLengthM { get; init; }

    /// <summary>Shaft diameter [m].</summary>
    public double? ShaftDiameterM { get; init; }

    /// <summary>Highest voltage printed [V].</summary>
    public double? MaxVoltageV { get; init; }

    /// <summary>Highest rotational speed printed [rad/s].</summary>
    public double? MaxSpeedRadPerS { get; init; }

    /// <summary>Continuous motor current printed [A].</summary>
    public double? ContinuousCurrentA { get; init; }

    /// <summary>Burst motor current printed [A].</summary>
    public double? BurstCurrentA { get; init; }

    /// <summary>For how long the burst is allowed [s].</summary>
    public double? BurstS { get; init; }

    /// <summary>Insulation class of the winding.</summary>
    public InsulationClass? Insulation { get; init; }

    /// <summary>Mean winding temperature's distance below the hottest spot [K].</summary>
    public double? HotSpotAllowanceK { get; init; }

    /// <summary>Highest magnet temperature [°C].</summary>
    public double? MagnetMaxC { get; init; }

    /// <summary>Change of magnet strength with temperature [1/K], negative.</summary>
    public double? MagnetCoefficientPerK { get; init; }

    /// <summary>What the motor is bolted to.</summary>
    public MotorMount? Mount { get; init; }

    /// <summary>Whether a fan blows over it.</summary>
    public bool? Fan { get; init; }

    /// <summary>Whether the motor or its compartment is sealed.</summary>
    public bool? Sealed { get; init; }

    /// <summary>Unevenness of the heat in a locked winding, 1 or more.</summary>
    public double? LockedHeatFactor { get; init; }

    /// <summary>Thermal resistance winding to case [K/W].</summary>
    public double? WindingToCaseKPerW { get; init; }

    /// <summary>Thermal resistance case to ambient [K/W].</summary>
    public double? CaseToAmbientKPerW { get; init; }

    /// <summary>Heat capacity of the winding or brushed rotor [J/K].</summary>
    public double? WindingJPerK { get; init; }

    /// <summary>Heat capacity of the case [J/K].</summary>
    public double? CaseJPerK { get; init; }

    /// <summary>Heat capacity of the copper alone [J/K], which takes the heat of a locked motor at first.</summary>
    public double? CopperJPerK { get; init; }
}

/// <summary>A no-load measurement.</summary>
/// <param name="VoltageV">Voltage at the motor [V], above 0; null for the pack's nominal voltage.</param>
/// <param name="CurrentA">Current drawn without load [A], above 0.</param>
public readonly record struct NoLoadPoint(double? VoltageV, double CurrentA);

/// <summary>How a motor commutates.</summary>
public enum MotorKind
{
    /// <summary>Mechanical commutator.</summary>
    Brushed,

    /// <summary>Commutated by the controller.</summary>
    Brushless,
}

/// <summary>Where a brushless motor's rotor turns.</summary>
public enum RotorLayout
{
    /// <summary>Inside the stator.</summary>
    Inner,

    /// <summary>Around the stator.</summary>
    Outer,
}

/// <summary>What the magnets are made of.</summary>
public enum MagnetMaterial
{
    /// <summary>Hard ferrite.</summary>
    Ferrite,

    /// <summary>Neodymium-iron-boron.</summary>
    Ndfeb,
}

/// <summary>Insulation class of a winding (IEC 60085).</summary>
public enum InsulationClass
{
    /// <summary>105 °C.</summary>
    A,

    /// <summary>120 °C.</summary>
    E,

    /// <summary>130 °C.</summary>
    B,

    /// <summary>155 °C.</summary>
    F,

    /// <summary>180 °C.</summary>
    H,
}

/// <summary>What a motor is bolted to.</summary>
public enum MotorMount
{
    /// <summary>A plastic mount: no heat leaves through it.</summary>
    Plastic,

    /// <summary>A metal mount, which takes heat away.</summary>
    Metal,
}
