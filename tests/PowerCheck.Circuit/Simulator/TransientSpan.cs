namespace PowerCheck.Circuit.Simulator;

/// <summary>How a transient analysis runs.</summary>
/// <param name="StopS">How long [s].</param>
/// <param name="StepS">Longest step [s].</param>
public sealed record TransientSpan(double StopS, double StepS)
{
    /// <summary>From when on to record [s].</summary>
    public double RecordFromS { get; init; }

    /// <summary>How exactly each step is solved, relatively.</summary>
    public double RelativeTolerance { get; init; } = 1e-8;

    /// <summary>
    /// Whether it starts from the initial conditions of its capacitors and inductors (<c>ic=</c>); else from the
    /// operating point, in which a network of heat is already settled.
    /// </summary>
    public bool FromInitial { get; init; } = true;
}
