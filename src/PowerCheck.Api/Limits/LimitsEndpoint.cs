using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Limits;

/// <summary>How much the service takes on.</summary>
internal static class LimitsEndpoint
{
    public static void MapLimits(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet("/v1/limits", Get)
            .WithName("listLimits")
            .WithTags("Reference")
            .WithSummary("How much the service takes on")
            .WithDescription(
                "Sizes, times and numbers up to which requests are answered, and what happens beyond them."
            )
            .Answers(Caching.None);

    private static Ok<LimitsAnswer> Get(ServiceLimits limits) =>
        TypedResults.Ok(
            new LimitsAnswer
            {
                Check = limits.Check,
                Shortlist = limits.Shortlist,
                Batch = limits.Batch,
                BatterySafety = SafetyBlock.Plain,
            }
        );
}

/// <summary>How much the service takes on.</summary>
public sealed class LimitsAnswer
{
    /// <summary>Of checks, and of each line of many at once.</summary>
    public required CheckLimits Check { get; init; }

    /// <summary>Of choosing a part.</summary>
    public required ShortlistLimits Shortlist { get; init; }

    /// <summary>Of many checks at once.</summary>
    public required BatchLimits Batch { get; init; }

    /// <summary>Cautions about batteries.</summary>
    public required BatterySafety BatterySafety { get; init; }
}
