using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>One rig of many, as it was sent.</summary>
/// <param name="Line">Where it begins, from 1.</param>
/// <param name="Text">Its text, to be given back after use; null when it is not even that.</param>
/// <param name="Problem">Why it cannot be read; null when it may be.</param>
internal sealed record Entry(long Line, Body? Text, ProblemResult? Problem) : IDisposable
{
    /// <summary>Where it ends, from 1.</summary>
    public long LastLine { get; init; } = Line;

    /// <inheritdoc/>
    public void Dispose() => Text?.Dispose();
}
