namespace PowerCheck.Api.Door;

/// <summary>One thing wrong with a request, before it is written into a problem.</summary>
/// <param name="Path">The member, names joined by dots, list positions from 0; empty for the whole body.</param>
/// <param name="Code">What is wrong, one of <see cref="FaultCode"/>.</param>
/// <param name="Message">What is wrong and what cures it, in plain words.</param>
internal sealed record Fault(string Path, string Code, string Message)
{
    /// <summary>What was sent, cut to a readable length.</summary>
    public string? Given { get; init; }

    /// <summary>Smallest figure allowed.</summary>
    public double? Minimum { get; init; }

    /// <summary>Largest figure allowed.</summary>
    public double? Maximum { get; init; }

    /// <summary>Words allowed.</summary>
    public IReadOnlyList<string>? Allowed { get; init; }

    /// <summary>The known name or word that comes closest.</summary>
    public string? Nearest { get; init; }

    /// <summary>Paths of the other members involved.</summary>
    public IReadOnlyList<string>? Related { get; init; }
}

/// <summary>What can be wrong with a member.</summary>
internal static class FaultCode
{
    public const string UnknownMember = "unknown-member";
    public const string Doubled = "doubled";
    public const string Missing = "missing";
    public const string WrongType = "wrong-type";
    public const string NotFinite = "not-finite";
    public const string OutOfRange = "out-of-range";
    public const string Conflict = "conflict";

    /// <summary>All of them, as the document lists them.</summary>
    public static readonly IReadOnlyList<string> All =
    [
        UnknownMember,
        Doubled,
        Missing,
        WrongType,
        NotFinite,
        OutOfRange,
        Conflict,
    ];
}
