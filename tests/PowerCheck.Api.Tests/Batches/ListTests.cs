using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>The items of one JSON list.</summary>
public class ListTests
{
    private const string AsLines = Fleet.Quick + "&fields=verdict&form=ndjson";

    [Fact]
    public async Task A_list_is_answered_with_one_object_of_outcomes_and_tally()
    {
        var answer = await Fleet.Send($"[{Fleet.Rig("a")},\n {Fleet.Rig("b")}]", Fleet.List);

        Assert.Equal("application/json", answer.MediaType);
        Assert.Equal(
            ["a", "b"],
            answer.Json.GetProperty("outcomes").EnumerateArray().Select(one => one.Text("id"))
        );
        Assert.Equal(2, answer.Json.GetProperty("tally").GetProperty("lines").GetInt32());
    }

    [Theory]
    [InlineData("[]", "")]
    [InlineData(" [ \n ] \n", "")]
    [InlineData("\uFEFF[R]", "check 1")]
    [InlineData("[R,R]", "check 1, check 2")]
    [InlineData("[R,]", "check 1, problem 2")]
    [InlineData("[R,,R]", "check 1, problem 2, check 3")]
    [InlineData("[R,{\"id\":\"]},{\\\"\"},R]", "check 1, problem 2, check 3")]
    [InlineData("[R,17,R]", "check 1, problem 2, check 3")]
    [InlineData("[R,{\"id\":\"never closed\n},R]", "check 1, problem 2, check 3")]
    public async Task An_item_is_an_item_whatever_stands_in_it(string body, string kinds)
    {
        var list = body.Replace("R", Fleet.Rig("a"), StringComparison.Ordinal);

        var outcomes = (await Fleet.Send(list, Fleet.List, AsLines)).Outcomes();

        Assert.Equal(kinds, string.Join(", ", outcomes.Kinds()));
        Assert.True(outcomes[^1].GetProperty("complete").GetBoolean());
    }

    [Theory]
    [InlineData("[R", "check 1")]
    [InlineData("[R,", "check 1")]
    [InlineData("[R,{\"id\":\"x\"", "check 1, problem 2")]
    [InlineData("[R] and more", "check 1, problem 2", "after-list")]
    public async Task A_list_that_is_not_closed_or_goes_on_is_not_complete(
        string body,
        string kinds,
        string reason = "cut-off"
    )
    {
        var list = body.Replace("R", Fleet.Rig("a"), StringComparison.Ordinal);

        var outcomes = (await Fleet.Send(list, Fleet.List, AsLines)).Outcomes();

        Assert.Equal(kinds, string.Join(", ", outcomes.Kinds()));
        Assert.False(outcomes[^1].GetProperty("complete").GetBoolean());
        Assert.Equal(reason, outcomes[^1].Text("reason"));
    }

    [Fact]
    public async Task An_item_that_is_too_long_spoils_none_after_it()
    {
        var item = "\"" + new string('x', 700_000) + "\"";

        var outcomes = (
            await Fleet.Send($"[{item},{Fleet.Rig("a")}]", Fleet.List, AsLines)
        ).Outcomes();

        Assert.Equal(["problem 1", "check 2"], outcomes.Kinds());
        Assert.Equal(413, outcomes.Problem().GetProperty("status").GetInt32());
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("")]
    [InlineData("null")]
    public async Task What_is_no_list_is_refused_whole(string body)
    {
        var answer = await Fleet.Send(body, Fleet.List);

        Assert.Equal(System.Net.HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal("application/problem+json", answer.MediaType);
        Assert.True(answer.Json.TryGetProperty("batterySafety", out _));
    }

    [Fact]
    public async Task A_fault_names_item_and_place_within_it()
    {
        var outcomes = (
            await Fleet.Send($"[{Fleet.Rig("a")},\n{{\n  \"id\": x}}]", Fleet.List, AsLines)
        ).Outcomes();

        Assert.StartsWith("Item 2, its line 3, column 9:", outcomes.Problem().Text("detail"));
    }
}
