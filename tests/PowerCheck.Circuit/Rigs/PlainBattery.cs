namespace PowerCheck.Circuit.Rigs;

/// <summary>A pack as plain figures.</summary>
public sealed record PlainBattery
{
    /// <summary>Cell chemistry.</summary>
    public required PlainChemistry Chemistry { get; init; }

    /// <summary>Open-circuit voltages of one cell, from <see cref="CellVoltages"/>.</summary>
    public CellVoltages Cell => CellVoltages.Of(Chemistry);

    /// <summary>Cells in series.</summary>
    public required int SeriesCells { get; init; }

    /// <summary>Cells in parallel.</summary>
    public required int ParallelCells { get; init; }

    /// <summary>Capacity of the whole pack.</summary>
    public required double CapacityMah { get; init; }

    /// <summary>Continuous rate printed.</summary>
    public required double ContinuousC { get; init; }

    /// <summary>Resistance of one cell as a charger reads it (1 s or less, 25 °C).</summary>
    public required double CellResistanceMilliohm { get; init; }

    /// <summary>Growth of that resistance under lasting load.</summary>
    public required double LastingResistanceFactor { get; init; }

    /// <summary>B of exp[B·(1/T − 1/298.15)].</summary>
    public required double ResistanceTemperatureConstantK { get; init; }

    /// <summary>Resistance of the connector.</summary>
    public required double ConnectorMilliohm { get; init; }

    /// <summary>Temperature of the pack at the start.</summary>
    public required double TemperatureC { get; init; }

    /// <summary>Mass.</summary>
    public required double MassG { get; init; }

    /// <summary>Thermal resistance to the air.</summary>
    public required double PackToAmbientKPerW { get; init; }

    /// <summary>Highest cell temperature.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Charge kept back at the end of a run.</summary>
    public required double ReserveShare { get; init; }

    /// <summary>Peukert's exponent.</summary>
    public required double PeukertExponent { get; init; }

    /// <summary>Time in which the capacity was rated.</summary>
    public required double RatedHours { get; init; }
}

/// <summary>Cell chemistry.</summary>
public enum PlainChemistry
{
    /// <summary>Lithium polymer.</summary>
    Lipo,

    /// <summary>High-voltage lithium polymer.</summary>
    Lihv,

    /// <summary>Round lithium-ion cells.</summary>
    Liion,

    /// <summary>Lithium iron phosphate.</summary>
    Lifepo4,

    /// <summary>Nickel-metal hydride.</summary>
    Nimh,
}

/// <summary>Open-circuit voltage of one cell at the three charges at which the load cases stand.</summary>
/// <param name="ReserveV">At 20 % charge.</param>
/// <param name="HalfV">At 50 % charge.</param>
/// <param name="FullV">Full.</param>
public sealed record CellVoltages(double ReserveV, double HalfV, double FullV)
{
    /// <summary>
    /// The figures of a chemistry. Pouch and iron-phosphate cells from the half-cell fits of PyBaMM's parameter sets
    /// Marquis2019 and Prada2013; the round cell from the Modelica Standard Library's ExampleData, as shares of 4.2 V; the
    /// high-voltage cell is the pouch cell stretched to 4.35 V, and the hydride cell is drawn by hand: both are assumed.
    /// </summary>
    /// <param name="chemistry">The chemistry.</param>
    public static CellVoltages Of(PlainChemistry chemistry) =>
        chemistry switch
        {
            PlainChemistry.Lipo => new(3.693, 3.756, 4.200),
            PlainChemistry.Lihv => new(3.693 * 4.35 / 4.2, 3.756 * 4.35 / 4.2, 4.35),
            PlainChemistry.Liion => new(0.786 * 4.2, 0.835 * 4.2, 4.2),
            PlainChemistry.Lifepo4 => new(3.169, 3.266, 3.598),
            PlainChemistry.Nimh => new(1.24, 1.28, 1.40),
            _ => throw new ArgumentOutOfRangeException(nameof(chemistry)),
        };
}
