using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Assumptions;

/// <summary>The book of assumptions lists what was left out, and only that.</summary>
public sealed class LedgerTests
{
    [Fact]
    public void A_figure_that_is_given_is_not_listed()
    {
        var ledger = new Ledger();

        var figure = ledger.Figure(3, "a.b", Unit.Volt, 4, Spread.Relative(0.1), "assumed");

        Assert.Equal(3, figure);
        Assert.Empty(ledger.Assumptions);
    }

    [Fact]
    public void A_figure_that_is_left_out_is_listed_with_all_that_is_said_of_it()
    {
        var ledger = new Ledger();

        var figure = ledger.Figure(
            null,
            "a.b",
            Unit.Volt,
            4,
            Spread.Relative(0.1),
            "assumed",
            "msl"
        );

        Assert.Equal(4, figure);
        Assert.Equal(
            new("a.b", 4, null, Unit.Volt, new(SpreadKind.Relative, 0.1, 0.1), "assumed", "msl"),
            Assert.Single(ledger.Assumptions)
        );
    }

    [Fact]
    public void A_default_that_is_not_known_itself_is_not_listed()
    {
        var ledger = new Ledger();

        Assert.True(
            double.IsNaN(
                ledger.Figure(null, "a.b", Unit.Volt, double.NaN, Spread.Factor(2), "assumed")
            )
        );
        Assert.Empty(ledger.Assumptions);
    }

    [Fact]
    public void A_word_that_is_left_out_is_listed_as_callers_write_it()
    {
        var ledger = new Ledger();

        Assert.Equal(
            MotorKind.Brushless,
            ledger.Word<MotorKind>(null, "a.b", MotorKind.Brushless, "assumed")
        );

        var listed = Assert.Single(ledger.Assumptions);
        Assert.Equal(("a.b", "brushless"), (listed.Path, listed.Word));
        Assert.True(double.IsNaN(listed.Value));
    }

    [Fact]
    public void A_word_that_is_given_is_not_listed()
    {
        var ledger = new Ledger();

        Assert.Equal(
            MotorKind.Brushed,
            ledger.Word(MotorKind.Brushed, "a.b", MotorKind.Brushless, "assumed")
        );
        Assert.Empty(ledger.Assumptions);
    }

    [Fact]
    public void What_cannot_be_assumed_is_not_known_and_listed_with_its_plausible_range()
    {
        var ledger = new Ledger();

        Assert.Equal(3, ledger.Known(3, "a.b", Unit.Cells, 1, 6));
        Assert.Empty(ledger.Unknowns);
        Assert.True(double.IsNaN(ledger.Known(null, "a.b", Unit.Cells, 1, 6)));
        Assert.Equal(new("a.b", Unit.Cells, 1, 6), Assert.Single(ledger.Unknowns));
    }

    [Theory]
    [InlineData(InsulationClass.B, "B")]
    [InlineData(InsulationClass.H, "H")]
    public void A_class_of_insulation_stays_a_capital_letter(
        InsulationClass insulation,
        string word
    ) => Assert.Equal(word, Words.Of(insulation));

    [Fact]
    public void A_word_begins_small() =>
        Assert.Equal(
            ["innerOuter", "false"],
            [Words.Of(Sample.InnerOuter), Words.Of(value: false)]
        );

    private enum Sample
    {
        InnerOuter,
    }
}
