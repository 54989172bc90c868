using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Shortlists;

namespace PowerCheck.Api.Shortlists;

/// <summary>Writes a shortlist as the answer that is sent.</summary>
internal static class ShortlistWriter
{
    /// <summary>The answer.</summary>
    /// <param name="shortlist">The shortlist.</param>
    /// <param name="limit">How many candidates at most.</param>
    public static ShortlistAnswer Write(Shortlist shortlist, int limit) =>
        new()
        {
            Model = new() { Version = ModelVersion.Current },
            Requirement = [.. shortlist.Requirements.Select(Write)],
            Assumptions = [.. shortlist.Assumptions.Select(AssumptionWriter.Write)],
            Unmet = shortlist.Unmet.Count == 0 ? null : [.. shortlist.Unmet.Select(Write)],
            Candidates = [.. shortlist.Candidates.Take(limit).Select(Write)],
            BatterySafety = SafetyBlock.Plain,
        };

    private static RequirementAnswer Write(Requirement requirement) =>
        new()
        {
            Path = requirement.Path,
            Minimum = Shown.Figure(requirement.Minimum, requirement.Unit),
            Maximum = Shown.Figure(requirement.Maximum, requirement.Unit),
            Allowed = requirement.Allowed.Count == 0 ? null : requirement.Allowed,
            Unit = Shown.Symbol(requirement.Unit),
            SetBy = requirement.SetBy,
            LoadCase = requirement.LoadCase,
        };

    private static UnmetAnswer Write(Finding finding) =>
        new()
        {
            Code = finding.Kind.Code,
            LoadCase = finding.LoadCase,
            Outcome = Words.Of(finding.Outcome),
            Message = finding.Message,
        };

    private static CandidateAnswer Write(Ranked ranked) =>
        new()
        {
            Id = ranked.Candidate.Id,
            Rank = ranked.Rank,
            Verdict = Words.Of(ranked.Verdict),
            Decides = ranked.Decides?.Kind.Code,
            Message = ranked.Decides?.Message,
            Differences =
                ranked.Differences.Count == 0 ? null : [.. ranked.Differences.Select(Write)],
        };

    private static DifferenceAnswer Write(Difference difference) =>
        new()
        {
            Path = difference.Path,
            Fitted = Shown.Figure(difference.Fitted, difference.Unit),
            Candidate = Shown.Figure(difference.Offered, difference.Unit),
            Unit = Shown.Symbol(difference.Unit),
        };
}
