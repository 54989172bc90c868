namespace PowerCheck.Api.Problems;

/// <summary>Writes a problem in a form other than JSON.</summary>
internal interface IProblemFace
{
    /// <summary>The media type of the form.</summary>
    string MediaType { get; }

    /// <summary>Whether it is written only where the query asks for the form, and not for an Accept header.</summary>
    bool OnlyAsked { get; }

    /// <summary>Writes it.</summary>
    /// <param name="context">The request, whose answer has its status.</param>
    /// <param name="problem">The problem.</param>
    Task Write(HttpContext context, Problem problem);
}
