using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Shortlists;

/// <summary>A rig with a part left open: asks what the part must be able to do, and which of some candidates do best.</summary>
public sealed class ShortlistRequest
{
    /// <summary>The rig. The sought part may be left out; figures of it that are given are taken as decided.</summary>
    [Must]
    public CheckRequest? Check { get; set; }

    /// <summary>The part that is sought.</summary>
    [Must]
    [Word<SoughtPart>("controller")]
    public string? Seek { get; set; }

    /// <summary>The part that is fitted now, for candidates to be compared with.</summary>
    public CandidateRequest? Fitted { get; set; }

    /// <summary>
    /// Parts that could take the place. Tolerances of the check go for them too, but for those of the sought part between two
    /// ends, which are of the one that the check says.
    /// </summary>
    [Items(100)]
    public IReadOnlyList<CandidateRequest>? Candidates { get; set; }

    /// <summary>What they are ordered by: the verdict when left out.</summary>
    [Word<ShortlistOrder>("verdict")]
    public string? Order { get; set; }

    /// <summary>How many of them are answered at most.</summary>
    [Figure(nameof(Unit.One), 1, 100, 10)]
    public int? Limit { get; set; }
}

/// <summary>A part that could take the place: one of the four, the one that is sought.</summary>
public sealed class CandidateRequest
{
    /// <summary>What the caller calls it, no two alike; its place in the list, from 0, when left out.</summary>
    [Text(120, "controller-a")]
    public string? Id { get; set; }

    /// <summary>A motor.</summary>
    public MotorRequest? Motor { get; set; }

    /// <summary>A speed controller.</summary>
    public ControllerRequest? Controller { get; set; }

    /// <summary>A pack.</summary>
    public BatteryRequest? Battery { get; set; }

    /// <summary>Teeth of a pinion.</summary>
    [Figure(nameof(Unit.Teeth), 4, 200, 11)]
    public int? PinionTeeth { get; set; }
}
