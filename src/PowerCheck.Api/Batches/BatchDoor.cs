using PowerCheck.Api.Batches.Entries;
using PowerCheck.Api.Batches.Fields;
using PowerCheck.Api.Batches.Intake;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Batches.Tables;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Door;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Batches;

/// <summary>Reads what headers and query say of a call for many checks, and finds everything wrong with it.</summary>
internal sealed class BatchDoor(QueryDoor queries, ServiceLimits limits)
{
    /// <summary>Words for the forms, in their order.</summary>
    public static readonly string[] FormWords = ["ndjson", "csv", "json"];

    private static readonly string[] Options =
    [
        .. CheckOptions.Names,
        FieldsOption.Name,
        FormOption.Name,
    ];

    /// <summary>Media types that are read and answered, the one for streams first.</summary>
    public static readonly string[] Forms =
    [
        LineOutcomes.Type,
        TableOutcomes.Type,
        ListOutcomes.Type,
    ];

    /// <summary>Reads headers and query.</summary>
    /// <returns>The call; or what is wrong with it.</returns>
    public (BatchCall? Call, ProblemResult? Problem) Read(HttpRequest request, Ending ending)
    {
        if (BodyForm.Of(request, Forms) is not { } sent)
        {
            return (null, ProblemOf.MediaType(Forms));
        }

        var faults = new Faults();
        queries.RefuseUnknown(request.Query, Options, faults);
        var options = CheckOptions.Of(request.Query, faults);
        var word = QueryDoor.Word(request.Query, FormOption.Name, FormWords, faults);
        var wanted = word is null
            ? AcceptHeader.Best(request.Headers.Accept, [sent, .. Forms])
            : Forms[Array.IndexOf(FormWords, word)];
        if (wanted is null)
        {
            return (null, ProblemOf.Accept(Forms));
        }

        var fields = FieldsOption.Of(request.Query, wanted is TableOutcomes.Type, faults);
        if (!faults.None)
        {
            return (null, ProblemOf.Request(faults));
        }

        EntryReader entries = sent switch
        {
            TableOutcomes.Type => new RowEntries(),
            ListOutcomes.Type => new ListEntries(ending),
            _ => new LineEntries(),
        };
        return (new(entries, Outcomes(wanted, fields, entries), Needed(options, fields)), null);
    }

    private OutcomeForm Outcomes(
        string wanted,
        IReadOnlyList<FieldPath>? fields,
        EntryReader entries
    ) =>
        wanted switch
        {
            TableOutcomes.Type => new TableOutcomes(
                fields,
                () => (entries as RowEntries)?.Style ?? TableStyle.Plain
            ),
            ListOutcomes.Type => new ListOutcomes(fields, limits.Batch.JsonLines),
            _ => new LineOutcomes(fields),
        };

    /// <summary>Remedies take most of the time and stand in findings and summary alone: they are not sought for other members.</summary>
    private static CheckOptions Needed(CheckOptions options, IReadOnlyList<FieldPath>? fields) =>
        fields is null || fields.Any(TellsRemedies) ? options : options with { Remedies = false };

    private static bool TellsRemedies(FieldPath field) =>
        field.Text.StartsWith("findings", StringComparison.Ordinal)
        || field.Text.StartsWith("summary", StringComparison.Ordinal);
}

/// <summary>A call for many checks.</summary>
/// <param name="Entries">Takes the request apart.</param>
/// <param name="Outcomes">Writes the answer.</param>
/// <param name="Options">How each rig is checked.</param>
internal sealed record BatchCall(EntryReader Entries, OutcomeForm Outcomes, CheckOptions Options);
