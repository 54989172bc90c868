using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Links;

namespace PowerCheck.Api.Faces;

/// <summary>A check that was made, from which every form is written.</summary>
/// <param name="Call">What was asked.</param>
/// <param name="Answer">What was found.</param>
internal sealed record CheckView(CheckCall Call, CheckAnswer Answer)
{
    /// <summary>Makes a check.</summary>
    /// <param name="context">The request, by whose address the caller knows the service.</param>
    /// <param name="call">What is asked.</param>
    public static CheckView Of(HttpContext context, CheckCall call) =>
        new(
            call,
            AnswerWriter.Write(
                call,
                call.Run(context.RequestAborted),
                CheckLinks.Of(context.Request, call)
            )
        );
}

/// <summary>Writes a check in one form.</summary>
internal interface ICheckFace
{
    /// <summary>The media type of the form.</summary>
    string MediaType { get; }

    /// <summary>Writes it.</summary>
    /// <param name="context">The request, whose answer has its headers.</param>
    /// <param name="view">The check.</param>
    Task Write(HttpContext context, CheckView view);
}
