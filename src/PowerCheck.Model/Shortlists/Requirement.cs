using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>What the part that is sought must be able to do, so that every limit that it can help holds (M14).</summary>
/// <param name="Path">The member that says it on the part's box.</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="Minimum">The least that will do, SI; NaN when there is none.</param>
/// <param name="Maximum">The most that will do, SI; NaN when there is none.</param>
/// <param name="Allowed">The words that will do; empty where it is a figure.</param>
/// <param name="SetBy">Code of the limit that sets it.</param>
/// <param name="LoadCase">The load case in which it does; null where the whole rig is meant.</param>
public sealed record Requirement(
    string Path,
    Unit Unit,
    double Minimum,
    double Maximum,
    IReadOnlyList<string> Allowed,
    string SetBy,
    string? LoadCase
);

/// <summary>The part of a rig that is left open.</summary>
public enum SoughtPart
{
    /// <summary>The motor.</summary>
    Motor,

    /// <summary>The speed controller.</summary>
    Controller,

    /// <summary>The pack.</summary>
    Battery,

    /// <summary>The pinion.</summary>
    Pinion,
}
