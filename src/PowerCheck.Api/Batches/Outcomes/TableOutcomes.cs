using System.Buffers;
using System.Globalization;
using System.Text;
using CsvHelper;
using PowerCheck.Api.Batches.Fields;
using PowerCheck.Api.Batches.Tables;
using PowerCheck.Api.Checks.Answers;

namespace PowerCheck.Api.Batches.Outcomes;

/// <summary>Outcomes as rows of a table (CSV): kind, line, id, the members of the answer, problem. The last row is the tally.</summary>
/// <param name="fields">The members asked for; null for verdict, summary and the deciding limit.</param>
/// <param name="style">How the table is written; known when the header of the request is read.</param>
internal sealed class TableOutcomes(IReadOnlyList<FieldPath>? fields, Func<TableStyle> style)
    : OutcomeForm
{
    /// <summary>The media type.</summary>
    public const string Type = "text/csv";

    /// <summary>Members of the answer that a table has when none are asked for, each with its heading.</summary>
    private static readonly (string Heading, FieldPath Path)[] Usual =
    [
        Column("verdict", "verdict"),
        Column("summary", "summary"),
        Column("code", "findings.0.code"),
        Column("loadCase", "findings.0.loadCase"),
        Column("estimate", "findings.0.estimate"),
        Column("limit", "findings.0.limit"),
        Column("unit", "findings.0.unit"),
        Column("exceedanceProbability", "findings.0.exceedanceProbability"),
    ];

    private readonly (string Heading, FieldPath Path)[] columns =
        fields?.Select(field => (field.Text, field)).ToArray() ?? Usual;

    /// <summary>The column in which the tally speaks: the summary's, or the first.</summary>
    private int Told =>
        Math.Max(0, Array.FindIndex(columns, column => column.Heading is "summary"));

    /// <inheritdoc/>
    public override string MediaType => "text/csv; charset=utf-8; header=present";

    /// <inheritdoc/>
    public override void Begin(IBufferWriter<byte> to)
    {
        if (style().HasMark)
        {
            to.Write(Encoding.UTF8.Preamble);
        }

        Row(to, "kind", "line", "id", columns.Select(column => column.Heading), "problem");
    }

    /// <inheritdoc/>
    public override void Write(IBufferWriter<byte> to, Outcome outcome) =>
        Row(
            to,
            outcome.Report is null ? "problem" : "check",
            outcome.Line.ToString(CultureInfo.InvariantCulture),
            Harmless(outcome.Id),
            columns.Select(column => Cell(column.Path, outcome.Report)),
            outcome.Problem is { } problem ? Harmless(Text(problem)) : ""
        );

    /// <inheritdoc/>
    public override void End(IBufferWriter<byte> to, TallyAnswer tally) =>
        Row(
            to,
            tally.Kind,
            tally.Lines.ToString(CultureInfo.InvariantCulture),
            "",
            columns.Select((_, at) => at == Told ? Text(tally) : ""),
            tally.Message is { } message
                ? $"{tally.Reason}: {message} nextLine is {tally.NextLine}."
                : ""
        );

    private static (string Heading, FieldPath Path) Column(string heading, string path) =>
        (heading, FieldPath.Of(path)!);

    private static string Text(TallyAnswer tally) =>
        $"{tally.Verdicts.Suitable} suitable, {tally.Verdicts.Limited} limited, {tally.Verdicts.Unsuitable} unsuitable, {tally.Verdicts.Undetermined} undetermined, {tally.Problems} not checked, by model {tally.Model.Version}. {tally.BatterySafety.Leading}";

    private static string Text(Problems.ProblemReport problem) =>
        problem.Errors is { Count: > 0 } errors
            ? string.Join(' ', errors.Select(error => error.Message))
            : problem.Detail;

    private string Cell(FieldPath path, CheckReport? report) =>
        (report is null ? null : path.In(report)) switch
        {
            null => "",
            double figure => Figure(figure),
            bool flag => flag ? "true" : "false",
            string text => Harmless(text),
            var other => Convert.ToString(other, CultureInfo.InvariantCulture)!,
        };

    private string Figure(double figure)
    {
        var text = figure.ToString("R", CultureInfo.InvariantCulture);
        return style().IsDecimalComma ? text.Replace('.', ',') : text;
    }

    // A spreadsheet would compute a text that begins like a formula.
    private static string Harmless(string? text) =>
        text is [('=' or '+' or '-' or '@' or '\t' or '\r'), ..] ? $"'{text}" : text ?? "";

    private void Row(
        IBufferWriter<byte> to,
        string kind,
        string line,
        string id,
        IEnumerable<string> cells,
        string problem
    )
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, TableText.Form(style().Delimiter)))
        {
            foreach (var cell in (string[])[kind, line, id, .. cells, problem])
            {
                csv.WriteField(cell);
            }

            csv.NextRecord();
        }

        Encoding.UTF8.GetBytes(text.ToString(), to);
    }
}
