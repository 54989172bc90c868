namespace PowerCheck.Circuit.Rigs;

/// <summary>A motor as plain figures.</summary>
public sealed record PlainMotor
{
    /// <summary>Whether it has a commutator; else the controller commutates.</summary>
    public required bool Brushed { get; init; }

    /// <summary>Whether it reads the rotor's position.</summary>
    public required bool Sensored { get; init; }

    /// <summary>Whether the rotor turns around the stator (brushless).</summary>
    public required bool OuterRotor { get; init; }

    /// <summary>Whether the magnets are neodymium-iron-boron; else hard ferrite.</summary>
    public required bool Neodymium { get; init; }

    /// <summary>No-load speed per volt.</summary>
    public required double KvRpmPerVolt { get; init; }

    /// <summary>Resistance terminal to terminal, at <see cref="ResistanceTemperatureC"/>.</summary>
    public required double ResistanceMilliohm { get; init; }

    /// <summary>Temperature at which the resistance was measured.</summary>
    public required double ResistanceTemperatureC { get; init; }

    /// <summary>Inductance terminal to terminal; null where it is not told, and no ripple counts.</summary>
    public required double? InductanceMicrohenry { get; init; }

    /// <summary>Drop of both brushes.</summary>
    public required double BrushDropV { get; init; }

    /// <summary>One or two no-load points.</summary>
    public required IReadOnlyList<PlainNoLoadPoint> NoLoadPoints { get; init; }

    /// <summary>Share of a single no-load point's current that is left at standstill.</summary>
    public required double NoLoadStandstillShare { get; init; }

    /// <summary>Pole pairs.</summary>
    public required int PolePairs { get; init; }

    /// <summary>Mass.</summary>
    public required double MassG { get; init; }

    /// <summary>Can diameter.</summary>
    public required double CanDiameterMm { get; init; }

    /// <summary>Can length.</summary>
    public required double CanLengthMm { get; init; }

    /// <summary>Highest temperature of the insulation's class: 105, 120, 130, 155 or 180.</summary>
    public required double InsulationC { get; init; }

    /// <summary>Distance of the mean winding below the hottest spot.</summary>
    public required double HotSpotAllowanceK { get; init; }

    /// <summary>Highest magnet temperature.</summary>
    public required double MagnetMaxC { get; init; }

    /// <summary>Change of the magnet's strength, negative.</summary>
    public required double MagnetCoefficientPerK { get; init; }

    /// <summary>Unevenness of the heat in a locked winding, 1 or more.</summary>
    public required double LockedHeatFactor { get; init; }

    /// <summary>Thermal resistance winding to case.</summary>
    public required double WindingToCaseKPerW { get; init; }

    /// <summary>Thermal resistance case to air.</summary>
    public required double CaseToAmbientKPerW { get; init; }

    /// <summary>Heat capacity of the winding, or of a brushed motor's rotor.</summary>
    public required double WindingJPerK { get; init; }

    /// <summary>Heat capacity of the case.</summary>
    public required double CaseJPerK { get; init; }

    /// <summary>Heat capacity of the copper alone.</summary>
    public required double CopperJPerK { get; init; }
}

/// <summary>A no-load measurement.</summary>
/// <param name="VoltageV">Voltage at the motor.</param>
/// <param name="CurrentA">Current drawn.</param>
public readonly record struct PlainNoLoadPoint(double VoltageV, double CurrentA);
