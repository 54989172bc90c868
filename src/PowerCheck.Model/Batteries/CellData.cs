namespace PowerCheck.Model.Batteries;

/// <summary>What is typical of a chemistry (M2). Voltages: source cells; the rest assumed.</summary>
/// <param name="FullV">Full-charge voltage [V].</param>
/// <param name="NominalV">Nominal voltage [V].</param>
/// <param name="CutoffV">Lowest voltage under load [V].</param>
/// <param name="MilliohmAmpereHour">Short resistance of a cell times its capacity [mΩ·Ah].</param>
/// <param name="GramPerAmpereHour">Mass of a cell over its capacity [g/Ah].</param>
/// <param name="Lithium">Whether it is a lithium chemistry.</param>
public sealed record CellData(
    double FullV,
    double NominalV,
    double CutoffV,
    double MilliohmAmpereHour,
    double GramPerAmpereHour,
    bool Lithium
)
{
    private static readonly CellData[] Table =
    [
        new(4.20, 3.70, 3.20, 15, 24, true),
        new(4.35, 3.80, 3.20, 15, 24, true),
        new(4.20, 3.60, 2.80, 60, 17, true),
        new(3.65, 3.20, 2.50, 20, 30, true),
        new(1.40, 1.20, 0.90, 22, 15, false),
    ];

    /// <summary>Short resistance of a cell times its capacity [Ω·C].</summary>
    public double ResistanceOhmCoulomb => MilliohmAmpereHour * 1e-3 * 3600;

    /// <summary>Resistance under lasting load over the short one.</summary>
    public double LastingFactor => Lithium ? 1.4 : 1.2;

    /// <summary>Mass of a cell over its capacity [kg/C].</summary>
    public double MassKgPerCellCoulomb => GramPerAmpereHour * 1e-3 / 3600;

    /// <summary>How capacity shrinks with current.</summary>
    public double PeukertExponent => Lithium ? 1.02 : 1.08;

    /// <summary>The data of a chemistry.</summary>
    /// <param name="chemistry">The chemistry.</param>
    public static CellData For(Chemistry chemistry) => Table[(int)chemistry];
}
