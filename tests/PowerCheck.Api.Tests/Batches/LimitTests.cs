using System.Net;
using System.Text;
using System.Text.Json;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>What happens beyond the limits: a problem, or a tally that says so; never a silent end.</summary>
public class LimitTests
{
    private const string Verdicts = Fleet.Quick + "&fields=verdict";

    [Fact]
    public async Task Limits_are_published()
    {
        var limits = (await Service.Get("/v1/limits")).Json;

        Assert.Equal(262_144, limits.GetProperty("check").GetProperty("bytes").GetInt32());
        Assert.Equal(1000, limits.GetProperty("batch").GetProperty("jsonLines").GetInt32());
        Assert.True(limits.TryGetProperty("batterySafety", out _));
    }

    [Theory]
    [InlineData("Limits:Batch:Lines", "0")]
    [InlineData("Limits:Check:Seconds", "-1")]
    public void A_limit_that_makes_no_sense_stops_the_service_from_starting(
        string name,
        string value
    )
    {
        var failure = Assert.Throws<InvalidOperationException>(() => new Listening((name, value)));

        Assert.Contains(name, failure.Message);
    }

    [Fact]
    public async Task One_line_more_than_allowed_ends_with_a_tally_that_says_so()
    {
        using var service = new Listening(("Limits:Batch:Lines", "3"));

        var exact = await Tally(service, Rigs(3));
        var more = await Tally(service, Rigs(5));

        Assert.True(exact.GetProperty("complete").GetBoolean());
        Incomplete(more, "line-limit", lines: 3);
    }

    [Fact]
    public async Task One_object_has_a_thousand_outcomes_at_most()
    {
        using var service = new Listening(("Limits:Batch:JsonLines", "3"));
        using var request = Fleet.Request(
            Encoding.UTF8.GetBytes(Rigs(5)),
            Fleet.Lines,
            Verdicts + "&form=json"
        );

        using var response = await service.Client.SendAsync(request);
        var answer = (await Answer.Of(response)).Json;

        Assert.Equal(3, answer.GetProperty("outcomes").GetArrayLength());
        Incomplete(answer.GetProperty("tally"), "line-limit", lines: 3);
    }

    [Fact]
    public async Task More_bytes_than_allowed_end_with_a_tally_that_says_so()
    {
        using var service = new Listening(("Limits:Batch:Bytes", "5000"));
        using var caller = await service.Call(Verdicts);
        await caller.Send(Rigs(1));
        Assert.StartsWith("{\"kind\":\"check\",\"line\":1,", await caller.Next());

        await caller.Send(Rigs(10));

        Incomplete(await Last(caller), "byte-limit");
    }

    [Theory]
    [InlineData("Limits:Batch:Seconds", "time-limit")]
    [InlineData("Limits:Batch:IdleSeconds", "idle")]
    public async Task Time_that_is_up_ends_with_a_tally_that_says_so(string limit, string reason)
    {
        using var service = new Listening((limit, "1"));
        using var caller = await service.Call(Verdicts);

        await caller.Send(Rigs(2) + Fleet.Rig("unfinished")[..50]);

        Incomplete(await Last(caller), reason, lines: 2);
    }

    [Fact]
    public async Task More_put_aside_than_allowed_ends_with_a_tally_that_says_so()
    {
        using var service = new Listening(("Limits:Batch:AsideBytes", "100000"));
        using var caller = await service.Call();

        // Nothing is read until all is sent, which is more than sockets and server hold.
        for (var n = 0; n < StreamTests.Count; n++)
        {
            await caller.Send(StreamTests.Padded);
        }

        // The request is not even ended when the tally comes.
        Incomplete(await Last(caller), "aside-limit");
    }

    [Fact]
    public async Task A_line_that_takes_too_long_is_a_problem()
    {
        using var service = new Listening(("Limits:Check:Seconds", "0.001"));
        using var caller = await service.Call("?fields=verdict");

        await caller.Send(SampleRigs.Of("a controller that burns").ToJsonString() + "\n");
        await caller.End();

        Assert.Contains("/problems/took-too-long", await caller.Next());
        Assert.Equal(1, (await Last(caller)).GetProperty("problems").GetInt32());
    }

    [Fact]
    public async Task A_check_that_takes_too_long_is_a_problem()
    {
        using var service = new Listening(("Limits:Check:Seconds", "0.001"));

        using var response = await service.Client.PostAsync(
            "/v1/checks",
            new StringContent(
                SampleRigs.Of("a controller that burns").ToJsonString(),
                Encoding.UTF8,
                "application/json"
            )
        );
        var answer = await Answer.Of(response);

        Assert.True(answer.Status == HttpStatusCode.ServiceUnavailable, answer.Text);
        Assert.Equal("/problems/took-too-long", answer.Json.Text("type"));
        Assert.Equal("1", answer.Headers["Retry-After"]);
    }

