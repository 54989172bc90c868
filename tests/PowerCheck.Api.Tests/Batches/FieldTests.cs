using PowerCheck.Api.Batches.Fields;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>Members of an answer by path.</summary>
public class FieldTests
{
    [Fact]
    public async Task Every_path_gives_what_stands_there_in_the_whole_answer()
    {
        var rig = SampleRigs.Of("a controller that burns").ToJsonString();
        var whole = (await Fleet.Send(rig)).Outcomes()[0].GetProperty("check");

        foreach (var paths in FieldPath.All().Chunk(100))
        {
            var fields = (
                await Fleet.Send(rig, query: $"{Fleet.Quick}&fields={string.Join(',', paths)}")
            )
                .Outcomes()[0]
                .GetProperty("fields");

            foreach (var path in paths)
            {
                var there = JsonPath.Find(whole, path);
                var given = fields.TryGetProperty(path, out var value);
                Assert.True(given == there is not null, path);
                Assert.Equal(there?.GetRawText(), given ? value.GetRawText() : null);
            }
        }
    }

    [Theory]
    [InlineData("verdikt", Fleet.Lines, "out-of-range", "verdict")]
    [InlineData("findings.code", Fleet.Lines, "out-of-range", "findings.0.code")]
    [InlineData("batterySafety", Fleet.Lines, "out-of-range", null)]
    [InlineData("verdict,verdict", Fleet.Lines, "doubled", null)]
    [InlineData("findings", Fleet.Table, "out-of-range", "findings.0.code")]
    [InlineData(
        "temperatures.motorWinding",
        Fleet.Table,
        "out-of-range",
        "temperatures.motorWinding.courseEndC"
    )]
    public async Task A_path_that_leads_nowhere_is_refused(
        string fields,
        string type,
        string code,
        string? nearest
    )
    {
        var error = (
            await Fleet.Send("vehicle.massKg\n3\n", type, $"{Fleet.Quick}&fields={fields}")
        ).OnlyError();

        Assert.Equal("fields", error.Text("path"));
        Assert.Equal(code, error.Text("code"));
        Assert.Equal(
            nearest,
            error.TryGetProperty("nearest", out var near) ? near.GetString() : null
        );
    }

    [Fact]
    public async Task An_item_that_is_not_there_is_absent()
    {
        var outcome = (
            await Fleet.Send(
                Fleet.Rig("a"),
                query: Fleet.Quick + "&fields=findings.99.code,verdict"
            )
        ).Outcomes()[0];

        Assert.Equal(
            ["verdict"],
            outcome.GetProperty("fields").EnumerateObject().Select(p => p.Name)
        );
    }
}
