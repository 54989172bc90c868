using Microsoft.AspNetCore.ResponseCompression;

namespace PowerCheck.Api.Pipeline;

/// <summary>Compresses pages and drawings, which shrink to a third; data only takes time, and nothing secret is in either.</summary>
internal static class Compression
{
    public static void AddCompression(this IServiceCollection services) =>
        services.AddResponseCompression(options =>
        {
            options.EnableForHttps = true;
            options.MimeTypes = ["text/html", "text/css", "text/javascript", "image/svg+xml"];
            options.Providers.Add<BrotliCompressionProvider>();
            options.Providers.Add<GzipCompressionProvider>();
        });
}
