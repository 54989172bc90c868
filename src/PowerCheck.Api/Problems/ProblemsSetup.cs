namespace PowerCheck.Api.Problems;

/// <summary>Turns whatever goes wrong in the pipeline into a problem.</summary>
internal static class ProblemsSetup
{
    public static void AddProblems(this IServiceCollection services)
    {
        // Ours comes first, so that the framework's never gets to write.
        services.AddSingleton<IProblemDetailsWriter, ProblemWriter>();
        services.AddProblemDetails();
    }

    public static void UseProblems(this IApplicationBuilder app)
    {
        app.UseExceptionHandler(
            new ExceptionHandlerOptions
            {
                StatusCodeSelector = exception =>
                    exception is BadHttpRequestException bad
                        ? bad.StatusCode
                        : StatusCodes.Status500InternalServerError,
            }
        );
        app.UseStatusCodePages();
    }
}
