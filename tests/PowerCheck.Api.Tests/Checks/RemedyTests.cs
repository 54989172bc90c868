using System.Net;
using System.Text.Json;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>What an answer says that a single change makes of a limit, sent back as a request.</summary>
public class RemedyTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 100)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public Task A_change_that_is_sent_back_has_the_outcome_that_was_promised(int number) =>
        Kept(number, "none");

    // Every other one: each of its changes takes a thousand rigs.
    public static TheoryData<int> Half => [.. Enumerable.Range(1, 50).Select(n => 2 * n)];

    [Theory]
    [MemberData(nameof(Half))]
    [Trait("speed", "slow")]
    public Task So_it_has_with_the_spread_of_the_figures(int number) => Kept(number, "linear");

    private static async Task Kept(int number, string spread)
    {
        var query = $"?findings=all&spread={spread}";
        var answer = await Checked(AnyBody.Of(number).ToJsonString(), query);
        var checks = new Dictionary<(string, double), JsonElement>();
        foreach (var finding in Findings(answer))
        {
            foreach (var remedy in Remedies(finding).Where(IsCure))
            {
                var (path, to) = (Text(remedy, "path"), remedy.GetProperty("to").GetDouble());
                if (!checks.TryGetValue((path, to), out var again))
                {
                    var body = AnyBody.Of(number).With(path, to);
                    checks[(path, to)] = again = await Checked(
                        body.ToJsonString(),
                        $"{query}&remedies=none"
                    );
                }

                var same = Same(finding, again);
                Assert.True(
                    Text(same, "outcome") == "holds",
                    $"{path} {to}: {Text(same, "message")}"
                );
                Assert.Equal(Text(remedy, "verdict"), Text(again, "verdict"));
            }
        }
    }

    [Fact]
    public async Task Of_a_hundred_rigs_many_have_changes_to_offer_and_each_says_to_or_none()
    {
        var answers = await Task.WhenAll(
            Enumerable
                .Range(1, 100)
                .Select(n => Checked(AnyBody.Of(n).ToJsonString(), Service.Alone))
        );
        var remedies = answers.SelectMany(Findings).SelectMany(Remedies).ToArray();

        Assert.True(remedies.Count(IsCure) > 500);
        Assert.All(
            remedies,
            remedy => Assert.NotEqual(IsCure(remedy), remedy.TryGetProperty("none", out _))
        );
    }

    [Fact]
    public async Task With_the_spread_of_the_figures_the_limit_that_decides_has_changes_to_offer()
    {
        var answer = await Checked(AnyBody.Of(4).ToJsonString(), "?spread=linear");
        var withRemedies = Findings(answer).Where(finding => Remedies(finding).Any()).ToArray();

        Assert.True(Assert.Single(withRemedies).GetProperty("decides").GetBoolean());
        Assert.Contains(Remedies(withRemedies[0]), IsCure);
    }

    [Fact]
    public async Task A_caller_who_wants_none_gets_none()
    {
        var answer = await Checked(AnyBody.Of(4).ToJsonString(), "?spread=none&remedies=none");

        Assert.Empty(Findings(answer).SelectMany(Remedies));
        Assert.NotEmpty(
            Findings(await Checked(AnyBody.Of(4).ToJsonString(), Service.Alone))
                .SelectMany(Remedies)
        );
    }

    private static async Task<JsonElement> Checked(string body, string query)
    {
        var answer = await Service.Check(body, query);
        Assert.True(answer.Status == HttpStatusCode.OK, $"{body}\n{answer.Text}");
        return answer.Json;
    }

    private static IEnumerable<JsonElement> Findings(JsonElement answer) =>
        answer.GetProperty("findings").EnumerateArray();

    private static IEnumerable<JsonElement> Remedies(JsonElement finding) =>
        finding.TryGetProperty("remedies", out var remedies) ? remedies.EnumerateArray() : [];

    private static bool IsCure(JsonElement remedy) => remedy.TryGetProperty("to", out _);

    // The same limit: of its code the one in the same load case, else the only one.
    private static JsonElement Same(JsonElement finding, JsonElement answer)
    {
        var alike = Findings(answer)
            .Where(other => Text(other, "code") == Text(finding, "code"))
            .ToArray();
        return alike is [var only]
            ? only
            : alike.Single(other => Text(other, "loadCase") == Text(finding, "loadCase"));
    }

    private static string Text(JsonElement element, string member) =>
        element.TryGetProperty(member, out var text) ? text.GetString()! : "";
}
