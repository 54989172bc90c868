using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Shortlists;

/// <summary>Candidates for an open place in order (M14), against checks of the rig with each.</summary>
public sealed class RankingTests
{
    private static readonly RigLabel Rig = SampleRig.Brushless;

    private static Candidate Pack(string id, double grams, int cells) =>
        new(
            id,
            Rig with
            {
                Battery = Rig.Battery with { MassKg = grams / 1000, SeriesCells = cells },
            }
        );

    private static readonly Candidate[] Packs =
    [
        Pack("six cells", 400, 6),
        Pack("as fitted", 190, Rig.Battery.SeriesCells!.Value),
        Pack("one cell", 80, 1),
        Pack("alike", 150, Rig.Battery.SeriesCells!.Value),
    ];

    private static IReadOnlyList<Ranked> Ordered(ShortlistOrder order, RigLabel? fitted = null) =>
        Shortlist.Of(Rig, SoughtPart.Battery, fitted, Packs, order, SpreadMethod.None).Candidates;

    [Fact]
    public void The_best_verdict_comes_first_and_each_is_that_of_the_rig_with_the_candidate()
    {
        var ordered = Ordered(ShortlistOrder.Verdict);

        Assert.Equal([1, 2, 3, 4], ordered.Select(ranked => ranked.Rank));
        Assert.Equal(ordered.Select(r => r.Verdict).Order(), ordered.Select(r => r.Verdict));
        Assert.All(
            ordered,
            ranked =>
            {
                var check = Check.Run(ranked.Candidate.Rig);
                Assert.Equal(check.Verdict, ranked.Verdict);
                Assert.Equal(check.Findings[0].Kind, ranked.Decides!.Kind);
            }
        );
        Assert.Equal(Verdict.Unsuitable, ordered[^1].Verdict);
    }

    [Fact]
    public void The_lightest_comes_first_where_mass_is_asked_for() =>
        Assert.Equal(
            ["one cell", "alike", "as fitted", "six cells"],
            Ordered(ShortlistOrder.Mass).Select(ranked => ranked.Candidate.Id)
        );

    [Fact]
    public void The_farthest_from_its_limit_comes_first_where_the_margin_is_asked_for()
    {
        var closeness = Ordered(ShortlistOrder.Margin).Select(r => r.Decides!.Severeness).ToArray();

        Assert.Equal(closeness.Order(), closeness);
        Assert.True(closeness[0] < closeness[^1]);
    }

    [Fact]
    public void Figures_that_differ_from_the_part_that_is_fitted_are_named()
    {
        var ordered = Ordered(ShortlistOrder.Mass, Packs[1].Rig);

        Assert.Empty(ordered.Single(r => r.Candidate.Id == "as fitted").Differences);
        var difference = Assert.Single(ordered.Single(r => r.Candidate.Id == "alike").Differences);
        Assert.Equal(
            ("battery.massG", 0.19, 0.15),
            (difference.Path, difference.Fitted, difference.Offered)
        );
        Assert.Equal(
            ["battery.seriesCells", "battery.massG"],
            ordered.Single(r => r.Candidate.Id == "one cell").Differences.Select(d => d.Path)
        );
        Assert.All(Ordered(ShortlistOrder.Mass), ranked => Assert.Empty(ranked.Differences));
    }
}
