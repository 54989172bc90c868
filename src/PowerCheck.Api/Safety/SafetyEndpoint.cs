using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Safety;

/// <summary>The cautions about batteries by themselves.</summary>
internal static class SafetyEndpoint
{
    public static void MapBatterySafety(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet(SafetyBlock.Address, Get)
            .WithName("getBatterySafety")
            .WithTags("Safety")
            .WithSummary("Cautions about batteries")
            .WithDescription("The cautions that stand in every answer, with their sources.")
            .Answers(Caching.Hour);

    private static Ok<BatterySafetyAnswer> Get() =>
        TypedResults.Ok(new BatterySafetyAnswer { BatterySafety = SafetyBlock.Plain });
}

/// <summary>The cautions about batteries.</summary>
public sealed class BatterySafetyAnswer
{
    /// <summary>The cautions.</summary>
    public required BatterySafety BatterySafety { get; init; }
}
