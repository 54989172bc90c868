using PowerCheck.Model.Checks;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>Work that nobody waits for any more.</summary>
public sealed class StopTests
{
    private static readonly CancellationToken Stopped = new(true);

    [Theory]
    [InlineData(SpreadMethod.None)]
    [InlineData(SpreadMethod.Linear)]
    [InlineData(SpreadMethod.Montecarlo)]
    public void A_check_is_given_up(SpreadMethod spread) =>
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Check.Run(SampleRig.Brushless, spread, remedies: false, Stopped)
        );

    [Theory]
    [InlineData(SpreadMethod.None)]
    [InlineData(SpreadMethod.Linear)]
    public void A_choice_of_parts_is_given_up(SpreadMethod spread) =>
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Shortlist.Of(
                SampleRig.Brushless with
                {
                    Controller = new(),
                },
                SoughtPart.Controller,
                null,
                [],
                ShortlistOrder.Verdict,
                spread,
                Stopped
            )
        );
}
