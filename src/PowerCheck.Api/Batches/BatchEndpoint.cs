using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;
using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Batches;

/// <summary>Many checks at once.</summary>
internal static class BatchEndpoint
{
    /// <summary>How long a caller who goes on sending is listened to once the answer is complete, assumed.</summary>
    private static readonly TimeSpan LongestListening = TimeSpan.FromMinutes(1);

    public static void MapBatches(this IEndpointRouteBuilder routes) =>
        routes
            .MapPost("/v1/checks/batch", Post)
            .WithName("checkRigs")
            .WithTags("Checks")
            .WithSummary("Check many rigs")
            .WithDescription(
                "Checks a rig a line while the lines arrive, and answers an outcome a line in the same order; the last is the tally. A bad line is a problem in its place and stops nothing. An answer without a tally, or whose tally is not complete, is to be resumed at the first line that is not answered. Each line is checked by itself and no state is kept, so a file may be cut into parts for several services."
            )
            // Any form gets to the door, which knows what is read here and says so.
            .Accepts<IReadOnlyList<CheckRequest>>("application/json", "*/*")
            .Produces<OutcomesAnswer>()
            .Answers(
                new(Caching.None, OwnQuery: true)
                {
                    Forms = BatchDoor.Forms,
                    FormWords = BatchDoor.FormWords,
                }
            )
            .Limited(LimitsSetup.Batches)
            .ProducesProblems(
                StatusCodes.Status400BadRequest,
                StatusCodes.Status413PayloadTooLarge,
                StatusCodes.Status415UnsupportedMediaType,
                StatusCodes.Status503ServiceUnavailable
            );

    private static async Task<IResult> Post(
        HttpContext context,
        BatchDoor door,
        ServiceLimits limits,
        IHostApplicationLifetime life,
        ILogger<Batch> log
    )
    {
        using var ending = new Ending(context.RequestAborted);
        var (call, problem) = door.Read(context.Request, ending);
        if (call is null)
        {
            return problem!;
        }

        LiftServerLimits(context.Features);
        using var stopping = life.ApplicationStopping.Register(() => ending.Reach(Reason.Shutdown));
        using var late = new CancellationTokenSource(TimeSpan.FromSeconds(limits.Batch.Seconds));
        using var onTime = late.Token.Register(() => ending.Reach(Reason.Time(limits.Batch)));
        var answerer = new LineAnswerer(call, limits.Check, log);
        await Serve(context, call, answerer, limits.Batch, ending, life);
        return Results.Empty;
    }

    /// <summary>Takes the request in and answers it, side by side.</summary>
    private static async Task Serve(
        HttpContext context,
        BatchCall call,
        LineAnswerer answerer,
        BatchLimits limits,
        Ending ending,
        IHostApplicationLifetime life
    )
    {
        using var listening = CancellationTokenSource.CreateLinkedTokenSource(
            context.RequestAborted
        );
        var inlet = new RequestInlet(context.Request.BodyReader, limits, ending);
        var intake = new RequestIntake(inlet, limits, ending);
        var taking = intake.Run(listening.Token);
        try
        {
            var sender = new AnswerSender(
                context.Response.BodyWriter,
                inlet,
                intake,
                limits,
                context.Abort
            );
            var batch = new Batch(call, answerer, limits, intake, sender, ending);
            await Answer(context, call, batch, intake, ending);
            await context.Response.CompleteAsync();
        }
        finally
        {
            inlet.IsAnswered();
            ending.Close();
            listening.CancelAfter(LongestListening);
            using var leaving = life.ApplicationStopping.Register(listening.Cancel);
            await taking;
        }
    }

    private static async Task Answer(
        HttpContext context,
        BatchCall call,
        Batch batch,
        RequestIntake intake,
        Ending ending
    )
    {
        if (await call.Entries.Begin(intake.Arrived, ending) is { } unreadable)
        {
            await unreadable.ExecuteAsync(context);
            return;
        }

        context.Response.ContentType = call.Outcomes.MediaType;
        await batch.Run(context.RequestAborted);
    }

    // The server would cut a long or slow stream off without a word; here the batch's own limits count.
    private static void LiftServerLimits(IFeatureCollection features)
    {
        if (features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = null;
        }

        if (features.Get<IHttpMinRequestBodyDataRateFeature>() is { } request)
        {
            request.MinDataRate = null;
        }

        if (features.Get<IHttpMinResponseDataRateFeature>() is { } response)
        {
            response.MinDataRate = null;
        }
    }
}
