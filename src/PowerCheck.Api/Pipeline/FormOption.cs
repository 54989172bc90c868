using PowerCheck.Api.Door;

namespace PowerCheck.Api.Pipeline;

/// <summary>In which form to answer, as a query parameter.</summary>
internal static class FormOption
{
    /// <summary>Its name.</summary>
    public const string Name = "form";

    /// <summary>The media type that the query asks for, or else the header; null when all are ruled out.</summary>
    /// <param name="request">The request.</param>
    /// <param name="answering">What is offered.</param>
    /// <param name="faults">Where to note a word that is none.</param>
    public static string? Of(HttpRequest request, Answering answering, Faults faults) =>
        QueryDoor.Word(request.Query, Name, answering.FormWords, faults) is null
            ? AcceptHeader.Best(request.Headers.Accept, answering.Forms)
            : answering.Asked(request);
}
