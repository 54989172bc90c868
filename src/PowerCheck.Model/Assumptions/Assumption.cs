using PowerCheck.Model.Units;

namespace PowerCheck.Model.Assumptions;

/// <summary>A figure or word that the caller left out and the model filled in.</summary>
/// <param name="Path">The member that would have given it, such as "motor.resistanceMilliohm".</param>
/// <param name="Value">The figure in SI; NaN where the assumption is a word.</param>
/// <param name="Word">The word; null where the assumption is a figure.</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="Spread">How wide the figure may lie, 95 %.</param>
/// <param name="Basis">Where it comes from, in plain words, with 'assumed' where it is a default of ours.</param>
/// <param name="Source">Key of the source it rests on; see <see cref="Sources.SourceList"/>.</param>
public sealed record Assumption(
    string Path,
    double Value,
    string? Word,
    Unit Unit,
    Spread Spread,
    string Basis,
    string Source
);
