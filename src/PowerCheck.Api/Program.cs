using PowerCheck.Api.Batches;
using PowerCheck.Api.Documents;
using PowerCheck.Api.Door;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Findings;
using PowerCheck.Api.Health;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pages;
using PowerCheck.Api.Pictures;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;
using PowerCheck.Api.Safety;
using PowerCheck.Api.Shortlists;
using PowerCheck.Api.Sources;
using PowerCheck.Api.Texts;

if (Probe.Address(args) is { } address)
{
    return await Probe.Run(address);
}

var builder = WebApplication.CreateBuilder(args);
builder.AddRequestLogs();
builder.WebHost.ConfigureKestrel(kestrel =>
{
    kestrel.AddServerHeader = false;
    // The door counts by itself and answers; the server only keeps out what is larger still.
    kestrel.Limits.MaxRequestBodySize = 2 * BodyReader.MostBytes;
    // A form sends all its fields, most of them empty, in its address.
    kestrel.Limits.MaxRequestLineSize = 32 * 1024;
});
builder.Services.ConfigureHttpJsonOptions(json => JsonForm.Set(json.SerializerOptions));
builder.AddLimits();
builder.AddCallers();
builder.Services.AddCompression();
builder.Services.AddProblems();
builder.Services.AddDocument();
builder.Services.AddSingleton<QueryDoor>();
builder.Services.AddChecks();
builder.Services.AddTexts();
builder.Services.AddPictures();
builder.AddPages();
builder.Services.AddSingleton<BatchDoor>();
builder.Services.AddSingleton<ShortlistDoor>();

var app = builder.Build();
app.UseProxies();
app.UseMiddleware<TraceHeaders>();
app.UseRequestLogs();
app.UseResponseCompression();
app.UseMiddleware<HeadAsGet>();
app.UseProblems();
app.UseDocumentPage();
app.UsePageAssets();
app.UseRouting();
app.UseOrigins();
app.UseMiddleware<AnswerGuard>();
app.UseLimits();

app.MapPages();
app.MapChecks();
app.MapBatches();
app.MapShortlists();
app.MapLimits();
app.MapSources();
app.MapFindings();
app.MapProblems();
app.MapBatterySafety();
app.MapHealth();
app.MapDocument();

await app.RunAsync();
return 0;

/// <summary>The host; public so that tests can start it.</summary>
public partial class Program;
