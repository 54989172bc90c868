using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Door;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Shortlists;

/// <summary>What the sought part must be able to do, and the candidates in order.</summary>
public sealed class ShortlistAnswer
{
    /// <summary>The model that computed it.</summary>
    public required ModelAnswer Model { get; init; }

    /// <summary>What the part must be able to do so that every limit that it can help holds without a caution; a part that has just these does.</summary>
    [Items(50)]
    public required IReadOnlyList<RequirementAnswer> Requirement { get; init; }

    /// <summary>What was filled in for what the request left out, of the rig and of the sought part.</summary>
    [Items(300)]
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>
    /// Limits that fail, are in doubt or unknown even with a part that has just what is required: something else of the rig has
    /// to change. Absent where there are none.
    /// </summary>
    [Items(300)]
    public IReadOnlyList<UnmetAnswer>? Unmet { get; init; }

    /// <summary>The candidates, the best first.</summary>
    [Items(100)]
    public required IReadOnlyList<CandidateAnswer> Candidates { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>A figure or word that the part must have.</summary>
public sealed class RequirementAnswer
{
    /// <summary>The member that says it.</summary>
    [Text(100, "controller.continuousCurrentA")]
    public required string Path { get; init; }

    /// <summary>The least that will do.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 42)]
    public double? Minimum { get; init; }

    /// <summary>The most that will do.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 60)]
    public double? Maximum { get; init; }

    /// <summary>The words that will do.</summary>
    [Items(20)]
    [Text(30, "brushless")]
    public IReadOnlyList<string>? Allowed { get; init; }

    /// <summary>The unit of the figures; absent for plain numbers and words.</summary>
    [Text(10, "A")]
    public string? Unit { get; init; }

    /// <summary>Code of the limit that sets it; /v1/findings explains it.</summary>
    [Text(60, "controller.heat")]
    public required string SetBy { get; init; }

    /// <summary>The load case in which it does, where one is meant.</summary>
    [Text(20, "climb")]
    public string? LoadCase { get; init; }
}

/// <summary>A limit that does not hold even with the part that is sought.</summary>
public sealed class UnmetAnswer
{
    /// <summary>Code of the limit; /v1/findings explains it.</summary>
    [Text(60, "motor.winding-temperature")]
    public required string Code { get; init; }

    /// <summary>The load case, where one is meant.</summary>
    [Text(20, "jammed")]
    public string? LoadCase { get; init; }

    /// <summary>What comes of it with a part that has just what is required.</summary>
    [Word<Outcome>("doubtful")]
    public required string Outcome { get; init; }

    /// <summary>What was computed and what it means, in plain words.</summary>
    [Text(1000, "Motor winding when a wheel is jammed: 171 °C, at most 155 °C allowed.")]
    public required string Message { get; init; }
}

/// <summary>A candidate in its place.</summary>
public sealed class CandidateAnswer
{
    /// <summary>What its caller calls it, else its place in the request.</summary>
    [Text(120, "controller-a")]
    public required string Id { get; init; }

    /// <summary>Its place, from 1.</summary>
    [Figure(nameof(Model.Units.Unit.One), 1, 100, 1)]
    public required int Rank { get; init; }

    /// <summary>The verdict on the rig with it.</summary>
    [Word<Verdict>("suitable")]
    public required string Verdict { get; init; }

    /// <summary>Code of the limit that decides.</summary>
    [Text(60, "controller.heat")]
    public string? Decides { get; init; }

    /// <summary>What decides, in plain words.</summary>
    [Text(1000, "Controller creeping up the slope: 71 °C, at most 100 °C allowed.")]
    public string? Message { get; init; }

    /// <summary>Where the whole check of the rig with it can be had by a link, in each form; absent where it would be too long for one.</summary>
    public LinksAnswer? Links { get; init; }

    /// <summary>Figures in which it differs from the part that is fitted.</summary>
    [Items(100)]
    public IReadOnlyList<DifferenceAnswer>? Differences { get; init; }
}

/// <summary>A figure in which two parts differ.</summary>
public sealed class DifferenceAnswer
{
    /// <summary>The member.</summary>
    [Text(100, "controller.continuousCurrentA")]
    public required string Path { get; init; }

    /// <summary>The figure of the part that is fitted; absent when it is not known.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 60)]
    public double? Fitted { get; init; }

    /// <summary>The figure of the candidate; absent when it is not known.</summary>
    [Figure(nameof(Model.Units.Unit.One), -1e12, 1e12, 80)]
    public double? Candidate { get; init; }

    /// <summary>The unit of both; absent for plain numbers.</summary>
    [Text(10, "A")]
    public string? Unit { get; init; }
}
