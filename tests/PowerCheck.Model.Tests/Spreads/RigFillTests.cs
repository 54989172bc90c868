using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>Every figure of a rig can be read, moved and put back.</summary>
public sealed class RigFillTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 40)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_rig_with_its_assumptions_put_in_place_is_the_same_rig(int number)
    {
        var label = RandomRig.Of(number);
        var complete = RigCompletion.Of(label);

        var again = RigCompletion.Of(RigFill.Of(label, complete));

        Assert.Equal(complete.Rig.Motor, again.Rig.Motor with { });
        Assert.Equal(complete.Rig.Battery with { CellResistanceGiven = true }, again.Rig.Battery);
        Assert.Equal(complete.Rig.ReceiverSupply, again.Rig.ReceiverSupply);
        Assert.Equal(complete.Rig.Leads, again.Rig.Leads);
        Assert.Equal(complete.Course.Segments, again.Course.Segments);
        Assert.Equal(complete.Rig.Road, again.Rig.Road);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_assumption_that_is_spread_is_an_input(int number)
    {
        var label = RandomRig.Of(number);
        var complete = RigCompletion.Of(label);

        var inputs = Input
            .Of(RigFill.Of(label, complete), complete.Ledger.Assumptions)
            .Select(input => input.Figure.Path);

        Assert.Subset(
            inputs.ToHashSet(StringComparer.Ordinal),
            complete
                .Ledger.Assumptions.Where(a => a.Spread != Spread.None)
                .Select(a => a.Path)
                .ToHashSet(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void What_is_written_to_a_figure_is_read_from_it_and_from_no_other()
    {
        var label = SampleRig.Brushless;
        var filled = RigFill.Of(label, RigCompletion.Of(label));
        var figures = RigFigures.Of(filled);

        Assert.Distinct(figures.Select(figure => figure.Path), StringComparer.Ordinal);
        Assert.All(
            figures,
            figure =>
            {
                var moved = figure.Write(filled, 3);
                Assert.Equal(3, figure.Read(moved));
                Assert.All(
                    figures.Where(other => other != figure),
                    other => Assert.Equal(other.Read(filled), other.Read(moved))
                );
            }
        );
    }
}
