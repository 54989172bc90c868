using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Remedies;

/// <summary>What a single change makes of a limit that does not hold (M14), against checks of rigs changed by hand.</summary>
/// <param name="rigs">The rigs.</param>
/// <param name="many">How many changes, and how many things that do not help, they have at least.</param>
public abstract class RemedyTests(Lazy<RemedyTests.Sought[]> rigs, int many)
{
    /// <summary>A rig, and its check with what was sought for it.</summary>
    public sealed record Sought(RigLabel Label, CheckResult Result);

    /// <summary>Random rigs.</summary>
    protected static Lazy<Sought[]> Rigs(params int[] numbers) =>
        new(() =>
            [
                .. numbers
                    .Select(RandomRig.Of)
                    .Select(label => new Sought(label, Check.Run(label, remedies: true))),
            ]
        );

    private Sought[] All => rigs.Value;

    private IEnumerable<(RigLabel Label, Finding Finding)> Open =>
        from rig in All
        from finding in rig.Result.Findings
        where finding.Remedies.Count > 0
        select (rig.Label, finding);

    private IEnumerable<(RigLabel Label, Finding Finding, Remedy Remedy)> Cures =>
        from open in Open
        from remedy in open.Finding.Remedies
        where remedy.Verdict is not null
        select (open.Label, open.Finding, remedy);

    [Fact]
    public void Tires_are_tried_only_in_a_size_that_may_fit()
    {
        var tires = Open.SelectMany(open => open.Finding.Remedies)
            .Where(remedy => remedy.Path == "vehicle.tireDiameterMm")
            .ToArray();

        Assert.NotEmpty(tires);
        // To three digits of the factor.
        Assert.All(tires, tire => Assert.InRange(tire.Most / tire.From, 1, 1.61));
        Assert.All(tires, tire => Assert.InRange(tire.From / tire.Least, 1, 1.61));
    }

    private static CheckResult With(RigLabel label, Remedy remedy, double value) =>
        Check.Run(RigFigures.With(label, remedy.Path, value));

    private static Finding Same(CheckResult result, Finding finding) =>
        Reaches.Same(finding, result.Findings)!;

    [Fact]
    public void Every_limit_that_fails_or_is_in_doubt_has_remedies_and_no_other_has()
    {
        Assert.All(
            All.SelectMany(rig => rig.Result.Findings),
            finding =>
                Assert.Equal(
                    finding is { Kind.Judged: true, Outcome: Outcome.Fails or Outcome.Doubtful },
                    finding.Remedies.Count > 0
                )
        );
    }

    [Fact]
    public void A_rig_that_is_changed_as_said_keeps_the_limit_and_gets_the_verdict_that_is_said()
    {
        Assert.True(Cures.Count() > many);
        Assert.All(
            Cures,
            cure =>
            {
                var changed = With(cure.Label, cure.Remedy, cure.Remedy.To);
                Assert.Equal(Outcome.Holds, Same(changed, cure.Finding).Outcome);
                Assert.Equal(cure.Remedy.Verdict, changed.Verdict);
            }
        );
    }

    [Fact]
    public void Half_of_the_change_is_hardly_ever_enough()
    {
        var halves = Cures
            .Where(cure => cure.Remedy.Unit.Symbol is not ("teeth" or "cells" or "AWG"))
            .Select(cure =>
                Same(
                    With(cure.Label, cure.Remedy, (cure.Remedy.From + cure.Remedy.To) / 2),
                    cure.Finding
                ).Outcome
            )
            .ToArray();

        // A run that ends earlier warms the motor less: a few limits hold, do not, and hold again.
        Assert.InRange(halves.Count(outcome => outcome == Outcome.Holds), 0, halves.Length / 50);
    }

    [Fact]
    public void A_tooth_less_or_a_cell_less_of_the_change_is_not_enough()
    {
        var counted = Cures.Where(cure => cure.Remedy.Unit.Symbol is "teeth" or "cells" or "AWG");

        Assert.NotEmpty(counted);
        Assert.All(
            counted,
            cure =>
            {
                var nearer = cure.Remedy.To - Math.Sign(cure.Remedy.To - cure.Remedy.From);
                Assert.NotEqual(
                    Outcome.Holds,
                    Same(With(cure.Label, cure.Remedy, nearer), cure.Finding).Outcome
                );
            }
        );
    }

