using PowerCheck.Api.Door;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Safety;

/// <summary>Cautions about batteries, the one that matters most for this answer first.</summary>
public sealed class BatterySafety
{
    /// <summary>The leading caution.</summary>
    [Text(600, "Stop using the pack when it smells, swells, leaks or gets too hot.")]
    public required string Leading { get; init; }

    /// <summary>All cautions, the leading one first.</summary>
    [Items(20)]
    public required IReadOnlyList<SafetyCaution> Cautions { get; init; }

    /// <summary>What these cautions defer to.</summary>
    [Items(10)]
    [Text(300, "The instructions of the makers of pack, charger, controller and motor.")]
    public required IReadOnlyList<string> DefersTo { get; init; }

    /// <summary>Year and month in which the travel rules were last compared with their sources.</summary>
    [Text(7, "2026-11")]
    public required string TravelRulesAsOf { get; init; }

    /// <summary>Where these cautions can be read by themselves.</summary>
    [Text(100, "/v1/battery-safety")]
    public required string Address { get; init; }
}

/// <summary>One caution about batteries.</summary>
public sealed class SafetyCaution
{
    /// <summary>Short key of the caution; never renamed.</summary>
    [Text(40, "heat")]
    public required string Key { get; init; }

    /// <summary>What may happen to people (ANSI Z535 words).</summary>
    [Word<Severity>("warning")]
    public required string Severity { get; init; }

    /// <summary>The caution in plain words.</summary>
    [Text(600, "Stop using the pack when it smells, swells, leaks or gets too hot.")]
    public required string Text { get; init; }

    /// <summary>Keys of the sources it rests on.</summary>
    [Items(5)]
    [Text(20, "usfa")]
    public required IReadOnlyList<string> Sources { get; init; }
}
