using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Checks;

namespace PowerCheck.Api.Health;

/// <summary>Whether the service runs, and whether it can do its job.</summary>
internal static class HealthEndpoints
{
    public static void MapHealth(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/health/live", Live)
            .WithName("isLive")
            .WithTags("Health")
            .WithSummary("Whether the service runs")
            .WithDescription("Answers as soon as the process serves requests.")
            .Answers(Caching.None);
        routes
            .MapGet("/health/ready", Ready)
            .WithName("isReady")
            .WithTags("Health")
            .WithSummary("Whether the service can check a rig")
            .WithDescription("Runs the check of the example rig.")
            .Answers(Caching.None)
            .ProducesProblems(StatusCodes.Status503ServiceUnavailable);
    }

    private static Ok<HealthAnswer> Live() => TypedResults.Ok(Answer("live"));

    private static Results<Ok<HealthAnswer>, ProblemResult> Ready(
        HttpContext context,
        ILogger<HealthAnswer> log
    )
    {
        try
        {
            Check.Run(RigMapper.Map(Example()));
            return TypedResults.Ok(Answer("ready"));
        }
        // Whatever keeps the check from running is what this address is there to tell.
        catch (Exception failure)
        {
            log.LogError(failure, "The example rig could not be checked");
            context.Response.Headers.RetryAfter = "10";
            return new ProblemResult(ProblemKinds.NotReady, ProblemKinds.NotReady.Meaning);
        }
    }

    private static CheckRequest Example() =>
        RequestReader.Read<CheckRequest>(Encoding.UTF8.GetBytes(ExampleRig.Json), new()).Request!;

    private static HealthAnswer Answer(string status) =>
        new() { Status = status, BatterySafety = SafetyBlock.Plain };
}

/// <summary>How the service is.</summary>
public sealed class HealthAnswer
{
    /// <summary>live or ready.</summary>
    [Text(10, "ready")]
    public required string Status { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}
