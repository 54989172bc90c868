using PowerCheck.Api.Door;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Findings;

/// <summary>Every code that a finding can have.</summary>
public sealed class FindingKindsAnswer
{
    /// <summary>The codes, by part.</summary>
    [Items(200)]
    public required IReadOnlyList<FindingKindAnswer> Items { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>A code that a finding can have.</summary>
public sealed class FindingKindAnswer
{
    /// <summary>Part and limit joined by a dot; never renamed.</summary>
    [Text(60, "controller.heat")]
    public required string Code { get; init; }

    /// <summary>The part that it is about.</summary>
    [Text(30, "controller")]
    public required string Part { get; init; }

    /// <summary>What may happen to people (ANSI Z535 words).</summary>
    [Word<Severity>("notice")]
    public required string Severity { get; init; }

    /// <summary>What a passed limit leads to: fire, injury, damage, shutdown or performance.</summary>
    [Text(20, "damage")]
    public required string Effect { get; init; }

    /// <summary>What is held against what.</summary>
    [Text(400, "Heat in the controller against its rating.")]
    public required string Meaning { get; init; }

    /// <summary>Where the limit comes from.</summary>
    [Text(400, "The controller's continuous and burst currents.")]
    public required string LimitFrom { get; init; }

    /// <summary>What it means for the builder when the limit is passed or close.</summary>
    [Text(400, "It shuts down or burns.")]
    public required string Consequence { get; init; }

    /// <summary>Whether it counts for the verdict; the others only caution.</summary>
    [Flag(true)]
    public required bool Judged { get; init; }

    /// <summary>The model version that first had it.</summary>
    [Text(20, "1.1.0")]
    public required string Since { get; init; }

    /// <summary>Keys of the sources it rests on.</summary>
    [Items(20)]
    [Text(20, "iec60149")]
    public required IReadOnlyList<string> Sources { get; init; }
}
