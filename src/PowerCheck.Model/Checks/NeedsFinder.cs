using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Checks;

/// <summary>
/// Finds what an unknown outcome needs: which missing figure would tell, and at which value the outcome turns (M13).
/// </summary>
/// <remarks>
/// Each missing figure is put in over its plausible range and the rig is inspected again; where one figure alone makes the
/// outcome known, the value at which the limit is just met is bracketed.
/// </remarks>
internal static class NeedsFinder
{
    private const int Samples = 17;

    /// <summary>The findings, with the needs of those that are unknown.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="unknowns">What is not known.</param>
    /// <param name="findings">The findings.</param>
    public static IReadOnlyList<Finding> Fill(
        RigLabel label,
        IReadOnlyList<Unknown> unknowns,
        IReadOnlyList<Finding> findings
    )
    {
        if (unknowns.Count == 0 || !findings.Any(IsOpen))
        {
            return findings;
        }

        var trials = unknowns.Select(unknown => new Trial(label, unknown)).ToArray();
        return [.. findings.Select(finding => IsOpen(finding) ? Fill(finding, trials) : finding)];
    }

    private static bool IsOpen(Finding finding) =>
        finding is { Outcome: Outcome.Unknown, Needs.Count: 0 };

    private static Finding Fill(Finding finding, IReadOnlyList<Trial> trials)
    {
        var alone = trials.Select(trial => trial.Need(finding)).OfType<Need>().ToArray();
        Need[] needs =
            alone.Length > 0
                ? alone
                :
                [
                    .. trials.Select(trial => new Need(
                        trial.Unknown.Path,
                        trial.Unknown.Unit,
                        double.NaN,
                        false
                    )),
                ];
        var turning = needs.FirstOrDefault(need => !double.IsNaN(need.Threshold));
        return finding with
        {
            Needs = needs,
            NeedsAll = alone.Length == 0,
            Sentence = it =>
                turning is null
                    ? finding.Sentence(it)
                    : $"{finding.Sentence(it)[..^1]}; it holds with {turning.Path} of at {(turning.HoldsBelow ? "most" : "least")} "
                        + $"{Say.Figure(turning.Threshold, turning.Unit)}.",
        };
    }

    /// <summary>One missing figure, put in over its plausible range.</summary>
    private sealed class Trial(RigLabel label, Unknown unknown)
    {
        private readonly Dictionary<double, IReadOnlyList<Finding>> seen = [];

        public Unknown Unknown => unknown;

        /// <summary>What this figure alone would tell; null when it does not make the outcome known.</summary>
        /// <remarks>
        /// A threshold is only given where the outcome turns once: on one side of it the limit holds throughout.
        /// </remarks>
        public Need? Need(Finding finding)
        {
            var values = Values();
            var holds = values.Select(value => Holds(finding, value)).ToArray();
            if (values.All(value => double.IsNaN(Close(finding, value))))
            {
                return null;
            }

            var turns = Enumerable.Range(1, values.Length - 1).Where(n => holds[n] != holds[n - 1]);
            return turns.ToArray() is [var turn]
                ? new(
                    unknown.Path,
                    unknown.Unit,
                    Threshold(finding, values[turn - 1], values[turn], holds[0]),
                    holds[0]
                )
                : new(unknown.Path, unknown.Unit, double.NaN, false);
        }

        private bool Counted => unknown.Unit == Unit.Cells;

        private double[] Values()
        {
            if (Counted)
            {
                return
                [
                    .. Enumerable
                        .Range((int)unknown.Low, (int)(unknown.High - unknown.Low) + 1)
                        .Select(n => (double)n),
                ];
            }

            var ratio = Math.Pow(unknown.High / unknown.Low, 1.0 / (Samples - 1));
            return [.. Enumerable.Range(0, Samples).Select(n => unknown.Low * Math.Pow(ratio, n))];
        }

        private bool Holds(Finding finding, double value) =>
            Thresholds.Outcome(Close(finding, value)) == Outcome.Holds;

        // The last value that surely holds: a count, or a bisection that stays on the side that holds.
        private double Threshold(Finding finding, double from, double to, bool holdsBelow)
        {
            var (inside, outside) = holdsBelow ? (from, to) : (to, from);
            for (var n = 0; n < 9 && !Counted; n++)
            {
                var middle = Math.Sqrt(inside * outside);
                (inside, outside) = Holds(finding, middle) ? (middle, outside) : (inside, middle);
            }

            return Rounded(inside, holdsBelow);
        }

        // Three digits, towards the side that holds, so that the figure in the sentence keeps its promise.
        private double Rounded(double value, bool holdsBelow)
        {
            var shown = unknown.Unit.FromSi(value);
            return Counted ? value : unknown.Unit.ToSi(Rounding.Digits(shown, 3, up: !holdsBelow));
        }

        private double Close(Finding finding, double value)
        {
            if (!seen.TryGetValue(value, out var findings))
            {
                var complete = RigCompletion.Of(RigFigures.With(label, unknown.Path, value));
                seen[value] = findings = Judgement.Limits(complete.Inspect());
            }

            return findings
                    .FirstOrDefault(f =>
                        f.Kind == finding.Kind
                        && string.Equals(f.LoadCase, finding.LoadCase, StringComparison.Ordinal)
                    )
                    ?.Severeness
                ?? double.NaN;
        }
    }
}
