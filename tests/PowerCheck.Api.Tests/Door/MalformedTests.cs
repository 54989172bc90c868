using System.Net;
using System.Text;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>What is not JSON text is refused with the place where it stops being it.</summary>
public class MalformedTests
{
    private const string Good = Rigs.Least;

    public static TheoryData<string, int, int, string> Bodies =>
        new()
        {
            { "", 1, 1, "empty" },
            { " \n ", 2, 2, "empty" },
            { Good + "x", 1, Good.Length + 1, "follows" },
            { Good + Good, 1, Good.Length + 1, "follows" },
            { "{\n  // which motor?\n}", 2, 3, "comments" },
            { "{\n  \"motor\": {},\n}", 3, 1, "comma" },
            { "{\"motor\": {}", 1, 13, "too early" },
            { "{\"motor\": {]}", 1, 12, "does not belong" },
            { "{\"°°\": {]}", 1, 9, "does not belong" },
            { "{'motor': {}}", 1, 2, "does not belong" },
            { "{\"id\": \"\\uD800\"}", 1, 8, "UTF-8" },
            { "{\"\\uDC00\": 1}", 1, 2, "UTF-8" },
            { "{\"strange\": [\"\\uD800\"]}", 1, 14, "UTF-8" },
            { "{\"motor\": NaN}", 1, 11, "does not belong" },
            { "{\"motor\": 012}", 1, 12, "does not belong" },
            { "\"\\", 1, 3, "too early" },
        };

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task Broken_text_is_refused_at_its_place(
        string body,
        int line,
        int column,
        string reason
    )
    {
        var answer = await Service.Check(body);

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal("/problems/malformed", answer.Json.GetProperty("type").GetString());
        Assert.Contains(reason, answer.Json.GetProperty("detail").GetString());
        Assert.Equal(
            (line, column),
            (
                answer.Json.GetProperty("line").GetInt32(),
                answer.Json.GetProperty("column").GetInt32()
            )
        );
    }

    [Fact]
    public async Task Bytes_that_are_no_UTF8_are_refused_at_their_place()
    {
        byte[] body = [.. "{\n\"id\":\""u8, 0xC3, 0x28, .. "\"}"u8];

        var answer = await Service.Check(body);

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal(2, answer.Json.GetProperty("line").GetInt32());
        Assert.Equal(7, answer.Json.GetProperty("column").GetInt32());
    }

    [Fact]
    public async Task Deep_nesting_is_refused()
    {
        var deep = new StringBuilder("{\"x\":").Insert(5, "[", 5000).ToString();

        var answer = await Service.Check(deep);

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Contains("deeper", answer.Json.GetProperty("detail").GetString());
    }

    [Fact]
    public async Task A_list_instead_of_an_object_is_read_but_wrong()
    {
        var error = (await Service.Check($"[{Good}]")).OnlyError();

        Assert.Equal("", error.GetProperty("path").GetString());
        Assert.Equal("wrong-type", error.GetProperty("code").GetString());
    }
}
