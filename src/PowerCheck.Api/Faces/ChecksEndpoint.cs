using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Display;
using PowerCheck.Api.Door;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Faces;

/// <summary>The main job: check a rig, from a body or from a link.</summary>
internal static class ChecksEndpoint
{
    private static readonly string[] Others = [FormOption.Name];

    // Only the page shows figures in other units.
    private static readonly string[] PageOthers = [FormOption.Name, UnitsOption.Name];

    public static void AddChecks(this IServiceCollection services)
    {
        services.AddSingleton<CheckDoor>();
        services.AddSingleton<LinkDoor>();
        services.AddSingleton<ICheckFace, JsonFace>();
        services.AddSingleton<CheckFaces>();
    }

    public static void MapChecks(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost(CheckLinks.Checks, Post)
            .WithName("checkRig")
            .WithTags("Checks")
            .WithSummary("Check a rig")
            .WithDescription(
                "Computes whether motor, speed controller, pack and gearing work together, and says why. A rig that would burn is an answer with findings, not a problem."
            )
            // Any form gets to the door, which knows what is read here and says so in the form that is wanted.
            .Accepts<CheckRequest>("application/json", "*/*")
            .Produces<CheckAnswer>()
            .Answers(CheckForms.Answering(Caching.None))
            .Limited(LimitsSetup.Checks)
            .ProducesProblems(
                StatusCodes.Status400BadRequest,
                StatusCodes.Status413PayloadTooLarge,
                StatusCodes.Status415UnsupportedMediaType,
                StatusCodes.Status503ServiceUnavailable
            );
        routes
            .MapGet(CheckLinks.Checks, Get)
            .WithName("checkRigByLink")
            .WithTags("Checks")
            .WithSummary("Check a rig by a link")
            .WithDescription(
                "The same check with the rig in the address: members by path. Of lists the parameters below name the first item; the others go on from there (course.segments.1.seconds), and tolerances stand under the path that they are of (tolerances.motor.kvRpmPerVolt). An empty value is a member left out; the word empty says that a list or an object is there with nothing in it. A figure may carry a unit (8 lb, 4.6in, 25 mOhm, 95 degF); without one it is in the unit of its name. Decimals have a point. The answer may be kept for an hour and asked for again by its ETag."
            )
            .Produces<CheckAnswer>()
            .Answers(CheckForms.Answering(Caching.Hour))
            .Limited(LimitsSetup.Checks)
            .ProducesProblems(StatusCodes.Status503ServiceUnavailable);
    }

    private static async Task<IResult> Post(HttpContext context, CheckDoor door, CheckFaces faces)
    {
        var faults = new Faults();
        if (Form(context, faults) is not { } form)
        {
            return ProblemOf.Accept(CheckForms.All);
        }

        var (call, problem) = await PostedBody.Read(
            context,
            (body, query) => Read(door, body, query, form, faults)
        );
        if (problem is null)
        {
            await faces.Answer(context, call, form);
        }

        return problem ?? Results.Empty;
    }

    private static async Task<IResult> Get(HttpContext context, LinkDoor door, CheckFaces faces)
    {
        var faults = new Faults();
        if (Form(context, faults) is not { } form)
        {
            return ProblemOf.Accept(CheckForms.All);
        }

        var units = Units(context.Request.Query, form, faults);
        var call = door.Read(context.Request.Query, OthersOf(form), faults);
        if (!faults.None)
        {
            return ProblemOf.Request(faults);
        }

        var tag = CheckTag.Of(call, $"{form} {units}");
        context.Response.GetTypedHeaders().ETag = tag;
        if (CheckTag.IsKnown(context.Request, tag))
        {
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        await faces.Answer(context, call, form);
        return Results.Empty;
    }

    private static string[] OthersOf(string form) => form is CheckForms.Html ? PageOthers : Others;

    private static string Units(IQueryCollection query, string form, Faults faults) =>
        form is CheckForms.Html ? UnitsOption.Word(UnitsOption.Of(query, faults)) : "";

    private static string? Form(HttpContext context, Faults faults) =>
        FormOption.Of(
            context.Request,
            context.GetEndpoint()!.Metadata.GetRequiredMetadata<Answering>(),
            faults
        );

    private static (CheckCall Call, ProblemResult? Problem) Read(
        CheckDoor door,
        ReadOnlySpan<byte> body,
        IQueryCollection query,
        string form,
        Faults faults
    )
    {
        Units(query, form, faults);
        var (call, malformed) = door.Read(body, query, OthersOf(form), faults);
        return (
            call,
            malformed is not null ? ProblemOf.Reading(malformed)
            : faults.None ? null
            : ProblemOf.Request(faults)
        );
    }
}
