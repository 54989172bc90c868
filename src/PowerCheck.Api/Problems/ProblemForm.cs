using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Problems;

/// <summary>
/// Chooses the form of a problem: that which the query asks for, else a page or lines of text where the caller prefers them to
/// JSON, else JSON, whatever the header says.
/// </summary>
internal static class ProblemForm
{
    private const string Json = "application/json";

    /// <summary>What writes it; null for JSON.</summary>
    public static IProblemFace? Of(HttpContext context)
    {
        var faces = context.RequestServices.GetServices<IProblemFace>().ToArray();
        var answering = context.GetEndpoint()?.Metadata.GetMetadata<Answering>();
        if (answering?.Asked(context.Request) is { } asked)
        {
            return Of(faces, asked);
        }

        string[] forms =
        [
            Json,
            .. faces.Where(face => !face.OnlyAsked).Select(face => face.MediaType),
        ];
        // To a caller who does not mind, a page tells its problems as a page.
        forms =
        [
            .. forms.OrderByDescending(form =>
                answering?.Forms[0].Equals(form, StringComparison.Ordinal)
            ),
        ];
        return AcceptHeader.Best(context.Request.Headers.Accept, forms) is { } best
            ? Of(faces, best)
            : null;
    }

    private static IProblemFace? Of(IProblemFace[] faces, string form) =>
        faces.FirstOrDefault(face => face.MediaType.Equals(form, StringComparison.Ordinal));
}
