using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Outcomes;

/// <summary>What became of one line.</summary>
/// <param name="Line">Where the rig stands, from 1.</param>
/// <param name="Id">Its id, where it could be read.</param>
/// <param name="Report">What the check found; null when it was not checked.</param>
/// <param name="Problem">Why it was not checked; null when it was.</param>
internal sealed record Outcome(long Line, string? Id, CheckReport? Report, ProblemReport? Problem);
