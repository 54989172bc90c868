using PowerCheck.Api.Checks.Answers;
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
    /// <param name="links">Where the check with a candidate can be had, by what it is called.</param>
    public static ShortlistAnswer Write(
        Shortlist shortlist,
        int limit,
        Func<string, LinksAnswer?> links
    ) =>
        new()
        {
            Model = new() { Version = ModelVersion.Current },
            Requirement = [.. shortlist.Requirements.Select(Write)],
            Assumptions = [.. shortlist.Assumptions.Select(AssumptionWriter.Write)],
            Unmet = shortlist.Unmet.Count == 0 ? null : [.. shortlist.Unmet.Select(Write)],
            Candidates =
            [
                .. shortlist
                    .Candidates.Take(limit)
                    .Select(ranked => Write(ranked, links(ranked.Candidate.Id))),
            ],
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

    private static CandidateAnswer Write(Ranked ranked, LinksAnswer? links) =>
        new()
        {
            Id = ranked.Candidate.Id,
            Rank = ranked.Rank,
            Verdict = Words.Of(ranked.Verdict),
            Decides = ranked.Decides?.Kind.Code,
            Message = ranked.Decides?.Message,
            Links = links,
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
