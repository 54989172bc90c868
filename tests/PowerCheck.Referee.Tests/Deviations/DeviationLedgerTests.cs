namespace PowerCheck.Referee.Tests.Deviations;

public class DeviationLedgerTests
{
    [Fact]
    public void The_largest_deviation_of_a_quantity_and_its_place_stay() =>
        Assert.Equal(
            new Deviation(3, 0.1, "%", 0.07, "rig 2"),
            new Deviation(1, 0.1, "%", 0.02, "rig 1")
                .With(new(1, 0.1, "%", 0.07, "rig 2"))
                .With(new(1, 0.1, "%", 0.03, "rig 3"))
        );

    [Fact]
    public void A_deviation_that_is_not_a_number_is_the_largest() =>
        Assert.Equal(
            new Deviation(3, 0.1, "%", double.NaN, "rig 2"),
            new Deviation(1, 0.1, "%", 0.02, "rig 1")
                .With(new(1, 0.1, "%", double.NaN, "rig 2"))
                .With(new(1, 0.1, "%", 0.03, "rig 3"))
        );

    [Fact]
    public void A_deviation_past_its_tolerance_or_not_a_number_is_told()
    {
        Assert.True(new Deviation(1, 0.5, "%", 0.5, "rig 1").Holds);
        Assert.False(new Deviation(1, 0.5, "%", 0.51, "rig 1").Holds);
        Assert.False(new Deviation(1, 0.5, "%", double.NaN, "rig 1").Holds);
    }
}
