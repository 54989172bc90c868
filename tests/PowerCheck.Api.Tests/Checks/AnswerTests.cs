using System.Globalization;
using System.Net;
using System.Text.Json;
using PowerCheck.Api.Tests.Documents;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>The answer keeps what the contract promises, for any rig.</summary>
public class AnswerTests
{
    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task The_answer_is_as_the_document_says(string name)
    {
        var answer = await Service.Check(
            SampleRigs.Of(name).ToJsonString(),
            "?findings=all&spread=none"
        );

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        var document = (await Service.Get("/openapi/v1.json")).Json;
        Assert.Empty(SchemaCheck.Faults(document, "CheckAnswer", answer.Json));
    }

    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task Figures_have_six_significant_digits_at_most(string name)
    {
        var answer = await Service.Check(
            SampleRigs.Of(name).ToJsonString(),
            "?findings=all&spread=none"
        );

        var figures = Numbers(answer.Json).ToArray();
        Assert.True(figures.Length > 50);
        Assert.All(
            figures,
            figure =>
                Assert.Equal(
                    double.Parse(
                        figure.ToString("G6", CultureInfo.InvariantCulture),
                        CultureInfo.InvariantCulture
                    ),
                    figure
                )
        );
    }

    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task Nothing_is_null(string name)
    {
        var answer = await Service.Check(
            SampleRigs.Of(name).ToJsonString(),
            "?findings=all&spread=none"
        );

        Assert.DoesNotContain(":null", answer.Text);
    }

    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task The_verdict_follows_from_the_outcomes(string name)
    {
        var answer = await Service.Check(
            SampleRigs.Of(name).ToJsonString(),
            "?findings=all&spread=none"
        );
        var judged = (await Service.Get("/v1/findings"))
            .Json.GetProperty("items")
            .EnumerateArray()
            .Where(kind => kind.GetProperty("judged").GetBoolean())
            .Select(kind => kind.GetProperty("code").GetString())
            .ToHashSet();

        var outcomes = answer
            .Json.GetProperty("findings")
            .EnumerateArray()
            .Where(finding => judged.Contains(finding.GetProperty("code").GetString()))
            .Select(finding => finding.GetProperty("outcome").GetString())
            .ToHashSet();

        var expected =
            outcomes.Contains("fails") ? "unsuitable"
            : outcomes.Contains("unknown") ? "undetermined"
            : outcomes.Contains("doubtful") ? "limited"
            : "suitable";
        Assert.Equal(expected, answer.Json.GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Findings_that_simply_hold_are_listed_only_when_all_are_wanted()
    {
        var body = Rigs.Example().ToJsonString();
        var all = Findings(await Service.Check(body, "?findings=all&spread=none")).ToArray();
        var few = Findings(await Service.Check(body)).ToArray();

        Assert.True(few.Length < all.Length);
        Assert.Subset(all.ToHashSet(), few.ToHashSet());
    }

    [Fact]
    public async Task The_id_comes_back_and_is_absent_when_there_was_none()
    {
        var with = await Service.Check(Rigs.Smallest().With("id", "Rig \"7\" °").ToJsonString());
        var without = await Service.Check(Rigs.Least);

        Assert.Equal("Rig \"7\" °", with.Json.GetProperty("id").GetString());
        Assert.False(without.Json.TryGetProperty("id", out _));
    }

    [Fact]
    public async Task A_pack_with_too_many_cells_puts_the_charger_caution_first()
    {
        var answer = await Service.Check(
            Rigs.Example().With("battery.seriesCells", 6).ToJsonString()
        );

        Assert.Equal("unsuitable", answer.Json.GetProperty("verdict").GetString());
        Assert.Equal(
            "charger-setting",
            answer
                .Json.GetProperty("batterySafety")
                .GetProperty("cautions")[0]
                .GetProperty("key")
                .GetString()
        );
    }

    [Fact]
    public async Task Every_code_and_every_source_of_an_answer_is_explained()
    {
        var codes = await Keys("/v1/findings", "code");
        var sources = await Keys("/v1/sources", "key");
        foreach (var name in SampleRigs.All)
        {
            var answer = await Service.Check(
                SampleRigs.Of(name).ToJsonString(),
                "?findings=all&spread=none"
            );
            foreach (var finding in answer.Json.GetProperty("findings").EnumerateArray())
            {
                Assert.Contains(finding.GetProperty("code").GetString(), codes);
                Assert.All(
                    finding.GetProperty("sources").EnumerateArray(),
                    source => Assert.Contains(source.GetString(), sources)
                );
            }

            Assert.All(
                answer.Json.GetProperty("assumptions").EnumerateArray(),
                assumption => Assert.Contains(assumption.GetProperty("source").GetString(), sources)
            );
        }
    }

    [Fact]
    public async Task The_same_body_gets_the_same_answer()
    {
        var body = Rigs.Example().ToJsonString();

        Assert.Equal((await Service.Check(body)).Text, (await Service.Check(body)).Text);
    }

    private static IEnumerable<string> Findings(Answer answer) =>
        answer
            .Json.GetProperty("findings")
            .EnumerateArray()
            .Select(finding => finding.GetRawText());

    private static async Task<HashSet<string?>> Keys(string address, string member) =>
        (await Service.Get(address))
            .Json.GetProperty("items")
            .EnumerateArray()
            .Select(item => item.GetProperty(member).GetString())
            .ToHashSet();

    private static IEnumerable<double> Numbers(JsonElement element) =>
        element.ValueKind switch
        {
            JsonValueKind.Number => [element.GetDouble()],
            JsonValueKind.Object => element
                .EnumerateObject()
                .SelectMany(member => Numbers(member.Value)),
            JsonValueKind.Array => element.EnumerateArray().SelectMany(Numbers),
            _ => [],
        };
}
