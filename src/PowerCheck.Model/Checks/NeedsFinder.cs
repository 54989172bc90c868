using MathNet.Numerics.RootFinding;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;

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
    private const int Samples = 9;

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
            Sentence = () =>
                turning is null
                    ? finding.Message
                    : $"{finding.Message[..^1]}; it holds with {turning.Path} {(turning.HoldsBelow ? "under" : "over")} "
                        + $"{Say.Figure(turning.Threshold, turning.Unit)}.",
        };
    }

    /// <summary>One missing figure, put in over its plausible range.</summary>
    private sealed class Trial(RigLabel label, Unknown unknown)
    {
        private readonly Dictionary<double, IReadOnlyList<Finding>> seen = [];

        public Unknown Unknown => unknown;

        /// <summary>What this figure alone would tell; null when it does not make the outcome known.</summary>
        public Need? Need(Finding finding)
        {
            var ratio = Math.Pow(unknown.High / unknown.Low, 1.0 / (Samples - 1));
            var from = unknown.Low;
            var close = Close(finding, from);
            if (double.IsNaN(close))
            {
                return null;
            }

            for (var n = 1; n < Samples; n++)
            {
                var to = unknown.Low * Math.Pow(ratio, n);
                var next = Close(finding, to);
                if ((close > 1) != (next > 1))
                {
                    return new(unknown.Path, unknown.Unit, Turn(finding, from, to), close <= 1);
                }

                (from, close) = (to, next);
            }

            return new(unknown.Path, unknown.Unit, double.NaN, false);
        }

        private double Turn(Finding finding, double from, double to)
        {
            double Past(double log) =>
                Close(finding, Math.Exp(log)) is var close && double.IsNaN(close)
                    ? 1
                    : Math.Clamp(close, -10, 10) - 1;
            return Brent.TryFindRoot(Past, Math.Log(from), Math.Log(to), 1e-4, 60, out var root)
                ? Math.Exp(root)
                : Math.Sqrt(from * to);
        }

        private double Close(Finding finding, double value)
        {
            if (!seen.TryGetValue(value, out var findings))
            {
                findings = Judgement.Inspect(
                    Check.Inspect(RigCompletion.Of(UnknownFill.With(label, unknown.Path, value)))
                );
                seen[value] = findings;
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
