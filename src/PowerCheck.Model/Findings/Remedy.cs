using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Findings;

/// <summary>What a single thing that the builder can change does to a limit (M14).</summary>
/// <param name="Path">The member that says it.</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="From">Its value now, SI.</param>
/// <param name="To">The nearest value found at which the limit holds, SI; NaN when none does.</param>
/// <param name="Verdict">The verdict on the rig with it; null when none does.</param>
/// <param name="Noun">What it is, such as "mass".</param>
/// <param name="Least">The smallest value tried, SI.</param>
/// <param name="Most">The largest value tried, SI.</param>
public sealed record Remedy(
    string Path,
    Unit Unit,
    double From,
    double To,
    Verdict? Verdict,
    string Noun,
    double Least,
    double Most
)
{
    /// <summary>What it does, in plain words.</summary>
    public string Message =>
        Verdict is { } verdict
            ? $"With the {Noun} at {Say.Figure(To, Unit)} instead of {Say.Figure(From, Unit)} this limit holds; "
                + $"the verdict is then {Words.Of(verdict)}."
            : $"No {Noun} from {Say.Figure(Least, Unit)} to {Say.Figure(Most, Unit)} makes this limit hold alone.";
}
