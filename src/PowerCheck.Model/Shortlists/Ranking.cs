using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Shortlists;

/// <summary>Orders candidates for an open place.</summary>
internal static class Ranking
{
    /// <summary>Checks every candidate and puts the best first.</summary>
    /// <param name="candidates">The candidates.</param>
    /// <param name="fitted">The rig with the part that is fitted; null when none is.</param>
    /// <param name="part">The part.</param>
    /// <param name="order">What they are ordered by.</param>
    /// <param name="spread">How the spread of the figures is carried to the limits.</param>
    /// <param name="stop">Tells that nobody waits for it any more.</param>
    public static IReadOnlyList<Ranked> Of(
        IReadOnlyList<Candidate> candidates,
        RigLabel? fitted,
        SoughtPart part,
        ShortlistOrder order,
        SpreadMethod spread,
        CancellationToken stop
    )
    {
        var ordered = candidates
            .Select(candidate =>
                (
                    Candidate: candidate,
                    Result: Check.Run(candidate.Rig, spread, remedies: false, stop)
                )
            )
            .OrderBy(it => order == ShortlistOrder.Verdict ? it.Result.Verdict : default)
            .ThenBy(it =>
                order == ShortlistOrder.Mass
                    ? Mass(it.Candidate.Rig, part)
                    : Closeness(Deciding(it.Result))
            )
            .ThenBy(it => it.Result.Verdict)
            .ThenBy(it => it.Candidate.Id, StringComparer.Ordinal);
        return
        [
            .. ordered.Select(
                (it, n) =>
                    new Ranked(
                        it.Candidate,
                        n + 1,
                        it.Result.Verdict,
                        Deciding(it.Result),
                        Differences(fitted, it.Candidate.Rig, part)
                    )
            ),
        ];
    }

    private static Finding? Deciding(CheckResult result) =>
        result.Findings.FirstOrDefault(finding => finding.Decides);

    // Where nothing is judged nothing is close; what is not known comes last.
    private static double Closeness(Finding? finding) =>
        finding switch
        {
            null => 0,
            { Chance: { } chance } => chance.Exceedance,
            { Severeness: double.NaN } => double.PositiveInfinity,
            _ => finding.Severeness,
        };

    // What is not weighed comes last.
    private static double Mass(RigLabel rig, SoughtPart part) =>
        part switch
        {
            SoughtPart.Motor => rig.Motor.MassKg,
            SoughtPart.Battery => rig.Battery.MassKg,
            _ => null,
        } ?? double.PositiveInfinity;

    private static IReadOnlyList<Difference> Differences(
        RigLabel? fitted,
        RigLabel offered,
        SoughtPart part
    ) =>
        fitted is null
            ? []
            :
            [
                .. from figure in RigFigures.Of(offered)
                where figure.Path.StartsWith(OpenPart.Prefix(part), StringComparison.Ordinal)
                let now = RigFigures
                    .Of(fitted)
                    .FirstOrDefault(f =>
                        string.Equals(f.Path, figure.Path, StringComparison.Ordinal)
                    )
                    ?.Read(fitted)
                let then = figure.Read(offered)
                where !Equals(now, then)
                select new Difference(
                    figure.Path,
                    figure.Unit,
                    now ?? double.NaN,
                    then ?? double.NaN
                ),
            ];
}
