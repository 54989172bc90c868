using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>A part that could take the open place.</summary>
/// <param name="Id">What its caller calls it.</param>
/// <param name="Rig">The rig with it.</param>
public sealed record Candidate(string Id, RigLabel Rig);

/// <summary>A candidate in its place on the list.</summary>
/// <param name="Candidate">The candidate.</param>
/// <param name="Rank">Its place, from 1.</param>
/// <param name="Verdict">The verdict on the rig with it.</param>
/// <param name="Decides">The limit that decides; null when nothing is judged.</param>
/// <param name="Differences">What is different from the part that is fitted; empty where none is.</param>
public sealed record Ranked(
    Candidate Candidate,
    int Rank,
    Verdict Verdict,
    Finding? Decides,
    IReadOnlyList<Difference> Differences
);

/// <summary>A figure in which two parts differ.</summary>
/// <param name="Path">The member.</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="Fitted">The figure of the part that is fitted, SI; NaN when it is not known.</param>
/// <param name="Offered">The figure of the candidate, SI; NaN when it is not known.</param>
public sealed record Difference(string Path, Unit Unit, double Fitted, double Offered);

/// <summary>What a list of candidates is ordered by.</summary>
public enum ShortlistOrder
{
    /// <summary>The verdict, then how far the deciding limit is.</summary>
    Verdict,

    /// <summary>How far the deciding limit is.</summary>
    Margin,

    /// <summary>The part's mass.</summary>
    Mass,
}
