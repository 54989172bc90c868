using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using PowerCheck.Api.Door;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Problems;

/// <summary>Why something was not answered.</summary>
public record ProblemReport
{
    /// <summary>Address of the kind of problem.</summary>
    [Text(100, "/problems/invalid")]
    public required string Type { get; init; }

    /// <summary>The kind of problem in a few words.</summary>
    [Text(100, "The request is not right")]
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    [Figure(nameof(Unit.One), 400, 599, 422)]
    public required int Status { get; init; }

    /// <summary>What is wrong this time and what cures it.</summary>
    [Text(1000, "One thing is wrong; see errors.")]
    public required string Detail { get; init; }

    /// <summary>Line at which a body stops being JSON, from 1.</summary>
    [Figure(nameof(Unit.One), 1, 1000000, 3)]
    public int? Line { get; init; }

    /// <summary>Character in that line, from 1.</summary>
    [Figure(nameof(Unit.One), 1, 1000000, 12)]
    public int? Column { get; init; }

    /// <summary>The media types that would do.</summary>
    [Items(10)]
    [Text(100, "application/json")]
    public IReadOnlyList<string>? Forms { get; init; }

    /// <summary>Everything wrong with the request.</summary>
    [Items(Faults.Most)]
    public IReadOnlyList<ProblemError>? Errors { get; init; }

    /// <summary>True when more is wrong than is listed.</summary>
    [Flag(true)]
    public bool? ErrorsTruncated { get; init; }
}

/// <summary>Why a request was not answered (RFC 9457).</summary>
public sealed record Problem : ProblemReport
{
    /// <summary>Says what was asked for and puts the cautions beside it.</summary>
    /// <param name="report">What is wrong.</param>
    /// <param name="instance">The address that was asked for.</param>
    /// <param name="traceId">The request's trace id.</param>
    /// <param name="cautions">The cautions.</param>
    [SetsRequiredMembers]
    public Problem(ProblemReport report, string instance, string traceId, BatterySafety cautions)
        : base(report) => (Instance, TraceId, BatterySafety) = (instance, traceId, cautions);

    /// <summary>The address that was asked for.</summary>
    [JsonPropertyOrder(1)]
    [Text(2000, "/v1/checks")]
    public required string Instance { get; init; }

    /// <summary>The request's trace id, as in the X-Trace-Id header; quote it when you report a fault.</summary>
    [JsonPropertyOrder(1)]
    [Text(64, "4bf92f3577b34da6a3ce929d0e0e4736")]
    public required string TraceId { get; init; }

    /// <summary>Cautions about batteries.</summary>
    [JsonPropertyOrder(1)]
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>One thing wrong with a request.</summary>
public sealed class ProblemError
{
    /// <summary>The member: names joined by dots, list positions from 0. Empty for the body as a whole.</summary>
    [Text(400, "vehicle.massKg")]
    public required string Path { get; init; }

    /// <summary>What is wrong: unknown-member, doubled, missing, wrong-type, not-finite, out-of-range or conflict. More may come.</summary>
    [Text(40, "out-of-range")]
    public required string Code { get; init; }

    /// <summary>What is wrong and what cures it, in plain words.</summary>
    [Text(1000, "vehicle.massKg is 500 and must be from 0.05 to 50 kg.")]
    public required string Message { get; init; }

    /// <summary>What was sent, as text, cut to a readable length.</summary>
    [Text(70, "500")]
    public string? Given { get; init; }

    /// <summary>Smallest figure allowed, in the unit of the member's name.</summary>
    [Figure(nameof(Unit.One), -1e9, 1e9, 0.05)]
    public double? Minimum { get; init; }

    /// <summary>Largest figure allowed, in the unit of the member's name; for a list or a text, its greatest length.</summary>
    [Figure(nameof(Unit.One), -1e9, 1e9, 50)]
    public double? Maximum { get; init; }

    /// <summary>Words or names allowed.</summary>
    [Items(64)]
    [Text(60, "brushless")]
    public IReadOnlyList<string>? Allowed { get; init; }

    /// <summary>The allowed word or name that comes closest.</summary>
    [Text(60, "massKg")]
    public string? Nearest { get; init; }

    /// <summary>Paths of the other members involved.</summary>
    [Items(20)]
    [Text(400, "controller.maxCells")]
    public IReadOnlyList<string>? Related { get; init; }
}
