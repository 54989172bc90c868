namespace PowerCheck.Model.Batteries;

/// <summary>A pack, every figure filled in (M2). NaN is not known.</summary>
public sealed record Battery
{
    /// <summary>Kelvin of 25 °C, at which resistances are read.</summary>
    private const double ReadingK = 298.15;

    /// <summary>Cell chemistry.</summary>
    public required Chemistry Chemistry { get; init; }

    /// <summary>Cells in series.</summary>
    public required double SeriesCells { get; init; }

    /// <summary>Cells in parallel.</summary>
    public required double ParallelCells { get; init; }

    /// <summary>Capacity of the pack as labelled [C].</summary>
    public required double LabelCapacityCoulomb { get; init; }

    /// <summary>Share of the labelled capacity that wear has left.</summary>
    public required double CapacityShare { get; init; }

    /// <summary>Resistance of one cell for a second or less, 25 °C, wear included [Ω].</summary>
    public required double CellResistanceOhm { get; init; }

    /// <summary>Whether the cell's resistance was given.</summary>
    public required bool CellResistanceGiven { get; init; }

    /// <summary>Lasting over short resistance.</summary>
    public required double LastingFactor { get; init; }

    /// <summary>Temperature constant of the resistance [K].</summary>
    public required double ResistanceTemperatureConstantK { get; init; }

    /// <summary>Resistance of the connector [Ω].</summary>
    public required double ConnectorOhm { get; init; }

    /// <summary>Temperature of the pack at the start [°C].</summary>
    public required double TemperatureC { get; init; }

    /// <summary>Continuous rate printed [1/h].</summary>
    public required double ContinuousC { get; init; }

    /// <summary>Burst rate printed [1/h].</summary>
    public required double BurstC { get; init; }

    /// <summary>For how long the burst rate is allowed [s].</summary>
    public required double BurstS { get; init; }

    /// <summary>Heat capacity [J/K].</summary>
    public required double HeatJPerK { get; init; }

    /// <summary>Thermal resistance pack to ambient [K/W].</summary>
    public required double PackToAmbientKPerW { get; init; }

    /// <summary>Highest cell temperature [°C].</summary>
    public required double LimitC { get; init; }

    /// <summary>Charge kept back at the end of a run, 0 to 1.</summary>
    public required double ReserveShare { get; init; }

    /// <summary>Peukert's exponent.</summary>
    public required double PeukertExponent { get; init; }

    /// <summary>Time in which the capacity was rated [s].</summary>
    public required double RatedS { get; init; }

    /// <summary>What is typical of the chemistry.</summary>
    public CellData Cell => CellData.For(Chemistry);

    /// <summary>Capacity left by wear [C].</summary>
    public double CapacityCoulomb => LabelCapacityCoulomb * CapacityShare;

    /// <summary>Capacity of one cell as labelled [C].</summary>
    public double CellCapacityCoulomb => LabelCapacityCoulomb / ParallelCells;

    /// <summary>Full-charge voltage [V].</summary>
    public double FullV => SeriesCells * Cell.FullV;

    /// <summary>Nominal voltage [V].</summary>
    public double NominalV => SeriesCells * Cell.NominalV;

    /// <summary>Resistance for a second or less: stall, jam, punch [Ω].</summary>
    public double ShortResistanceOhm => Resistance(1);

    /// <summary>Resistance under lasting load: creep, climb, hold, course [Ω].</summary>
    public double LastingResistanceOhm => Resistance(LastingFactor);

    /// <summary>Current that empties the label's capacity in an hour [A].</summary>
    public double OneCurrentA => LabelCapacityCoulomb / 3600;

    /// <summary>Open-circuit voltage of the pack [V].</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    public double OpenCircuitV(double charge) => SeriesCells * OpenCircuit.CellV(Chemistry, charge);

    /// <summary>
    /// Time that the pack gives a current over all of its charge [s], Peukert with the rated time:
    /// t = H·(Q/(I·H))^k. An exponent of 1 is plain charge over current.
    /// </summary>
    /// <param name="currentA">Battery current [A], above 0.</param>
    public double DischargeS(double currentA) =>
        RatedS * Math.Pow(CapacityCoulomb / (currentA * RatedS), PeukertExponent);

    // cell × series / parallel × exp[B·(1/T − 1/298.15)] + connector
    private double Resistance(double factor)
    {
        var warmth = Math.Exp(
            ResistanceTemperatureConstantK * ((1 / (TemperatureC + 273.15)) - (1 / ReadingK))
        );
        return (CellResistanceOhm * factor * warmth * SeriesCells / ParallelCells) + ConnectorOhm;
    }
}
