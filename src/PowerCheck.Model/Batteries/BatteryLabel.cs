namespace PowerCheck.Model.Batteries;

/// <summary>What a pack's label says, in SI; null is what it does not say.</summary>
public sealed record BatteryLabel
{
    /// <summary>Cell chemistry.</summary>
    public Chemistry? Chemistry { get; init; }

    /// <summary>Cells in series.</summary>
    public int? SeriesCells { get; init; }

    /// <summary>Cells in parallel.</summary>
    public int? ParallelCells { get; init; }

    /// <summary>Capacity of the whole pack [C].</summary>
    public double? CapacityCoulomb { get; init; }

    /// <summary>Continuous rate printed [1/h].</summary>
    public double? ContinuousC { get; init; }

    /// <summary>Burst rate printed [1/h].</summary>
    public double? BurstC { get; init; }

    /// <summary>For how long the burst is allowed [s].</summary>
    public double? BurstS { get; init; }

    /// <summary>Resistance of one cell as a charger or meter reads it (1 s or less, 25 °C) [Ω].</summary>
    public double? CellResistanceOhm { get; init; }

    /// <summary>Resistance of the connector [Ω].</summary>
    public double? ConnectorOhm { get; init; }

    /// <summary>State of wear.</summary>
    public PackCondition? Condition { get; init; }

    /// <summary>Temperature of the pack [°C].</summary>
    public double? TemperatureC { get; init; }

    /// <summary>Mass [kg].</summary>
    public double? MassKg { get; init; }

    /// <summary>Growth of the resistance under lasting load over what a charger reads, 1 or more.</summary>
    public double? LastingResistanceFactor { get; init; }

    /// <summary>Temperature constant of the resistance [K], as in exp[B·(1/T − 1/298.15)].</summary>
    public double? ResistanceTemperatureConstantK { get; init; }

    /// <summary>Thermal resistance pack to ambient [K/W].</summary>
    public double? PackToAmbientKPerW { get; init; }

    /// <summary>Charge kept back at the end of a run, 0 to 1.</summary>
    public double? ReserveShare { get; init; }

    /// <summary>Peukert's exponent, 1 or more: how the capacity shrinks with the current.</summary>
    public double? PeukertExponent { get; init; }

    /// <summary>Time in which the capacity was rated [s].</summary>
    public double? RatedS { get; init; }

    /// <summary>Highest cell temperature [°C].</summary>
    public double? MaxTemperatureC { get; init; }
}

/// <summary>Cell chemistry.</summary>
public enum Chemistry
{
    /// <summary>Lithium polymer, 4.20 V full.</summary>
    Lipo,

    /// <summary>High-voltage lithium polymer, 4.35 V full.</summary>
    Lihv,

    /// <summary>Lithium ion, round cells, 4.20 V full.</summary>
    Liion,

    /// <summary>Lithium iron phosphate, 3.65 V full.</summary>
    Lifepo4,

    /// <summary>Nickel-metal hydride, 1.40 V full.</summary>
    Nimh,
}

/// <summary>State of wear of a pack.</summary>
public enum PackCondition
{
    /// <summary>As sold.</summary>
    New,

    /// <summary>A season old.</summary>
    Used,

    /// <summary>Near its end.</summary>
    Worn,
}
