using PowerCheck.Api.Checks.Answers;
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
);
