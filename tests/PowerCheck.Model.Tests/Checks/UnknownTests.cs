using CsCheck;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using Check = PowerCheck.Model.Checks.Check;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>What is not known never turns into a verdict that rests on it.</summary>
public sealed class UnknownTests
{
    private static readonly (string Path, Func<RigLabel, RigLabel> Drop)[] Drops =
    [
        (
            "motor.kvRpmPerVolt",
            l => l with { Motor = l.Motor with { SpeedConstantRadPerSPerV = null, Turns = null } }
        ),
        (
            "motor.resistanceMilliohm",
            l =>
                l with
                {
                    Motor = l.Motor with
                    {
                        ResistanceOhm = null,
                        MassKg = null,
                        CanDiameterM = null,
                        CanLengthM = null,
                    },
                }
        ),
        ("battery.seriesCells", l => l with { Battery = l.Battery with { SeriesCells = null } }),
        (
            "battery.capacityMah",
            l => l with { Battery = l.Battery with { CapacityCoulomb = null } }
        ),
        (
            "controller.continuousCurrentA",
            l => l with { Controller = l.Controller with { ContinuousCurrentA = null } }
        ),
    ];

    private static readonly Gen<(int Number, int Mask)> Trials = Gen.Select(
        Gen.Int[1, 1_000_000],
        Gen.Int[1, 31]
    );

    private static RigLabel Without(int number, int mask) =>
        Drops
            .Where((_, n) => (mask & (1 << n)) != 0)
            .Aggregate(RandomRig.Of(number), (label, drop) => drop.Drop(label));

    [Fact]
    [Trait("speed", "slow")]
    public void A_figure_or_limit_that_is_not_known_never_holds_fails_or_doubts() =>
        Trials.Sample(
            trial =>
            {
                var findings = Judgement.Inspect(
                    SampleRig.Inspect(Without(trial.Number, trial.Mask))
                );
                Assert.All(
                    findings.Where(f =>
                        f.Kind.Judged && !f.Caution && !double.IsInfinity(f.Severeness)
                    ),
                    f =>
                    {
                        var known = !double.IsNaN(f.Severeness);
                        Assert.Equal(known, f.Outcome != Outcome.Unknown);
                        // A match of words has no figures at all.
                        Assert.True(
                            f.Outcome == Outcome.Unknown
                                || f.Severeness == 0
                                || !double.IsNaN(f.Estimate + f.Limit),
                            f.Message
                        );
                    }
                );
            },
            iter: 300
        );

    [Fact]
    [Trait("speed", "slow")]
    public void A_rig_with_an_open_limit_is_never_suitable_or_limited() =>
        Trials.Sample(
            trial =>
            {
                var result = Judgement.Of(
                    Judgement.Inspect(SampleRig.Inspect(Without(trial.Number, trial.Mask)))
                );
                if (result.Findings.Any(f => f.Kind.Judged && f.Outcome == Outcome.Unknown))
                {
                    Assert.True(result.Verdict is Verdict.Undetermined or Verdict.Unsuitable);
                }

                // Winding and controller temperatures always rest on these two.
                if ((trial.Mask & 0b11) != 0)
                {
                    Assert.True(result.Verdict is Verdict.Undetermined or Verdict.Unsuitable);
                }
            },
            iter: 200
        );

    [Theory]
    [Trait("speed", "slow")]
    [InlineData("controller.continuousCurrentA")]
    [InlineData("motor.massG")]
    [InlineData("battery.capacityMah")]
    [InlineData("battery.seriesCells")]
    public void What_is_said_to_hold_holds_at_its_threshold_and_on_its_side_and_not_past_it(
        string path
    )
    {
        var label = Without(path);
        var open = Check.Run(label).Findings.Where(f => f.Outcome == Outcome.Unknown).ToArray();
        var turning = open.SelectMany(f => f.Needs.Select(need => (Finding: f, Need: need)))
            .Where(x => !double.IsNaN(x.Need.Threshold))
            .ToArray();
        Assert.NotEmpty(turning);
        Assert.All(
            turning,
            x =>
            {
                Outcome With(double value) =>
                    Judgement
                        .Inspect(SampleRig.Inspect(RigFigures.With(label, x.Need.Path, value)))
                        .First(f =>
                            f.Kind.Equals(x.Finding.Kind)
                            && string.Equals(
                                f.LoadCase,
                                x.Finding.LoadCase,
                                StringComparison.Ordinal
                            )
                        )
                        .Outcome;
                var counted = x.Need.Path == "battery.seriesCells";
                var (inside, outside) = x.Need.HoldsBelow ? (0.97, 1.03) : (1.03, 0.97);
                Assert.Equal(Outcome.Holds, With(x.Need.Threshold));
                Assert.Equal(Outcome.Holds, With(x.Need.Threshold * inside));
                Assert.NotEqual(
                    Outcome.Holds,
                    With(
                        counted
                            ? x.Need.Threshold + (x.Need.HoldsBelow ? 1 : -1)
                            : x.Need.Threshold * outside
                    )
                );
            }
        );
    }

    private static RigLabel Without(string path)
    {
        var rig = SampleRig.Brushless;
        return path switch
        {
            "motor.massG" => rig with
            {
                Motor = rig.Motor with
                {
                    MassKg = null,
                    CanDiameterM = null,
                    CanLengthM = null,
                    ResistanceOhm = null,
                },
            },
            "battery.capacityMah" => rig with
            {
                Battery = rig.Battery with { CapacityCoulomb = null, CellResistanceOhm = null },
            },
            "battery.seriesCells" => rig with { Battery = rig.Battery with { SeriesCells = null } },
            _ => rig with { Controller = rig.Controller with { ContinuousCurrentA = null } },
        };
    }

    [Fact]
    [Trait("speed", "slow")]
    public void Knowing_less_never_makes_a_limit_hold_that_fails_when_all_is_known() =>
        Compare((less, all) => !(less == Outcome.Holds && all == Outcome.Fails));

    private static void Compare(Func<Outcome, Outcome, bool> agree) =>
        Trials.Sample(
            trial =>
            {
                var label = RandomRig.Of(trial.Number) with { };
                // Everything that is dropped was given before, so that no default comes between.
                label = label with
                {
                    Motor = label.Motor with
                    {
                        ResistanceOhm = label.Motor.ResistanceOhm ?? 0.05,
                        NoLoadPoints = [new(7.4, 1.5)],
                    },
                    Controller = label.Controller with { OnResistanceOhm = 0.002 },
                };
                var all = Judgement.Inspect(SampleRig.Inspect(label));
                var dropped = Drops
                    .Where((_, n) => (trial.Mask & (1 << n)) != 0)
                    .Aggregate(label, (l, drop) => drop.Drop(l));
                foreach (
                    var less in Judgement
                        .Inspect(SampleRig.Inspect(dropped))
                        .Where(f => f.Kind.Judged && !f.Caution)
                )
                {
                    var known = all.FirstOrDefault(f =>
                        f.Kind.Equals(less.Kind)
                        && string.Equals(f.LoadCase, less.LoadCase, StringComparison.Ordinal)
                        && !f.Caution
                    );
                    Assert.True(
                        known is null || agree(less.Outcome, known.Outcome),
                        $"rig {trial.Number}, without {trial.Mask}: {less.Outcome} '{less.Message}' but {known?.Outcome} '{known?.Message}'"
                    );
                }
            },
            iter: 300
        );
}
