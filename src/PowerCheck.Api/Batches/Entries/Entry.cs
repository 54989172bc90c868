using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>One rig of many, as it was sent.</summary>
/// <param name="Line">Where it stands, from 1.</param>
/// <param name="Text">Its text, to be given back after use; null when it is not even that.</param>
/// <param name="Problem">Why it cannot be read; null when it may be.</param>
internal sealed record Entry(long Line, Body? Text, ProblemResult? Problem) : IDisposable
{
    /// <inheritdoc/>
    public void Dispose() => Text?.Dispose();
}
