using PowerCheck.Api.Faces;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>The page, the card for shops, and what they are made of.</summary>
internal static class PagesSetup
{
    public static void AddPages(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(EmbedSettings.Of(builder.Configuration));
        builder.Services.AddSingleton<PageWriter>();
        builder.Services.AddSingleton<PageDoor>();
        builder.Services.AddSingleton<ICheckFace, PageFace>();
        builder.Services.AddSingleton<IProblemFace, ProblemPageFace>();
    }

    public static void MapPages(this IEndpointRouteBuilder routes)
    {
        routes.MapPage();
        routes.MapEmbed();
    }
}
