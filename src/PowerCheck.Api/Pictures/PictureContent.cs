using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Curves;

namespace PowerCheck.Api.Pictures;

/// <summary>What the pictures of a check are drawn from.</summary>
/// <param name="Answer">The answer as it is sent: every figure in a picture is one of its figures.</param>
/// <param name="Curves">The curves.</param>
/// <param name="Ratings">What the request asks for and what its boxes say.</param>
/// <param name="SafetyAddress">Where the cautions about batteries can be read, absolute.</param>
internal sealed record PictureContent(
    CheckAnswer Answer,
    CurveReport Curves,
    Ratings Ratings,
    string SafetyAddress
)
{
    /// <summary>What a check is drawn from: its answer, and curves that no other form shows.</summary>
    /// <param name="context">The request.</param>
    /// <param name="view">The check.</param>
    public static PictureContent Of(HttpContext context, CheckView view)
    {
        var request = view.Call.Request;
        return new(
            view.Answer,
            CurveReport.Of(
                RigMapper.Map(request),
                view.Call.Options.Spread,
                context.RequestAborted
            ),
            Ratings.Of(request, view.Answer.Assumptions),
            SafetyOf(context.Request)
        );
    }

    /// <summary>Where the cautions can be read, as the caller knows the service.</summary>
    /// <param name="request">The request.</param>
    public static string SafetyOf(HttpRequest request) =>
        $"{ServiceAddress.Of(request)}{SafetyBlock.Address}";
}
