using PowerCheck.Api.Display;
using PowerCheck.Api.Door;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>The card that a shop shows in a frame beside a product.</summary>
internal static class EmbedEndpoint
{
    /// <summary>Its address.</summary>
    public const string Address = "/embed";

    public static void MapEmbed(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet(Address, Get)
            .Answers(PageEndpoint.Answering)
            .Limited(LimitsSetup.Checks)
            .ExcludeFromDescription();

    private static async Task<IResult> Get(
        HttpContext context,
        PageDoor door,
        PageWriter writer,
        EmbedSettings embed
    )
    {
        var query = context.Request.Query;
        var faults = new Faults();
        if (!door.IsFilled(query))
        {
            PageDoor.ReadEmpty(query, faults);
            if (faults.None)
            {
                await writer.WriteCard(context, PageMaker.Empty(context.Request), embed.Ancestors);
            }

            return faults.None ? Results.Empty : ProblemOf.Request(faults);
        }

        var (call, units) = door.Read(query, faults);
        if (!faults.None)
        {
            return ProblemOf.Request(faults);
        }

        if (PageDoor.IsKnown(context, call, $"card {UnitsOption.Word(units)} {embed.Ancestors}"))
        {
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        var view = PageMaker.Checked(context.Request, CheckView.Of(context, call), pictures: null);
        await writer.WriteCard(context, view, embed.Ancestors);
        return Results.Empty;
    }
}
