using PowerCheck.Api.Checks;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Faces;

/// <summary>Makes a check and writes it in the form that is wanted.</summary>
internal sealed class CheckFaces(IEnumerable<ICheckFace> faces)
{
    private readonly Dictionary<string, ICheckFace> faces = faces.ToDictionary(
        face => face.MediaType,
        StringComparer.Ordinal
    );

    /// <summary>Answers a call.</summary>
    /// <param name="context">The request.</param>
    /// <param name="call">What is asked.</param>
    /// <param name="form">The media type of the form.</param>
    public Task Answer(HttpContext context, CheckCall call, string form) =>
        faces[form].Write(context, CheckView.Of(context, call));
}

/// <summary>A check as JSON.</summary>
internal sealed class JsonFace : ICheckFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Json;

    /// <inheritdoc/>
    public Task Write(HttpContext context, CheckView view) =>
        context.Response.WriteAsJsonAsync(view.Answer, JsonForm.Options, context.RequestAborted);
}
