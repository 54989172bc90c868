using PowerCheck.Api.Door;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of the battery pack.</summary>
public sealed class BatteryRequest
{
    /// <summary>What the caller calls it. Not used.</summary>
    [Text(120, "three-cell pack")]
    public string? Name { get; set; }

    /// <summary>Cell chemistry; lithium polymer when left out, and then listed as assumed.</summary>
    [Word<Chemistry>("lipo")]
    public string? Chemistry { get; set; }

    /// <summary>Cells in series.</summary>
    [Figure(nameof(Unit.Cells), 1, 14, 3)]
    public int? SeriesCells { get; set; }

    /// <summary>Cells in parallel.</summary>
    [Figure(nameof(Unit.Cells), 1, 20, 1)]
    public int? ParallelCells { get; set; }

    /// <summary>Capacity of the whole pack.</summary>
    [Figure(nameof(Unit.MilliampereHour), 50, 50000, 2200)]
    public double? CapacityMah { get; set; }

    /// <summary>Continuous discharge rate printed.</summary>
    [Figure(nameof(Unit.CRate), 0.1, 500, 35)]
    public double? ContinuousC { get; set; }

    /// <summary>Burst discharge rate printed.</summary>
    [Figure(nameof(Unit.CRate), 0.1, 1000, 70)]
    public double? BurstC { get; set; }

    /// <summary>For how long the burst is allowed.</summary>
    [Figure(nameof(Unit.Second), 0.01, 3600, 10)]
    public double? BurstSeconds { get; set; }

    /// <summary>Resistance of one cell as a charger shows it, at room temperature.</summary>
    [Figure(nameof(Unit.Milliohm), 0.01, 10000, 5)]
    public double? CellResistanceMilliohm { get; set; }

    /// <summary>Resistance of the pack's connector.</summary>
    [Figure(nameof(Unit.Milliohm), 0, 1000, 0.5)]
    public double? ConnectorMilliohm { get; set; }

    /// <summary>State of wear.</summary>
    [Word<PackCondition>("new")]
    public string? Condition { get; set; }

    /// <summary>Temperature of the pack at the start; that of the air when left out.</summary>
    [Figure(nameof(Unit.Celsius), -40, 80, 20)]
    public double? TemperatureC { get; set; }

    /// <summary>Mass.</summary>
    [Figure(nameof(Unit.Gram), 1, 100000, 190)]
    public double? MassG { get; set; }

    /// <summary>Growth of the resistance under lasting load over what a charger shows.</summary>
    [Figure(nameof(Unit.One), 1, 5, 1.4)]
    public double? LastingResistanceFactor { get; set; }

    /// <summary>How strongly the resistance grows in the cold: B in exp[B·(1/T − 1/298.15 K)].</summary>
    [Figure(nameof(Unit.Kelvin), 0, 10000, 2400)]
    public double? ResistanceTemperatureConstantK { get; set; }

    /// <summary>Thermal resistance from the pack to the air around.</summary>
    [Figure(nameof(Unit.KelvinPerWatt), 0.01, 1000, 8)]
    public double? PackToAmbientKPerW { get; set; }

    /// <summary>Share of the charge that is kept back at the end of a run.</summary>
    [Figure(nameof(Unit.One), 0, 0.9, 0.2)]
    public double? ReserveShare { get; set; }

    /// <summary>Peukert's exponent: how the capacity shrinks with the current.</summary>
    [Figure(nameof(Unit.One), 1, 2, 1.02)]
    public double? PeukertExponent { get; set; }

    /// <summary>Time of discharge in which the capacity was rated.</summary>
    [Figure(nameof(Unit.Hour), 0.05, 100, 5)]
    public double? RatedHours { get; set; }

    /// <summary>Highest temperature of the cells.</summary>
    [Figure(nameof(Unit.Celsius), 20, 150, 60)]
    public double? MaxTemperatureC { get; set; }
}
