using System.Buffers;
using System.Text.Json;
using PowerCheck.Api.Batches.Fields;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Batches.Outcomes;

/// <summary>Outcomes as JSON objects, a line each (NDJSON).</summary>
/// <param name="fields">The members asked for; null for all.</param>
internal class LineOutcomes(IReadOnlyList<FieldPath>? fields) : OutcomeForm
{
    /// <summary>The media type.</summary>
    public const string Type = "application/x-ndjson";

    /// <inheritdoc/>
    public override string MediaType => Type;

    /// <inheritdoc/>
    public override void Write(IBufferWriter<byte> to, Outcome outcome)
    {
        WriteOne(to, outcome);
        to.Write("\n"u8);
    }

    /// <inheritdoc/>
    public override void End(IBufferWriter<byte> to, TallyAnswer tally)
    {
        Json(to, tally);
        to.Write("\n"u8);
    }

    /// <summary>Writes an outcome as one object.</summary>
    protected void WriteOne(IBufferWriter<byte> to, Outcome outcome)
    {
        if (outcome.Report is { } report && fields is not null)
        {
            WriteFields(to, outcome, report, fields);
        }
        else
        {
            Json(
                to,
                new OutcomeAnswer
                {
                    Kind = outcome.Report is null ? "problem" : "check",
                    Line = outcome.Line,
                    Id = outcome.Id,
                    Check = outcome.Report,
                    Problem = outcome.Problem,
                }
            );
        }
    }

    private static void WriteFields(
        IBufferWriter<byte> to,
        Outcome outcome,
        Checks.Answers.CheckReport report,
        IReadOnlyList<FieldPath> fields
    )
    {
        using var json = new Utf8JsonWriter(to, Options);
        json.WriteStartObject();
        json.WriteString("kind"u8, "check"u8);
        json.WriteNumber("line"u8, outcome.Line);
        if (outcome.Id is { } id)
        {
            json.WriteString("id"u8, id);
        }

        json.WriteStartObject("fields"u8);
        foreach (var field in fields)
        {
            if (field.In(report) is { } value)
            {
                json.WritePropertyName(field.Text);
                JsonSerializer.Serialize(json, value, field.Type, JsonForm.Options);
            }
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }
}

/// <summary>Outcomes and tally as one JSON object.</summary>
/// <param name="fields">The members asked for; null for all.</param>
/// <param name="mostLines">Most lines that are answered in this form.</param>
internal sealed class ListOutcomes(IReadOnlyList<FieldPath>? fields, int mostLines)
    : LineOutcomes(fields)
{
    /// <summary>The media type.</summary>
    public new const string Type = "application/json";

    /// <inheritdoc/>
    public override string MediaType => Type;

    /// <inheritdoc/>
    public override int? MostLines => mostLines;

    /// <inheritdoc/>
    public override void Begin(IBufferWriter<byte> to) => to.Write("{\"outcomes\":[\n"u8);

    /// <inheritdoc/>
    public override void Write(IBufferWriter<byte> to, Outcome outcome) => WriteOne(to, outcome);

    /// <inheritdoc/>
    public override void Between(IBufferWriter<byte> to) => to.Write(",\n"u8);

    /// <inheritdoc/>
    public override void End(IBufferWriter<byte> to, TallyAnswer tally)
    {
        to.Write("\n],\"tally\":"u8);
        Json(to, tally);
        to.Write("}\n"u8);
    }
}