    [Fact]
    public void Where_none_is_said_neither_end_of_what_was_tried_makes_it_hold()
    {
        var none =
            from open in Open
            from remedy in open.Finding.Remedies
            where remedy.Verdict is null
            from end in new[] { remedy.Least, remedy.Most }
            select (open.Label, open.Finding, remedy, end);

        Assert.True(none.Count() > many);
        Assert.All(
            none,
            tried =>
                Assert.NotEqual(
                    Outcome.Holds,
                    Same(With(tried.Label, tried.remedy, tried.end), tried.Finding).Outcome
                )
        );
    }

    [Fact]
    public void The_smallest_relative_change_comes_first_and_none_last()
    {
        Assert.All(
            Open,
            open =>
            {
                var sizes = open.Finding.Remedies.Select(remedy =>
                    remedy.Verdict is null
                        ? double.PositiveInfinity
                        : Math.Abs(Math.Log(remedy.To / remedy.From))
                );
                Assert.Equal(sizes.Order(), sizes);
            }
        );
    }

    [Fact]
    public void A_remedy_says_itself_in_plain_words()
    {
        var (_, _, cure) = Cures.First(c => c.Remedy.Path == "vehicle.massKg");

        Assert.Equal(
            $"With the mass at {Say.Figure(cure.To, cure.Unit)} instead of {Say.Figure(cure.From, cure.Unit)} this limit "
                + $"holds; the verdict is then {cure.Verdict.ToString()!.ToLowerInvariant()}.",
            cure.Message
        );
        var none = Open.SelectMany(open => open.Finding.Remedies).First(r => r.Verdict is null);
        Assert.StartsWith($"No {none.Noun} from ", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_summary_says_up_to_where_the_deciding_limit_holds_and_the_smallest_change()
    {
        var (deciding, _, _) = Cures.First(c =>
            c.Finding.Decides && c.Remedy.Path == "vehicle.massKg" && c.Remedy.To < c.Remedy.From
        );
        var result = All.Single(rig => rig.Label == deciding).Result;
        var remedies = result.Findings[0].Remedies;
        var mass = remedies.Single(r => r.Path == "vehicle.massKg");

        var best = remedies.Where(r => r.Verdict is not null).Min(r => r.Verdict);
        var smallest = remedies.First(r => r.Verdict == best);
        Assert.Contains("This limit holds up to ", result.Summary, StringComparison.Ordinal);
        Assert.Contains(Say.Figure(mass.To, mass.Unit), result.Summary, StringComparison.Ordinal);
        Assert.Contains(
            best == Verdict.Unsuitable
                ? "The smallest single change that makes this limit hold, and leaves others that fail, is "
                : $"The smallest single change that makes the rig {best.ToString()!.ToLowerInvariant()} is ",
            result.Summary,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            $"the {smallest.Noun} at {Say.Figure(smallest.To, smallest.Unit)} instead of "
                + $"{Say.Figure(smallest.From, smallest.Unit)}.",
            result.Summary,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Of_the_changes_with_the_best_verdict_the_summary_names_the_smallest()
    {
        var summaries = All.Select(rig => rig.Result)
            .Where(result => result.Findings[0].Remedies.Any(r => r.Verdict is not null))
            .ToArray();

        Assert.Contains(
            summaries,
            r => r.Summary.Contains("change that makes the rig suitable", StringComparison.Ordinal)
        );
        Assert.Contains(
            summaries,
            r => r.Summary.Contains("leaves others that fail", StringComparison.Ordinal)
        );
    }
}

/// <summary>Of a few rigs.</summary>
public sealed class FewRemedyTests() : RemedyTests(Few, 20)
{
    private static readonly Lazy<Sought[]> Few = Rigs(1, 2, 5, 7);
}

/// <summary>Of many rigs.</summary>
[Trait("speed", "slow")]
public sealed class ManyRemedyTests() : RemedyTests(Many, 100)
{
    private static readonly Lazy<Sought[]> Many = Rigs([.. Enumerable.Range(1, 25)]);
}
