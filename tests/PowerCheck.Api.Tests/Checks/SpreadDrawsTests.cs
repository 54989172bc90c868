namespace PowerCheck.Api.Tests.Checks;

/// <summary>Exceedance probabilities of random rigs against rigs drawn from what the answers print; half of the rigs.</summary>
public class SpreadDrawsTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 50)];

    [Theory]
    [MemberData(nameof(Numbers))]
    [Trait("speed", "slow")]
    public Task Rigs_drawn_from_the_printed_spreads_are_past_a_limit_as_often_as_is_said(
        int number
    ) => Agree(number);

    internal static async Task Agree(int number) =>
        Assert.All(
            await SpreadDraws.Of(number),
            limit => Assert.InRange(limit.Drawn, limit.Said - 0.02, limit.Said + 0.02)
        );
}

/// <summary>The other half, beside it.</summary>
public class MoreSpreadDrawsTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(51, 50)];

    [Theory]
    [MemberData(nameof(Numbers))]
    [Trait("speed", "slow")]
    public Task Rigs_drawn_from_the_printed_spreads_are_past_a_limit_as_often_as_is_said(
        int number
    ) => SpreadDrawsTests.Agree(number);
}
