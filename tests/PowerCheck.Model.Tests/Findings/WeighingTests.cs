using PowerCheck.Model.Findings;
using PowerCheck.Model.Tests.Rigs;
using Check = PowerCheck.Model.Checks.Check;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>What the probability of being past a limit makes of a finding (M13).</summary>
public sealed class WeighingTests
{
    [Theory]
    [InlineData(0.9, true, false, Outcome.Fails, false)]
    [InlineData(0.8, true, false, Outcome.Fails, false)]
    [InlineData(0.79, true, false, Outcome.Doubtful, false)]
    [InlineData(0.2, false, false, Outcome.Doubtful, false)]
    [InlineData(0.19, false, false, Outcome.Holds, true)]
    [InlineData(0.05, false, false, Outcome.Holds, true)]
    [InlineData(0.049, false, false, Outcome.Holds, false)]
    [InlineData(0.01, true, false, Outcome.Doubtful, false)]
    [InlineData(0.01, false, true, Outcome.Doubtful, false)]
    public void The_outcome_follows_from_the_probability(
        double exceedance,
        bool past,
        bool inDoubt,
        Outcome outcome,
        bool caution
    ) =>
        Assert.Equal(
            (outcome, caution),
            Thresholds.Outcome(exceedance, past, Outcome.Fails, inDoubt, false)
        );

    [Theory]
    [InlineData(0.9, Outcome.Doubtful, Outcome.Doubtful, false)]
    [InlineData(0.9, Outcome.Holds, Outcome.Holds, true)]
    [InlineData(0.01, Outcome.Doubtful, Outcome.Holds, false)]
    public void No_outcome_is_worse_than_the_worst_that_a_finding_can_have(
        double exceedance,
        Outcome worst,
        Outcome outcome,
        bool caution
    ) =>
        Assert.Equal(
            (outcome, caution),
            Thresholds.Outcome(exceedance, false, worst, false, false)
        );

    [Theory]
    [InlineData(0.01, true, true)]
    [InlineData(0.01, false, false)]
    [InlineData(0.3, true, false)]
    public void A_rule_of_its_own_cautions_where_the_limit_holds(
        double exceedance,
        bool rule,
        bool caution
    ) =>
        Assert.Equal(
            caution,
            Thresholds.Outcome(exceedance, false, Outcome.Fails, false, rule).Caution
        );

    private static readonly IReadOnlyList<Finding> Sample = Check.Run(SampleRig.Brushless).Findings;

    private static Finding Of(FindingKind kind, string? loadCase) =>
        Sample.Single(f =>
            f.Kind == kind && string.Equals(f.LoadCase, loadCase, StringComparison.Ordinal)
        );

    private static Finding Heat(double reach) =>
        Of(FindingCatalogue.ControllerHeat, "climb") with
        {
            Reach = reach,
            Severeness = reach,
            Outcome = Thresholds.Outcome(reach),
            Caution = false,
        };

    // A finding of which nothing can be told, without a resistance.
    private static readonly Finding Unknown = Check
        .Run(SampleRig.Brushless with { Motor = new() })
        .Findings.First(f => f.Outcome == Outcome.Unknown && f.Kind.Judged);

    private static Chance Chance(double exceedance) => new(exceedance, 80, 120, 0.1, []);

    private static Finding Weighed(Finding finding, double exceedance) =>
        Assert.Single(Judgement.Weigh([finding], [Chance(exceedance)]));

    [Theory]
    [InlineData(0.5, 0.01, Outcome.Holds)]
    [InlineData(0.95, 0.01, Outcome.Holds)]
    [InlineData(1, 0.01, Outcome.Holds)]
    [InlineData(1.01, 0.01, Outcome.Doubtful)]
    [InlineData(0.95, 0.85, Outcome.Fails)]
    public void A_finding_is_weighed_by_its_probability_and_its_best_estimate(
        double reach,
        double exceedance,
        Outcome outcome
    )
    {
        var weighed = Weighed(Heat(reach), exceedance);

        Assert.Equal((outcome, exceedance), (weighed.Outcome, weighed.Chance!.Exceedance));
    }

    [Fact]
    public void Without_a_probability_a_finding_stays_as_it_is()
    {
        var doubtful = Heat(0.95);

        Assert.Same(doubtful, Assert.Single(Judgement.Weigh([doubtful], [null])));
    }

    [Fact]
    public void What_is_unknown_stays_unknown()
    {
        Assert.Same(Unknown, Assert.Single(Judgement.Weigh([Unknown], [Chance(0.9)])));
    }

    [Theory]
    [InlineData(0.5, Outcome.Unknown)]
    [InlineData(0.01, Outcome.Holds)]
    public void The_most_that_a_figure_can_be_makes_a_limit_hold_or_tells_nothing(
        double exceedance,
        Outcome outcome
    ) => Assert.Equal(outcome, Weighed(Heat(0.5) with { Bound = true }, exceedance).Outcome);

    [Theory]
    [InlineData(0.01, false)]
    [InlineData(0.1, true)]
    [InlineData(0.5, true)]
    [InlineData(0.9, true)]
    public void The_probability_is_said_where_it_is_worth_a_word(double exceedance, bool said)
    {
        var message = Weighed(Heat(0.5), exceedance).Message;

        Assert.Equal(
            said,
            message.Contains(
                FormattableString.Invariant($", past it with a probability of {exceedance:0.00}"),
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public void Of_the_same_outcome_the_likeliest_to_be_passed_comes_first()
    {
        Finding[] found =
        [
            Weighed(Heat(0.7), 0.3),
            Weighed(Heat(0.6) with { LoadCase = "hold" }, 0.6),
            Heat(0.95) with
            {
                LoadCase = "level",
            },
        ];

        Assert.Equal(
            ["hold", "climb", "level"],
            Judgement
                .Of([.. found.Select(f => f with { Outcome = Outcome.Doubtful })])
                .Findings.Select(f => f.LoadCase)
        );
    }

    [Theory]
    [InlineData(0.1, Outcome.Holds)]
    [InlineData(0.3, Outcome.Doubtful)]
    public void A_match_that_may_not_be_one_says_so(double exceedance, Outcome outcome)
    {
        var match = Of(FindingCatalogue.ControllerMotorKind, null);
        var weighed = Weighed(match, exceedance);

        Assert.Equal((Outcome.Holds, outcome), (match.Outcome, weighed.Outcome));
        Assert.StartsWith(
            FormattableString.Invariant(
                $"{match.Message[..^1]}, past it with a probability of {exceedance:0.00}; not sure, or else "
            ),
            weighed.Message,
            StringComparison.Ordinal
        );
    }
}
