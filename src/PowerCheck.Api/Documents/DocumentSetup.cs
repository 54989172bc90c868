using Microsoft.OpenApi;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Documents;

/// <summary>The OpenAPI document and the page that shows it.</summary>
internal static class DocumentSetup
{
    private const string Name = "v1";
    private const string Address = "/openapi/v1.json";

    public static void AddDocument(this IServiceCollection services) =>
        services.AddOpenApi(
            Name,
            options =>
            {
                options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
                options.AddOperationTransformer<OperationTexts>();
                options.AddDocumentTransformer<SchemaFigures>();
                options.AddDocumentTransformer<LinkParameters>();
                options.AddDocumentTransformer<DocumentTexts>();
            }
        );

    public static void UseDocumentPage(this IApplicationBuilder app) =>
        app.UseSwaggerUI(options =>
        {
            options.SwaggerEndpoint(Address, "v1");
            options.RoutePrefix = "docs";
            options.DocumentTitle = "PowerCheck";
        });

    public static void MapDocument(this IEndpointRouteBuilder routes)
    {
        // Another name is nobody's address: without the constraint the framework would answer it with plain text.
        routes
            .MapOpenApi($"/openapi/{{documentName:regex(^{Name}$)}}.json")
            .WithMetadata(new Answering(Caching.Hour, OwnQuery: false));
    }
}
