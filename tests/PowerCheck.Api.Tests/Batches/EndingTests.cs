using PowerCheck.Api.Batches.Intake;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>Why a batch ends.</summary>
public class EndingTests
{
    [Fact]
    public void What_is_reached_when_all_is_taken_changes_nothing()
    {
        using var ending = new Ending(CancellationToken.None);

        ending.AllTaken();
        ending.Reach(Reason.Shutdown);

        Assert.Null(ending.Reason);
    }

    [Fact]
    public void The_first_reason_counts()
    {
        using var ending = new Ending(CancellationToken.None);

        ending.Reach(Reason.CutOff);
        ending.Reach(Reason.Shutdown);
        ending.AllTaken();

        Assert.Equal(Reason.CutOff, ending.Reason);
        Assert.True(ending.Stop.IsCancellationRequested);
    }

    [Fact]
    public void A_reason_that_is_only_noted_stops_nothing()
    {
        using var ending = new Ending(CancellationToken.None);

        ending.Note(Reason.CutOff);

        Assert.Equal(Reason.CutOff, ending.Reason);
        Assert.False(ending.Stop.IsCancellationRequested);
    }
}
