using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Referee.Tests.Simulator;

/// <summary>The simulator's runner: known answers come out, and a bad deck is an exception although the exit code is 0.</summary>
public sealed class CircuitSimulatorTests
{
    [RefereeFact]
    public void The_charging_of_a_capacitor_is_that_of_the_books()
    {
        var deck = new Deck("capacitor behind a resistor")
            .Add($"V1 in 0 1")
            .Add($"R1 in out {1000.0}")
            .Add($"C1 out 0 {1e-3} ic=0");

        var run = CircuitSimulator.Transient(deck, new(3, 1e-3), "v(out)", "v(in)");

        Assert.Equal(1 - Math.Exp(-1), run.At("v(out)", 1), 1e-6);
        Assert.Equal(1 - Math.Exp(-2.5), run.At("v(out)", 2.5), 1e-6);
        Assert.Equal(Math.Log(2), run.FirstReached("v(out)", 0.5), 1e-6);
        Assert.Equal(double.PositiveInfinity, run.FirstReached("v(out)", 1));
        Assert.Equal(1, run.At("v(in)", 1.5), 1e-12);
    }

    [RefereeFact]
    public void A_transient_analysis_starts_settled_where_no_initial_condition_is_asked_for()
    {
        var deck = new Deck("capacitor behind a resistor")
            .Add($"V1 in 0 1")
            .Add($"R1 in out 1")
            .Add($"C1 out 0 1");

        var run = CircuitSimulator.Transient(
            deck,
            new(0.1, 0.01) { FromInitial = false },
            "v(out)"
        );

        Assert.Equal(1, run.At("v(out)", 0.05), 1e-9);
    }

    [RefereeFact]
    public void The_operating_point_of_a_divider_is_that_of_the_books()
    {
        var deck = new Deck("divider").Add($"V1 in 0 {9.0}").Add($"R1 in mid 2").Add($"R2 mid 0 1");

        var point = CircuitSimulator.OperatingPoint(deck, "v(mid)", "i(v1)", "v(in)-v(mid)");

        Assert.Equal(3, point["v(mid)"], 1e-9);
        Assert.Equal(-3, point["i(v1)"], 1e-9);
        Assert.Equal(6, point["v(in)-v(mid)"], 1e-9);
    }

    [RefereeFact]
    public void A_constant_power_load_takes_its_power()
    {
        var deck = new Deck("constant power")
            .Add($"V1 in 0 10")
            .Add($"R1 in bus 1")
            .Add($"B1 bus 0 i={16.0}/v(bus)");

        var point = CircuitSimulator.OperatingPoint(deck.Add($".nodeset v(bus)=10"), "v(bus)");

        Assert.Equal(8, point["v(bus)"], 1e-8);
    }

    [RefereeTheory]
    [InlineData("a resistor without a value", "R1 in 0", "resistance")]
    [InlineData("a diode of a model that nobody knows", "D1 in 0 nosuch", "model")]
    [InlineData("two sources that contradict each other", "V2 in 0 2", "failed")]
    [InlineData(
        "a load that asks for more than there is",
        "R1 in bus 1\nB1 bus 0 i=30/v(bus)",
        "failed"
    )]
    [InlineData("a node that hangs in the air", "C1 in loose 1", "singular")]
    [InlineData("an element that is none", "Z9 in", "")]
    public void A_bad_deck_is_an_exception(string what, string line, string word)
    {
        var deck = new Deck(what).Add($"V1 in 0 10").Add($"{line}");

        var failure = Assert.Throws<SimulatorException>(() =>
            CircuitSimulator.OperatingPoint(deck, "v(in)")
        );

        Assert.Contains(word, failure.Reason, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(line, failure.Message, StringComparison.Ordinal);
    }

    [RefereeTheory]
    [InlineData("an expression that does not end", "B1 out 0 v=v(in)*(")]
    [InlineData("an element that is none", "Z9 in")]
    [InlineData("an element that stands there twice", "C1 in 0 1")]
    public void A_bad_deck_is_not_one_without_a_solution(string what, string line)
    {
        var deck = new Deck(what).Add($"V1 in 0 10").Add($"C1 in 0 1").Add($"{line}");

        Assert.False(
            Assert
                .Throws<SimulatorException>(() =>
                    CircuitSimulator.Transient(deck, new(1, 0.1), "v(in)")
                )
                .Unsolved
        );
    }

    [RefereeFact]
    public void A_figure_that_the_deck_does_not_have_is_an_exception()
    {
        var deck = new Deck("one resistor").Add($"V1 in 0 1").Add($"R1 in 0 1");

        Assert.Throws<SimulatorException>(() =>
            CircuitSimulator.OperatingPoint(deck, "v(elsewhere)")
        );
        Assert.False(
            Assert
                .Throws<SimulatorException>(() =>
                    CircuitSimulator.Transient(deck, new(1, 0.1), "v(elsewhere)")
                )
                .Unsolved
        );
    }

    [RefereeFact]
    public void A_run_that_explodes_is_an_exception()
    {
        var deck = new Deck("growth without end").Add($"C1 x 0 1 ic=1").Add($"B1 0 x i=v(x)*v(x)");

        Assert.True(
            Assert
                .Throws<SimulatorException>(() =>
                    CircuitSimulator.Transient(deck, new(2, 0.01), "v(x)")
                )
                .Unsolved
        );
    }

    [RefereeFact]
    public void A_run_that_finds_no_start_is_one_without_a_solution()
    {
        var deck = new Deck("neither high nor low")
            .Add($"C1 x 0 1 ic=1")
            .Add($"R1 x 0 1")
            .Add($"B1 a 0 v=1-2*u(v(a)-0.5)");

        Assert.True(
            Assert
                .Throws<SimulatorException>(() =>
                    CircuitSimulator.Transient(deck, new(2, 0.01), "v(x)")
                )
                .Unsolved
        );
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_figure_that_is_not_finite_does_not_come_into_a_deck(double figure) =>
        Assert.Throws<ArgumentException>(() => new Deck("bad").Add($"R1 a 0 {figure}"));

    [Fact]
    public void A_number_is_written_with_all_its_digits() =>
        Assert.Equal(
            "* digits\nR1 a 0 0.1234567890123456\n",
            new Deck("digits").Add($"R1 a 0 {0.1234567890123456}").Text
        );

    [Fact]
    public void The_writer_of_decks_knows_nothing_of_the_model() =>
        Assert.DoesNotContain(
            typeof(Deck).Assembly.GetReferencedAssemblies(),
            name => name.Name!.Contains("Model", StringComparison.Ordinal)
        );
}
