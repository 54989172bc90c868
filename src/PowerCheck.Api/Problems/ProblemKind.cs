using PowerCheck.Api.Door;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Problems;

/// <summary>A kind of problem.</summary>
public sealed class ProblemKind
{
    /// <summary>Address of the kind, as problems give it in type.</summary>
    [Text(100, "/problems/invalid")]
    public string Type => $"/problems/{Slug}";

    /// <summary>Short name of the kind; never renamed.</summary>
    [Text(60, "invalid")]
    public required string Slug { get; init; }

    /// <summary>The HTTP status that goes with it.</summary>
    [Figure(nameof(Unit.One), 400, 599, 422)]
    public required int Status { get; init; }

    /// <summary>The kind in a few words.</summary>
    [Text(100, "The request is not right")]
    public required string Title { get; init; }

    /// <summary>What it means and what to do about it.</summary>
    [Text(600, "The request could be read, but something in it is wrong.")]
    public required string Meaning { get; init; }
}

/// <summary>Every kind of problem.</summary>
public sealed class ProblemKindsAnswer
{
    /// <summary>The kinds, by status.</summary>
    [Items(50)]
    public required IReadOnlyList<ProblemKind> Items { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>One kind of problem.</summary>
public sealed class ProblemKindAnswer
{
    /// <summary>The kind.</summary>
    public required ProblemKind Kind { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}
