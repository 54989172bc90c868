using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Batches.Outcomes;

/// <summary>What became of one line of many. The last of all is a tally instead, which has the members of TallyAnswer.</summary>
public sealed class OutcomeAnswer
{
    /// <summary>check or problem; tally for the last. More may come.</summary>
    [Text(20, "check")]
    public required string Kind { get; init; }

    /// <summary>Where the rig stands in the request, from 1: the line, blank ones and a header counted too, or the item of a list.</summary>
    [Figure(nameof(Unit.One), 1, 1e12, 17)]
    public long? Line { get; init; }

    /// <summary>The id of the rig, where it could be read.</summary>
    [Text(120, "rig-7")]
    public string? Id { get; init; }

    /// <summary>What the check found; the cautions stand in the tally. Absent when fields are asked for.</summary>
    public CheckReport? Check { get; init; }

    /// <summary>The members asked for, by path; absent where there is none.</summary>
    [Map(100, "endurance.minutes")]
    public IReadOnlyDictionary<string, object>? Fields { get; init; }

    /// <summary>Why the rig was not checked.</summary>
    public ProblemReport? Problem { get; init; }
}

/// <summary>What became of all lines. A request without one was not answered to its end.</summary>
public sealed class TallyAnswer
{
    /// <summary>tally.</summary>
    [Text(20, "tally")]
    public required string Kind { get; init; }

    /// <summary>Lines answered.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 4000)]
    public required long Lines { get; init; }

    /// <summary>How many rigs got each verdict.</summary>
    public required VerdictsAnswer Verdicts { get; init; }

    /// <summary>How many lines could not be checked.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 10)]
    public required long Problems { get; init; }

    /// <summary>Whether every line of the request is answered.</summary>
    [Flag(true)]
    public required bool Complete { get; init; }

    /// <summary>Why not, in a word: line-limit, byte-limit, time-limit, idle, aside-limit, cut-off, after-list or shutdown. More may come.</summary>
    [Text(40, "time-limit")]
    public string? Reason { get; init; }

    /// <summary>Why not, in plain words, and what to do.</summary>
    [Text(400, "One request may take 86400 s. Send the lines from nextLine on in another request.")]
    public string? Message { get; init; }

    /// <summary>The first line that is not answered, where not all are.</summary>
    [Figure(nameof(Unit.One), 1, 1e12, 4001)]
    public long? NextLine { get; init; }

    /// <summary>The model that computed it.</summary>
    public required ModelAnswer Model { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}

/// <summary>How many rigs got each verdict.</summary>
public sealed class VerdictsAnswer
{
    /// <summary>All limits hold.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 2500)]
    public required long Suitable { get; init; }

    /// <summary>Some limit is too close to be sure.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 900)]
    public required long Limited { get; init; }

    /// <summary>Some limit fails, or parts do not match.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 500)]
    public required long Unsuitable { get; init; }

    /// <summary>Something decisive is not known.</summary>
    [Figure(nameof(Unit.One), 0, 1e12, 90)]
    public required long Undetermined { get; init; }
}

/// <summary>What became of many lines, as one object.</summary>
public sealed class OutcomesAnswer
{
    /// <summary>The outcomes, in the order of the lines.</summary>
    [Items(1000000)]
    public required IReadOnlyList<OutcomeAnswer> Outcomes { get; init; }

    /// <summary>What became of all of them.</summary>
    public required TallyAnswer Tally { get; init; }
}
