using Microsoft.AspNetCore.Http.HttpResults;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Safety;
using PowerCheck.Model.Sources;

namespace PowerCheck.Api.Sources;

/// <summary>Everything that the model rests on.</summary>
internal static class SourcesEndpoint
{
    private static readonly SourcesAnswer Everything = new()
    {
        Items = [.. SourceList.All.Select(Write)],
        BatterySafety = SafetyBlock.Plain,
    };

    public static void MapSources(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet("/v1/sources", Get)
            .WithName("listSources")
            .WithTags("Reference")
            .WithSummary("Everything that the model rests on")
            .WithDescription("The sources that findings, assumptions and cautions cite by key.")
            .Answers(Caching.Hour);

    private static Ok<SourcesAnswer> Get() => TypedResults.Ok(Everything);

    private static SourceAnswer Write(Source source) =>
        new()
        {
            Key = source.Key,
            Title = source.Title,
            Publisher = source.Publisher,
            Used = source.Used,
            Seen = source.Seen,
        };
}
