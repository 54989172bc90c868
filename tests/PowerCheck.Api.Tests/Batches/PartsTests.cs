using System.Text.Json;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>No state is kept for a batch: a file cut into parts for several services is answered as the whole by one.</summary>
public class PartsTests
{
    [Fact]
    public async Task Two_services_answer_two_halves_as_one_answers_the_whole()
    {
        using var first = new Listening();
        using var second = new Listening();
        string[] rigs = [.. Enumerable.Range(0, 60).Select(n => AnyBody.Of(n).ToJsonString())];

        var whole = await Checks(first, rigs);
        var halves = await Task.WhenAll(Checks(first, rigs[..30]), Checks(second, rigs[30..]));

        Assert.Equal(60, whole.Count);
        Assert.Equal(whole, [.. halves[0], .. halves[1]]);
    }

    private static async Task<List<string>> Checks(Listening service, string[] rigs)
    {
        using var caller = await service.Call("?spread=none&remedies=none");
        await caller.Send(string.Join('\n', rigs));
        await caller.End();
        var checks = new List<string>();
        while (await caller.Next() is { } line)
        {
            var outcome = JsonDocument.Parse(line).RootElement;
            if (outcome.TryGetProperty("check", out var check))
            {
                checks.Add(check.GetRawText());
            }
        }

        return checks;
    }
}
