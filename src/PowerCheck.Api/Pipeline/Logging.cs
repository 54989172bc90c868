using Serilog;
using Serilog.Formatting.Compact;

namespace PowerCheck.Api.Pipeline;

/// <summary>One structured line a request, with the trace id that the caller sees.</summary>
internal static class Logging
{
    public static void AddRequestLogs(this WebApplicationBuilder builder) =>
        builder.Services.AddSerilog(
            (_, logger) =>
                logger
                    .ReadFrom.Configuration(builder.Configuration)
                    .Enrich.FromLogContext()
                    .WriteTo.Console(new RenderedCompactJsonFormatter()),
            preserveStaticLogger: true
        );

    public static void UseRequestLogs(this IApplicationBuilder app) =>
        app.UseSerilogRequestLogging(options =>
        {
            // The host's own logger: several hosts may live in one process.
            options.Logger = app.ApplicationServices.GetRequiredService<Serilog.ILogger>();
            options.EnrichDiagnosticContext = (log, context) =>
                log.Set("TraceId", context.TraceIdentifier);
        });
}
