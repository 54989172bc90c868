using System.Text;
using System.Text.Json;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>Requests and answers on the way at the same time.</summary>
public sealed class StreamTests : IDisposable
{
    private const string Verdicts = Fleet.Quick + "&fields=verdict";

    /// <summary>Request and answers of so many lines are each larger than what sockets and server hold between them.</summary>
    internal const int Count = 600;

    private readonly Listening service = new();

    /// <summary>A line that takes much room and no time.</summary>
    internal static string Padded { get; } = Fleet.Rig("rig").PadRight(60_000) + "\n";

    public void Dispose() => service.Dispose();

    [Fact]
    public async Task A_line_is_answered_before_the_next_is_sent()
    {
        using var caller = await service.Call(Verdicts);

        for (var n = 1; n <= 5; n++)
        {
            await caller.Send(Fleet.Rig($"rig-{n}") + "\n");
            Assert.Equal($"rig-{n}", (await Outcome(caller)).Text("id"));
        }

        await caller.End();
        Assert.Equal("tally", (await Outcome(caller)).Text("kind"));
    }

    [Fact]
    public async Task A_line_in_pieces_is_one_line()
    {
        using var caller = await service.Call(Verdicts);

        foreach (var piece in (Fleet.Rig("rig") + "\n").Chunk(97))
        {
            await caller.Send(new(piece));
        }

        Assert.Equal("check", (await Outcome(caller)).Text("kind"));
        await caller.End();
        Assert.Equal(1, (await Outcome(caller)).GetProperty("lines").GetInt32());
    }

    [Fact]
    public async Task A_caller_who_sends_all_before_reading_gets_every_outcome()
    {
        using var caller = await service.Call();
        for (var n = 0; n < Count; n++)
        {
            await caller.Send(Padded);
        }

        await caller.End();

        for (var line = 1; line <= Count; line++)
        {
            Assert.StartsWith($"{{\"kind\":\"check\",\"line\":{line},", await caller.Next());
        }

        var tally = await Outcome(caller);
        Assert.Equal(Count, tally.GetProperty("lines").GetInt32());
        Assert.True(tally.GetProperty("complete").GetBoolean());
    }

    [Fact]
    public async Task The_usual_client_sends_all_before_reading_and_gets_the_tally()
    {
        using var request = Fleet.Request(
            Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(Padded, Count))),
            Fleet.Lines
        );

        using var response = await service.Client.SendAsync(
            request,
            HttpCompletionOption.ResponseHeadersRead
        );
        using var reader = new StreamReader(await response.Content.ReadAsStreamAsync());
        var (lines, last) = (0, "");
        while (await reader.ReadLineAsync() is { } line)
        {
            (lines, last) = (lines + 1, line);
        }

        Assert.Equal(Count + 1, lines);
        Assert.True(JsonDocument.Parse(last).RootElement.GetProperty("complete").GetBoolean());
    }

    [Fact]
    public async Task A_row_is_answered_though_other_lines_stood_before_the_header()
    {
        using var caller = await service.Call(Verdicts + "&form=ndjson", Fleet.Table);

        await caller.Send(
            "sep=,\n\nvehicle.massKg,motor.name,controller.name,battery.name\n3,,,\n"
        );

        Assert.Equal(4, (await Outcome(caller)).GetProperty("line").GetInt32());
        await caller.End();
        Assert.Equal(1, (await Outcome(caller)).GetProperty("lines").GetInt32());
    }

    private static async Task<JsonElement> Outcome(Caller caller) =>
        JsonDocument.Parse((await caller.Next())!).RootElement;
}
