namespace PowerCheck.Model.Batteries;

/// <summary>What is typical of a chemistry (M2). Voltages: source cells; the rest assumed.</summary>
/// <param name="FullV">Full-charge voltage [V].</param>
/// <param name="NominalV">Nominal voltage [V].</param>
/// <param name="CutoffV">Lowest voltage under load [V].</param>
/// <param name="ResistanceOhmCoulomb">Short resistance of a cell times its capacity [Ω·C].</param>
/// <param name="LastingFactor">Resistance under lasting load over the short one.</param>
/// <param name="MassKgPerCellCoulomb">Mass of a cell over its capacity [kg/C].</param>
/// <param name="PeukertExponent">How capacity shrinks with current.</param>
/// <param name="Lithium">Whether it is a lithium chemistry.</param>
public sealed record CellData(
    double FullV,
    double NominalV,
    double CutoffV,
    double ResistanceOhmCoulomb,
    double LastingFactor,
    double MassKgPerCellCoulomb,
    double PeukertExponent,
    bool Lithium
)
{
    private static readonly CellData[] Table =
    [
        Of(4.20, 3.70, 3.20, 15, 24, true),
        Of(4.35, 3.80, 3.20, 15, 24, true),
        Of(4.20, 3.60, 2.80, 60, 17, true),
        Of(3.65, 3.20, 2.50, 20, 30, true),
        Of(1.40, 1.20, 0.90, 22, 15, false),
    ];

    /// <summary>The data of a chemistry.</summary>
    /// <param name="chemistry">The chemistry.</param>
    public static CellData For(Chemistry chemistry) => Table[(int)chemistry];

    private static CellData Of(
        double fullV,
        double nominalV,
        double cutoffV,
        double milliohmAmpereHour,
        double gramPerAmpereHour,
        bool lithium
    ) =>
        new(
            fullV,
            nominalV,
            cutoffV,
            milliohmAmpereHour * 1e-3 * 3600,
            lithium ? 1.4 : 1.2,
            gramPerAmpereHour * 1e-3 / 3600,
            lithium ? 1.02 : 1.08,
            lithium
        );
}
