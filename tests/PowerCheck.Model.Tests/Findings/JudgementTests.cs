using PowerCheck.Model.Findings;
using PowerCheck.Model.Tests.Rigs;
using Check = PowerCheck.Model.Checks.Check;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Margins, and the verdict that follows from the findings (M13).</summary>
public sealed class JudgementTests
{
    [Theory]
    [InlineData(0, Outcome.Holds)]
    [InlineData(0.9, Outcome.Holds)]
    [InlineData(0.9000001, Outcome.Doubtful)]
    [InlineData(1, Outcome.Doubtful)]
    [InlineData(1.0000001, Outcome.Fails)]
    [InlineData(double.PositiveInfinity, Outcome.Fails)]
    [InlineData(double.NaN, Outcome.Unknown)]
    public void Ten_per_cent_under_a_limit_is_doubt_and_over_it_fails(
        double severeness,
        Outcome outcome
    ) => Assert.Equal(outcome, Thresholds.Outcome(severeness));

    private static Finding Of(FindingKind kind, Outcome outcome, double severeness = 0.5) =>
        new()
        {
            Kind = kind,
            Outcome = outcome,
            Severeness = outcome == Outcome.Unknown ? double.NaN : severeness,
            Sentence = _ => "A sentence.",
        };

    private static readonly Finding Holds = Of(FindingCatalogue.DrivetrainHold, Outcome.Holds);
    private static readonly Finding Doubt = Of(
        FindingCatalogue.DrivetrainTraction,
        Outcome.Doubtful,
        0.95
    );
    private static readonly Finding Open = Of(FindingCatalogue.ControllerHeat, Outcome.Unknown);
    private static readonly Finding Fails = Of(FindingCatalogue.BatteryCutoff, Outcome.Fails, 1.3);

    [Fact]
    public void A_fail_outweighs_what_is_open_and_that_outweighs_a_doubt()
    {
        Assert.Equal(Verdict.Suitable, Judgement.Of([Holds]).Verdict);
        Assert.Equal(Verdict.Limited, Judgement.Of([Holds, Doubt]).Verdict);
        Assert.Equal(Verdict.Undetermined, Judgement.Of([Holds, Doubt, Open]).Verdict);
        Assert.Equal(Verdict.Unsuitable, Judgement.Of([Holds, Doubt, Open, Fails]).Verdict);
    }

    [Fact]
    public void The_order_of_the_findings_is_of_no_account()
    {
        var forth = Judgement.Of([Holds, Doubt, Open, Fails]).Findings.Select(f => f.Kind.Code);
        var back = Judgement.Of([Fails, Open, Doubt, Holds]).Findings.Select(f => f.Kind.Code);
        Assert.Equal(forth, back, StringComparer.Ordinal);
    }

    [Fact]
    public void What_decides_comes_first_then_fails_open_doubts_and_what_holds()
    {
        var worse = Of(FindingCatalogue.DrivetrainTorqueReserve, Outcome.Fails, 2);
        var ordered = Judgement.Of([Holds, Doubt, Open, Fails, worse]).Findings;
        Assert.Equal(
            [
                "drivetrain.torque-reserve",
                "battery.cutoff",
                "controller.heat",
                "drivetrain.traction",
                "drivetrain.hold",
            ],
            ordered.Select(f => f.Kind.Code),
            StringComparer.Ordinal
        );
        Assert.Equal(ordered[0], Assert.Single(ordered, f => f.Decides));
    }

    [Fact]
    public void A_mismatch_of_parts_decides_before_any_figure()
    {
        var mismatch = Of(FindingCatalogue.ControllerCellCount, Outcome.Fails, 1.33);
        var far = Of(FindingCatalogue.ControllerHeat, Outcome.Fails, 9);
        Assert.Equal(mismatch.Kind, Judgement.Of([far, mismatch]).Findings[0].Kind);
    }

    [Fact]
    public void Kinds_that_only_caution_never_count()
    {
        var stall = Of(FindingCatalogue.MotorStallTime, Outcome.Fails, 5);
        var open = Of(FindingCatalogue.ControllerStallTime, Outcome.Unknown);
        Assert.Equal(Verdict.Suitable, Judgement.Of([Holds, stall, open]).Verdict);
    }

    [Fact]
    [Trait("speed", "slow")]
    public void The_verdict_of_random_rigs_follows_from_their_findings()
    {
        foreach (var result in Enumerable.Range(1, 200).Select(n => Check.Run(RandomRig.Of(n))))
        {
            var judged = result.Findings.Where(f => f.Kind.Judged).ToArray();
            var expected =
                judged.Any(f => f.Outcome == Outcome.Fails) ? Verdict.Unsuitable
                : judged.Any(f => f.Outcome == Outcome.Unknown) ? Verdict.Undetermined
                : judged.Any(f => f.Outcome == Outcome.Doubtful) ? Verdict.Limited
                : Verdict.Suitable;
            Assert.Equal(expected, result.Verdict);
            Assert.StartsWith($"{result.Verdict}: ", result.Summary, StringComparison.Ordinal);
            Assert.True(result.Findings[0].Decides);
            Assert.Single(result.Findings, f => f.Decides);
        }
    }

    [Fact]
    [Trait("speed", "slow")]
    public void Outcome_and_margin_of_random_rigs_agree()
    {
        var findings = Enumerable
            .Range(1, 200)
            .SelectMany(n => Judgement.Inspect(SampleRig.Inspect(RandomRig.Of(n))))
            .Where(f => f.Kind.Judged && !f.Caution && double.IsFinite(f.Severeness));
        Assert.All(
            findings,
            f =>
            {
                // Some limits are doubted at worst: traction, run time, creeping back slowly.
                var plain = Thresholds.Outcome(f.Severeness);
                Assert.True(
                    f.Outcome == plain || (plain == Outcome.Fails && f.Outcome == Outcome.Doubtful),
                    f.Message
                );
            }
        );
    }
}
