using PowerCheck.Api.Door;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Sources;

/// <summary>Everything that the model rests on.</summary>
public sealed class SourcesAnswer
{
    /// <summary>The sources.</summary>
    [Items(200)]
    public required IReadOnlyList<SourceAnswer> Items { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>A published document, or the word for a default of the project.</summary>
public sealed class SourceAnswer
{
    /// <summary>Short key that findings, assumptions and cautions cite.</summary>
    [Text(20, "iec60149")]
    public required string Key { get; init; }

    /// <summary>The document.</summary>
    [Text(200, "American wire gauge table")]
    public required string Title { get; init; }

    /// <summary>Who published it, and when.</summary>
    [Text(200, "a standards body, 2013")]
    public required string Publisher { get; init; }

    /// <summary>What is taken from it.</summary>
    [Text(400, "Resistance by gauge and currents of a wire in free air.")]
    public required string Used { get; init; }

    /// <summary>How it was seen: document, secondary (quoted by another), memory (recalled) or own (a default of the project).</summary>
    [Text(20, "document")]
    public required string Seen { get; init; }
}
