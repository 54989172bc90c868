using Microsoft.Extensions.FileProviders;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Pages;

/// <summary>Style and script of the page. They are within the program, so that they are found wherever it is started.</summary>
internal static class PageAssets
{
    /// <summary>Changes with the build, so that no old copy is used with a new page.</summary>
    public static string Version { get; } =
        typeof(PageAssets).Module.ModuleVersionId.ToString("N")[..8];

    public static void UsePageAssets(this IApplicationBuilder app) =>
        app.UseStaticFiles(
            new StaticFileOptions
            {
                FileProvider = new EmbeddedFileProvider(
                    typeof(PageAssets).Assembly,
                    "PowerCheck.Api.wwwroot"
                ),
                OnPrepareResponse = answer =>
                    answer.Context.Response.Headers.CacheControl = Caching.Year,
            }
        );
}
