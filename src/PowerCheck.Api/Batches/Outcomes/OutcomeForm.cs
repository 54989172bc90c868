using System.Buffers;
using System.Text.Json;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Batches.Outcomes;

/// <summary>A form in which outcomes are written; outcomes themselves by several at once.</summary>
internal abstract class OutcomeForm
{
    /// <summary>The media type.</summary>
    public abstract string MediaType { get; }

    /// <summary>Most lines that are answered in this form; null when there is no bound but the request's.</summary>
    public virtual int? MostLines => null;

    /// <summary>Writes what stands before the first outcome.</summary>
    public virtual void Begin(IBufferWriter<byte> to) { }

    /// <summary>Writes an outcome.</summary>
    public abstract void Write(IBufferWriter<byte> to, Outcome outcome);

    /// <summary>Writes what stands between two outcomes.</summary>
    public virtual void Between(IBufferWriter<byte> to) { }

    /// <summary>Writes the tally and what stands behind it.</summary>
    public abstract void End(IBufferWriter<byte> to, TallyAnswer tally);

    /// <summary>Writes a value as JSON.</summary>
    protected static void Json<T>(IBufferWriter<byte> to, T value)
    {
        using var json = new Utf8JsonWriter(to, Options);
        JsonSerializer.Serialize(json, value, JsonForm.Options);
    }

    /// <summary>How JSON is written piece by piece.</summary>
    protected static JsonWriterOptions Options { get; } =
        new() { Encoder = JsonForm.Options.Encoder, SkipValidation = true };
}
