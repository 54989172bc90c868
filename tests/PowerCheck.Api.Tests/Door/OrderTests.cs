using System.Text.Json.Nodes;
using CsCheck;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>JSON objects have no order: neither has a request.</summary>
public class OrderTests
{
    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public async Task Members_in_any_order_get_the_same_answer(string name)
    {
        var answer = await Service.Check(
            SampleRigs.Of(name).ToJsonString(),
            "?findings=all&remedies=none"
        );
        Assert.NotEmpty(answer.Text);

        await Gen.Int[1, int.MaxValue - 1]
            .SampleAsync(
                async number =>
                {
                    var turned = Shuffled(SampleRigs.Of(name), new Random(number));
                    var again = await Service.Check(
                        turned.ToJsonString(),
                        "?findings=all&remedies=none"
                    );
                    Assert.Equal(answer.Text, again.Text);
                },
                iter: 10,
                threads: 1
            );
    }

    [Fact]
    public void Shuffling_really_changes_the_order() =>
        Assert.NotEqual(
            SampleRigs.Of("the example").ToJsonString(),
            Shuffled(SampleRigs.Of("the example"), new Random(3)).ToJsonString()
        );

    // Members are shuffled at every depth; lists keep their order, which has a meaning.
    private static JsonNode Shuffled(JsonNode node, Random dice)
    {
        switch (node)
        {
            case JsonObject members:
                var all = members
                    .Select(m => (m.Key, Value: m.Value is null ? null : Shuffled(m.Value, dice)))
                    .ToArray();
                dice.Shuffle(all);
                return new JsonObject(all.Select(m => KeyValuePair.Create(m.Key, m.Value)));
            case JsonArray list:
                return new JsonArray([.. list.Select(n => n is null ? null : Shuffled(n, dice))]);
            default:
                return node.DeepClone();
        }
    }
}
