using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using PowerCheck.Api.Door;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>What the check found. A figure that could not be computed is absent, and a finding says why.</summary>
public record CheckReport
{
    /// <summary>The id of the request.</summary>
    [Text(120, "rig-7")]
    public string? Id { get; init; }

    /// <summary>The model that computed it.</summary>
    public required ModelAnswer Model { get; init; }

    /// <summary>Whether the parts work together.</summary>
    [Word<Verdict>("suitable")]
    public required string Verdict { get; init; }

    /// <summary>How sure the verdict is; absent where spread was not asked for. With low, the deciding finding names what to measure.</summary>
    [Word<Confidence>("high")]
    public string? Confidence { get; init; }

    /// <summary>The deciding figure, up to where the limit holds, and the smallest change, in plain words.</summary>
    [Text(1500, "All judged limits hold; the closest is the winding temperature.")]
    public required string Summary { get; init; }

    /// <summary>Limits held against figures: the deciding one first, then by outcome. Those that hold without a caution only with findings=all.</summary>
    [Items(200)]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>The load cases by name.</summary>
    public required LoadCasesAnswer LoadCases { get; init; }

    /// <summary>How warm each part gets.</summary>
    public required TemperaturesAnswer Temperatures { get; init; }

    /// <summary>How long the pack lasts on the course.</summary>
    public required EnduranceAnswer Endurance { get; init; }

    /// <summary>What the receiver supply has to give.</summary>
    public required ReceiverSupplyAnswer ReceiverSupply { get; init; }

    /// <summary>What the gearing makes of the motor.</summary>
    public required DrivetrainAnswer Drivetrain { get; init; }

    /// <summary>What the leads add and what they stand.</summary>
    public required WiringAnswer Wiring { get; init; }

    /// <summary>How the spread of the figures was carried to the limits.</summary>
    public required SpreadingAnswer Spread { get; init; }

    /// <summary>How far off the given figures may be, by the kind of figure on a box.</summary>
    [Items(300)]
    public required IReadOnlyList<ToleranceAnswer> Tolerances { get; init; }

    /// <summary>What was filled in for what the request left out.</summary>
    [Items(300)]
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }
}

/// <summary>What the check found, with the cautions. A figure that could not be computed is absent, and a finding says why.</summary>
public sealed record CheckAnswer : CheckReport
{
    /// <summary>Puts the cautions beside what was found.</summary>
    /// <param name="report">What was found.</param>
    /// <param name="links">Where the same check can be had by a link; null where it is too long for one.</param>
    /// <param name="cautions">The cautions.</param>
    [SetsRequiredMembers]
    public CheckAnswer(CheckReport report, LinksAnswer? links, BatterySafety cautions)
        : base(report) => (Links, BatterySafety) = (links, cautions);

    /// <summary>Where the same check can be had by a link, in each form; absent where it would be longer than 8000 characters.</summary>
    [JsonPropertyOrder(1)]
    public LinksAnswer? Links { get; init; }

    /// <summary>Cautions about batteries, those that matter for this rig first.</summary>
    [JsonPropertyOrder(1)]
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>The model behind an answer.</summary>
public sealed class ModelAnswer
{
    /// <summary>Raised whenever the same request could get another figure or verdict.</summary>
    [Text(20, "1.1.0")]
    public required string Version { get; init; }
}
