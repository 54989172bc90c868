namespace PowerCheck.Model.Drivetrain;

/// <summary>The pack with its leads, as the controllers see it.</summary>
/// <param name="OpenCircuitV">Open-circuit voltage [V].</param>
/// <param name="ResistanceOhm">Resistance of cells, connector and leads [Ω].</param>
public readonly record struct Source(double OpenCircuitV, double ResistanceOhm)
{
    /// <summary>The most power that it can deliver at any voltage [W]: E²/(4·Rs).</summary>
    public double MaxPowerW => OpenCircuitV * OpenCircuitV / (4 * ResistanceOhm);

    /// <summary>What is left of it behind a current.</summary>
    /// <param name="currentA">The current [A].</param>
    public Source Behind(double currentA) =>
        this with
        {
            OpenCircuitV = Math.Max(0, OpenCircuitV - (ResistanceOhm * currentA)),
        };
}
