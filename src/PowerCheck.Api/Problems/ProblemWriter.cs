namespace PowerCheck.Api.Problems;

/// <summary>Writes the problems that the framework raises in the service's own form, whatever Accept says.</summary>
internal sealed class ProblemWriter : IProblemDetailsWriter
{
    /// <inheritdoc/>
    public bool CanWrite(ProblemDetailsContext context) => true;

    /// <inheritdoc/>
    public ValueTask WriteAsync(ProblemDetailsContext context) =>
        new(ProblemOf.Status(context.HttpContext).ExecuteAsync(context.HttpContext));
}
