namespace PowerCheck.Model.Sources;

/// <summary>A published document, or the word for a default of ours.</summary>
/// <param name="Key">Short key that findings, assumptions and comments cite.</param>
/// <param name="Title">The document.</param>
/// <param name="Publisher">Who published it, and when.</param>
/// <param name="Used">What is taken from it.</param>
/// <param name="Seen">
/// How it was seen: "document", "secondary" (quoted by another), "memory" (recalled, not seen) or "own" (a default of
/// ours).
/// </param>
public sealed record Source(string Key, string Title, string Publisher, string Used, string Seen);
