using PowerCheck.Api.Door;
using PowerCheck.Model.Accessories;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>What is known of something else that draws current.</summary>
public sealed class AccessoryRequest
{
    /// <summary>What the caller calls it. Not used.</summary>
    [Text(120, "steering servo")]
    public string? Name { get; set; }

    /// <summary>What it is.</summary>
    [Word<AccessoryKind>("servo")]
    public string? Kind { get; set; }

    /// <summary>What feeds it: the receiver supply, or the pack itself.</summary>
    [Word<AccessorySupply>("receiver")]
    public string? Supply { get; set; }

    /// <summary>Current at rest.</summary>
    [Figure(nameof(Unit.Ampere), 0, 100, 0.1)]
    public double? IdleCurrentA { get; set; }

    /// <summary>Current at work.</summary>
    [Figure(nameof(Unit.Ampere), 0, 200, 1)]
    public double? WorkingCurrentA { get; set; }

    /// <summary>Current when jammed.</summary>
    [Figure(nameof(Unit.Ampere), 0, 500, 3)]
    public double? JammedCurrentA { get; set; }
}
