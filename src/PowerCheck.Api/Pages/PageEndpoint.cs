using PowerCheck.Api.Checks;
using PowerCheck.Api.Display;
using PowerCheck.Api.Door;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>The page: the form, and the answer to what its address says.</summary>
internal static class PageEndpoint
{
    /// <summary>Its address.</summary>
    public const string Address = "/";

    private static readonly string[] Html = [CheckForms.Html];

    /// <summary>How pages are answered.</summary>
    public static Answering Answering => new(Caching.Hour, OwnQuery: true) { Forms = Html };

    public static void MapPage(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet(Address, Get)
            .Answers(Answering)
            .Limited(LimitsSetup.Checks)
            .ExcludeFromDescription();

    private static async Task<IResult> Get(HttpContext context, PageDoor door, PageWriter writer)
    {
        var query = context.Request.Query;
        var faults = new Faults();
        if (!door.IsFilled(query))
        {
            return await Empty(context, door, writer, faults);
        }

        var (call, units) = door.Read(query, faults);
        if (!faults.None)
        {
            return ProblemOf.Request(faults);
        }

        if (door.IsSubmitted(query))
        {
            return Short(context, RigLink.Query(call), units);
        }

        if (PageDoor.IsKnown(context, call, $"page {UnitsOption.Word(units)}"))
        {
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        await new PageFace(writer).Write(context, CheckView.Of(context, call));
        return Results.Empty;
    }

    private static async Task<IResult> Empty(
        HttpContext context,
        PageDoor door,
        PageWriter writer,
        Faults faults
    )
    {
        var query = context.Request.Query;
        var units = PageDoor.ReadEmpty(query, faults);
        if (!faults.None)
        {
            return ProblemOf.Request(faults);
        }

        var call = new CheckCall(new(), CheckOptions.Of(query, faults));
        if (door.IsSubmitted(query))
        {
            return Short(context, RigLink.Query(call), units);
        }

        if (PageDoor.IsKnown(context, call, $"empty page {UnitsOption.Word(units)}"))
        {
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        await writer.WritePage(context, PageMaker.Empty(context.Request));
        return Results.Empty;
    }

    // The address bar holds the short link, whatever the form sent.
    private static IResult Short(HttpContext context, string query, DisplayUnits units)
    {
        context.Response.Headers.CacheControl = Caching.None;
        return Results.Redirect(
            PageAddress.Of(context.Request.PathBase.ToUriComponent(), query, units)
        );
    }
}