    [Fact]
    public async Task One_request_more_than_allowed_is_told_when_to_try_again()
    {
        using var service = new Listening(("Limits:Batch:AtOnce", "1"));
        using var first = await service.Call(Verdicts);
        await first.Send(Rigs(1));
        Assert.NotNull(await first.Next());

        using var request = Fleet.Request([], Fleet.Lines);
        using var response = await service.Client.SendAsync(request);
        var answer = await Answer.Of(response);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.Status);
        Assert.Equal("/problems/busy", answer.Json.Text("type"));
        Assert.Equal("5", answer.Headers["Retry-After"]);
    }

    [Fact]
    public async Task A_caller_who_hangs_up_frees_the_service()
    {
        using var service = new Listening(("Limits:Batch:AtOnce", "1"));
        using (var caller = await service.Call(Verdicts))
        {
            // The request is never ended: nothing but the hang-up can end it.
            await caller.Send(Rigs(1));
            Assert.NotNull(await caller.Next());
            Assert.Equal(HttpStatusCode.ServiceUnavailable, await Another(service));
        }

        Assert.Equal(HttpStatusCode.OK, await Freed(service));
    }

    [Theory]
    [InlineData("Limits:Batch:Seconds", "2", "time-limit")]
    [InlineData("Limits:Batch:IdleSeconds", "1", "idle")]
    [InlineData("Limits:Batch:Bytes", "20000000", "byte-limit")]
    public async Task A_batch_that_ends_while_bytes_are_put_aside_still_has_its_tally(
        string limit,
        string value,
        string reason
    )
    {
        using var service = new Listening((limit, value));
        using var caller = await service.Call();
        for (var n = 0; n < StreamTests.Count; n++)
        {
            await caller.Send(StreamTests.Padded);
        }

        // Nothing is read until the limit is reached, and the request is not ended.
        await Task.Delay(TimeSpan.FromSeconds(2.5));

        Incomplete(await Last(caller), reason);
    }

    [Fact]
    public async Task A_caller_who_neither_ends_nor_reads_is_hung_up_on()
    {
        using var service = new Listening(
            ("Limits:Batch:AtOnce", "1"),
            ("Limits:Batch:UnreadSeconds", "5")
        );
        using var caller = await service.Call();
        for (var n = 0; n < StreamTests.Count; n++)
        {
            await caller.Send(StreamTests.Padded);
        }

        Assert.Equal(HttpStatusCode.OK, await Freed(service));
    }

    [Fact]
    public async Task A_refused_header_is_told_to_a_caller_who_sends_all_before_reading()
    {
        using var service = new Listening();
        var table =
            "vehicle.mass\n"
            + string.Concat(
                Enumerable.Repeat("3" + new string(' ', 60_000) + "\n", StreamTests.Count)
            );
        using var request = Fleet.Request(Encoding.UTF8.GetBytes(table), Fleet.Table);

        using var response = await service.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
    }

    [Fact]
    public async Task A_service_that_is_stopped_in_the_middle_ends_with_a_tally_that_says_so()
    {
        using var service = new Listening();
        Task stopping;
        using (var caller = await service.Call("?fields=verdict"))
        {
            await caller.Send(Rigs(500));
            Assert.NotNull(await caller.Next());

            stopping = service.Stop();

            Incomplete(await Last(caller), "shutdown");
        }

        await stopping;
    }

    [Fact]
    public async Task A_caller_who_hangs_up_while_rigs_wait_frees_the_service()
    {
        using var service = new Listening(("Limits:Batch:AtOnce", "1"));
        var rig = SampleRigs.Of("a controller that burns").ToJsonString().PadRight(60_000) + "\n";
        using (var caller = await service.Call(""))
        {
            for (var n = 0; n < 300; n++)
            {
                await caller.Send(rig);
            }
        }

        Assert.Equal(HttpStatusCode.OK, await Freed(service));
    }

    [Fact]
    public async Task A_service_that_is_stopped_ends_with_a_tally_that_says_so()
    {
        using var service = new Listening();
        Task stopping;
        using (var caller = await service.Call(Verdicts))
        {
            await caller.Send(Rigs(1));
            Assert.NotNull(await caller.Next());

            stopping = service.Stop();

            Incomplete(await Last(caller), "shutdown", lines: 1);
        }

        await stopping;
    }

    /// <summary>What the service says to another caller, once it takes one on or half a minute is over.</summary>
    private static async Task<HttpStatusCode> Freed(Listening service)
    {
        var status = HttpStatusCode.ServiceUnavailable;
        for (var tries = 0; status != HttpStatusCode.OK && tries < 300; tries++)
        {
            await Task.Delay(100);
            status = await Another(service);
        }

        return status;
    }

    private static async Task<HttpStatusCode> Another(Listening service)
    {
        using var request = Fleet.Request([], Fleet.Lines);
        using var response = await service.Client.SendAsync(request);
        return response.StatusCode;
    }

    private static string Rigs(int count) =>
        string.Concat(Enumerable.Range(1, count).Select(n => Fleet.Rig($"r{n}") + "\n"));

    private static async Task<JsonElement> Tally(Listening service, string body)
    {
        using var caller = await service.Call(Verdicts);
        await caller.Send(body);
        await caller.End();
        return await Last(caller);
    }

    private static async Task<JsonElement> Last(Caller caller)
    {
        while (await caller.Next() is { } line)
        {
            var outcome = JsonDocument.Parse(line).RootElement;
            if (outcome.Text("kind") == "tally")
            {
                return outcome;
            }
        }

        throw new InvalidOperationException("the answer ended without a tally");
    }

    private static void Incomplete(JsonElement tally, string reason, int? lines = null)
    {
        Assert.False(tally.GetProperty("complete").GetBoolean());
        Assert.Equal(reason, tally.Text("reason"));
        var answered = tally.GetProperty("lines").GetInt32();
        Assert.Equal(lines ?? answered, answered);
        // Every line of these requests has a rig.
        Assert.Equal(answered + 1, tally.GetProperty("nextLine").GetInt32());
    }
}
