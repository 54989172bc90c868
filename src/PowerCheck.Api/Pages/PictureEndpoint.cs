using PowerCheck.Api.Checks;
using PowerCheck.Api.Door;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pictures;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>
/// Temperatures along the course, and how much of each limit is taken up, as pictures by themselves: they may be larger than the
/// rest of the page, which fetches them only where they are looked at.
/// </summary>
internal static class PictureEndpoint
{
    private const string Course = "course";
    private const string Limits = "limits";

    private static readonly string[] Svg = [CheckForms.Svg];

    public static void MapPicture(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet($"/pictures/{{name:regex(^({Course}|{Limits})$)}}.svg", Get)
            .Answers(new Answering(Caching.Hour, OwnQuery: true) { Forms = Svg })
            .Limited(LimitsSetup.Checks)
            .ExcludeFromDescription();

    /// <summary>Where the temperatures along the course of a check are drawn.</summary>
    public static string OfCourse(HttpContext context, CheckCall call) => Of(context, call, Course);

    /// <summary>Where the limits of a check are drawn.</summary>
    public static string OfLimits(HttpContext context, CheckCall call) => Of(context, call, Limits);

    private static string Of(HttpContext context, CheckCall call, string name) =>
        $"{context.Request.PathBase.ToUriComponent()}/pictures/{name}.svg?{RigLink.Query(call)}";

    private static async Task<IResult> Get(HttpContext context, LinkDoor door, string name)
    {
        var faults = new Faults();
        var call = door.Read(context.Request.Query, [], faults);
        if (!faults.None)
        {
            return ProblemOf.Request(faults);
        }

        if (PageDoor.IsKnown(context, call, $"{name} picture"))
        {
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        var content = PictureContent.Of(context, CheckView.Of(context, call));
        await Drawn.Svg(
            context,
            name is Course ? Picture.CourseSvg(content) : Picture.LimitsSvg(content)
        );
        return Results.Empty;
    }
}
