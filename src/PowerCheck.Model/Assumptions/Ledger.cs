using PowerCheck.Model.Units;

namespace PowerCheck.Model.Assumptions;

/// <summary>
/// The book of everything that the caller left out. Completing a rig goes through it, so that no default can be used
/// without being listed, and what cannot be assumed is listed as not known.
/// </summary>
/// <remarks>A figure that is not known is NaN inside the model and stays so in whatever depends on it.</remarks>
public sealed class Ledger
{
    private readonly List<Assumption> assumptions = [];
    private readonly List<Unknown> unknowns = [];

    /// <summary>What was assumed, in the order in which it was needed.</summary>
    public IReadOnlyList<Assumption> Assumptions => assumptions;

    /// <summary>What is not known and cannot be assumed.</summary>
    public IReadOnlyList<Unknown> Unknowns => unknowns;

    /// <summary>The given figure, or the assumed one, which is then listed.</summary>
    /// <param name="given">What the caller gave, SI; null when left out.</param>
    /// <param name="path">The member that gives it.</param>
    /// <param name="unit">The unit that the path's name ends in.</param>
    /// <param name="assumed">The default, SI. NaN is not listed: what it rests on is.</param>
    /// <param name="spread">Its spread.</param>
    /// <param name="basis">Where the default comes from.</param>
    /// <param name="source">Key of the source.</param>
    public double Figure(
        double? given,
        string path,
        Unit unit,
        double assumed,
        Spread spread,
        string basis,
        string source = "assumed"
    )
    {
        if (given is { } figure)
        {
            return figure;
        }

        if (!double.IsNaN(assumed))
        {
            assumptions.Add(new(path, assumed, null, unit, spread, basis, source));
        }

        return assumed;
    }

    /// <summary>The given word, or the assumed one, which is then listed.</summary>
    /// <typeparam name="T">The list of words.</typeparam>
    /// <param name="given">What the caller said; null when left out.</param>
    /// <param name="path">The member that says it.</param>
    /// <param name="assumed">The default.</param>
    /// <param name="basis">Where the default comes from.</param>
    /// <param name="source">Key of the source.</param>
    public T Word<T>(T? given, string path, T assumed, string basis, string source = "assumed")
        where T : struct
    {
        if (given is { } word)
        {
            return word;
        }

        assumptions.Add(
            new(path, double.NaN, Words.Of(assumed), Unit.One, Spread.None, basis, source)
        );
        return assumed;
    }

    /// <summary>The given figure, or NaN, which is then listed as not known.</summary>
    /// <param name="given">What the caller gave, SI; null when left out.</param>
    /// <param name="path">The member that gives it.</param>
    /// <param name="unit">The unit that the path's name ends in.</param>
    /// <param name="low">The lowest plausible figure, SI: where the search for a deciding value starts.</param>
    /// <param name="high">The highest plausible figure, SI.</param>
    public double Known(double? given, string path, Unit unit, double low, double high)
    {
        if (given is { } figure)
        {
            return figure;
        }

        unknowns.Add(new(path, unit, low, high));
        return double.NaN;
    }
}

/// <summary>A figure that was not given and that no default can stand for.</summary>
/// <param name="Path">The member that would give it.</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="Low">The lowest plausible figure, SI.</param>
/// <param name="High">The highest plausible figure, SI.</param>
public sealed record Unknown(string Path, Unit Unit, double Low, double High);
