namespace PowerCheck.Model.Findings;

/// <summary>A kind of finding, as the catalogue lists it.</summary>
/// <param name="Code">Its code, part and limit joined by a dot; never renamed.</param>
/// <param name="Part">The part that it is about.</param>
/// <param name="Severity">What may happen to people.</param>
/// <param name="Effect">What a passed limit leads to.</param>
/// <param name="Meaning">What is compared with what, in plain words.</param>
/// <param name="LimitFrom">Where the limit comes from.</param>
/// <param name="Consequence">What it means for the builder when the limit is passed or close.</param>
/// <param name="Judged">Whether it counts for the verdict; the others only caution.</param>
/// <param name="Since">The model version that first had it.</param>
/// <param name="Sources">Keys of the sources it rests on.</param>
public sealed record FindingKind(
    string Code,
    string Part,
    Severity Severity,
    Effect Effect,
    string Meaning,
    string LimitFrom,
    string Consequence,
    bool Judged,
    string Since,
    IReadOnlyList<string> Sources
)
{
    /// <summary>Kinds are told apart by their code.</summary>
    /// <param name="other">Another kind.</param>
    public bool Equals(FindingKind? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Code);
}
