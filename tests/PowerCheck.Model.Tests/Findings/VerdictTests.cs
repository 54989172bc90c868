using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>What decides, in which order findings stand, and what the summary says (M13).</summary>
public sealed class VerdictTests
{
    private static Finding Of(
        FindingKind kind,
        Outcome outcome,
        double severeness = double.NaN,
        string message = "A sentence.",
        string? loadCase = null,
        bool caution = false
    ) =>
        new()
        {
            Kind = kind,
            Outcome = outcome,
            Severeness = severeness,
            LoadCase = loadCase,
            Caution = caution,
            Sentence = _ => message,
        };

    private static string Order(params Finding[] findings) =>
        string.Join(' ', Judgement.Of(findings).Findings.Select(f => $"{f.Kind.Code}{f.LoadCase}"));

    [Fact]
    public void Of_what_only_holds_the_closest_to_its_limit_decides()
    {
        var judgement = Judgement.Of([
            Of(DrivetrainHold, Outcome.Holds, 0.2),
            Of(BatteryCutoff, Outcome.Holds, 0.8),
            Of(ControllerMotorKind, Outcome.Holds, 0),
        ]);

        Assert.Equal(
            (BatteryCutoff, Verdict.Suitable),
            (judgement.Findings[0].Kind, judgement.Verdict)
        );
        Assert.True(judgement.Findings[0].Decides);
    }

    [Fact]
    public void Hard_mismatches_decide_in_their_own_order_and_only_where_they_fail()
    {
        Finding[] failing =
        [
            Of(ControllerHeat, Outcome.Fails, 9),
            Of(DrivetrainPitch, Outcome.Fails, 1.1),
            Of(ControllerMotorKind, Outcome.Fails, 1.05),
            Of(MotorVoltage, Outcome.Fails, 2),
        ];

        Assert.Equal(ControllerMotorKind, Judgement.Of(failing).Findings[0].Kind);
        Assert.Equal(
            MotorVoltage,
            Judgement.Of([failing[0], failing[1], failing[3]]).Findings[0].Kind
        );
        Assert.Equal(DrivetrainPitch, Judgement.Of([failing[0], failing[1]]).Findings[0].Kind);
        // In doubt, the closest one decides.
        Assert.Equal(
            DrivetrainTraction,
            Judgement
                .Of([
                    Of(MotorVoltage, Outcome.Doubtful, 0.91),
                    Of(DrivetrainTraction, Outcome.Doubtful, 0.99),
                ])
                .Findings[0]
                .Kind
        );
    }

    [Fact]
    public void Alike_findings_stand_cautions_first_then_by_closeness_catalogue_and_case()
    {
        Assert.Equal(
            "drivetrain.hold motor.touch-temperature drivetrain.traction battery.temperature controller.stall-time",
            Order(
                Of(BatteryTemperature, Outcome.Holds, 0.1),
                Of(ControllerStallTime, Outcome.Holds),
                Of(DrivetrainTraction, Outcome.Holds, 0.3),
                Of(DrivetrainHold, Outcome.Holds, 0.9),
                Of(MotorTouchTemperature, Outcome.Holds, caution: true)
            )
        );
        Assert.Equal(
            "drivetrain.hold controller.heatjam controller.heatlevel motor.winding-temperatureclimb",
            Order(
                Of(MotorWindingTemperature, Outcome.Holds, 0.5, loadCase: "climb"),
                Of(ControllerHeat, Outcome.Holds, 0.5, loadCase: "jam"),
                Of(ControllerHeat, Outcome.Holds, 0.5, loadCase: "level"),
                Of(DrivetrainHold, Outcome.Holds, 0.6)
            )
        );
    }

    [Fact]
    public void What_is_exactly_alike_keeps_the_first_to_decide()
    {
        var first = Of(DrivetrainHold, Outcome.Holds, 0.5, "The first.");
        var second = Of(DrivetrainHold, Outcome.Holds, 0.5, "The second.");

        Assert.Equal("The first.", Judgement.Of([first, second]).Findings[0].Message);
    }

    [Fact]
    public void A_caution_with_a_margin_counts_and_one_without_does_not()
    {
        var caution = Of(DrivetrainCreepControl, Outcome.Fails, 1.1, caution: true);

        Assert.Equal(Verdict.Unsuitable, Judgement.Of([caution]).Verdict);
        Assert.Equal(
            Verdict.Suitable,
            Judgement.Of([caution with { Severeness = double.NaN }]).Verdict
        );
    }

    [Theory]
    [InlineData(Outcome.Doubtful, "Limited: the pack sags.")]
    [InlineData(Outcome.Fails, "Unsuitable: the pack sags.")]
    public void A_summary_gives_the_verdict_and_what_decides(Outcome outcome, string said) =>
        Assert.Equal(
            said,
            Judgement
                .Of([Of(BatteryCutoff, outcome, 1, "The pack sags.")])
                .Summary(Inspected.Brushless)
        );

    [Theory]
    [InlineData("KV is not known.", "KV is not known.")]
    [InlineData("A rig.", "a rig.")]
    [InlineData("A", "")]
    [InlineData("It", "it")]
    public void A_sentence_goes_on_small_but_for_an_abbreviation(string message, string said) =>
        Assert.Equal(
            $"Limited: {said}",
            Judgement
                .Of([Of(BatteryCutoff, Outcome.Doubtful, 1, message)])
                .Summary(Inspected.Brushless)
        );

    [Fact]
    public void An_open_verdict_asks_for_each_figure_once_and_for_the_first_of_several_that_would_do()
    {
        Finding Open(FindingKind kind, bool all, params string[] paths) =>
            Of(kind, Outcome.Unknown, message: "Open.") with
            {
                NeedsAll = all,
                Needs = [.. paths.Select(path => new Need(path, Unit.One, double.NaN, false))],
            };
        string Asked(params Finding[] findings) =>
            Judgement.Of(findings).Summary(Inspected.Brushless);

        Assert.Equal(
            "Undetermined: open. To decide, give a.",
            Asked(Open(ControllerHeat, false, "a", "b"))
        );
        Assert.Equal(
            "Undetermined: open. To decide, give a and b.",
            Asked(Open(ControllerHeat, true, "a", "b"), Open(BatteryCutoff, false, "b", "c"))
        );
        Assert.Equal(
            "Undetermined: open. To decide, give a, b and c.",
            Asked(Open(ControllerHeat, true, "a", "b", "c"))
        );
        // What is known, and what is never judged, asks for nothing.
        Assert.Equal(
            "Undetermined: open. To decide, give a.",
            Asked(
                Open(ControllerHeat, false, "a"),
                Open(ControllerStallTime, true, "d"),
                Open(BatteryCutoff, true, "e") with
                {
                    Outcome = Outcome.Holds,
                    Severeness = 0.1,
                }
            )
        );
    }

    [Theory]
    [InlineData(5400, "and the pack lasts about 90 min on this course.")]
    [InlineData(double.PositiveInfinity, "and the pack does not run down on this course.")]
    public void A_suitable_rig_is_told_its_slope_mass_currents_and_run_time(
        double runS,
        string said
    )
    {
        var it = Inspected.Brushless.With(
            LoadCaseName.Climb,
            climb => climb with { MotorCurrentA = 12.34, BatteryCurrentA = 2.345 }
        );
        it = it with
        {
            Result = it.Result with { Endurance = it.Result.Endurance with { RunTimeS = runS } },
        };

        var summary = Judgement
            .Of([Of(BatteryCutoff, Outcome.Holds, 0.5, "The pack sags.")])
            .Summary(it);

        Assert.Contains("up to 45° at 3.4 kg every limit holds", summary, StringComparison.Ordinal);
        Assert.Contains("12.3 A of motor current and 2.35 A", summary, StringComparison.Ordinal);
        Assert.Contains(said, summary, StringComparison.Ordinal);
        Assert.EndsWith("Nearest to its limit: the pack sags.", summary, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_found_is_suitable() =>
        Assert.EndsWith(
            "Nearest to its limit: ",
            Judgement.Of([]).Summary(Inspected.Brushless),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(95, true, Outcome.Unknown)]
    [InlineData(200, true, Outcome.Unknown)]
    [InlineData(20, true, Outcome.Holds)]
    [InlineData(95, false, Outcome.Doubtful)]
    [InlineData(200, false, Outcome.Fails)]
    public void A_current_that_is_the_most_that_it_can_be_only_makes_a_limit_hold(
        double amperes,
        bool bound,
        Outcome outcome
    )
    {
        var it = Inspected
            .Brushless.WithRig(rig =>
                rig with
                {
                    Controller = rig.Controller with { BurstCurrentA = 100 },
                }
            )
            .With(LoadCaseName.Slip, load => load with { MotorCurrentA = 1 })
            .With(LoadCaseName.Punch, load => load with { MotorCurrentA = 1 })
            .With(
                LoadCaseName.Jam,
                load => load with { MotorCurrentA = amperes, UpperBound = bound }
            );
        // A doubt of another case stays one.
        it = it with
        {
            Drivetrain = it.Drivetrain with { TorqueReserve = 1.2 },
        };
        var found = it.Only(ControllerBurstCurrent);

        Assert.Equal(outcome, found.Outcome);
        Assert.Equal(outcome == Outcome.Unknown, double.IsNaN(found.Estimate));
        Assert.Equal(
            outcome == Outcome.Unknown,
            found.Message.EndsWith("Not to be told from what was given.", StringComparison.Ordinal)
        );
        Assert.Equal(Outcome.Doubtful, it.Only(DrivetrainTorqueReserve).Outcome);
    }

    [Theory]
    [InlineData(0.5, "at most 100 A allowed (", ").")]
    [InlineData(0.95, "; too close to be sure, or else ", ".")]
    [InlineData(1.0, "; too close to be sure, or else ", ".")]
    [InlineData(1.2, "at most 100 A allowed (", ".")]
    public void A_sentence_gives_figures_limit_and_consequence(
        double share,
        string said,
        string end
    )
    {
        var message = Inspected
            .Brushless.WithRig(rig =>
                rig with
                {
                    Controller = rig.Controller with { BurstCurrentA = 100 },
                }
            )
            .With(LoadCaseName.Slip, load => load with { MotorCurrentA = 1 })
            .With(LoadCaseName.Punch, load => load with { MotorCurrentA = 100 * share })
            .With(LoadCaseName.Jam, load => load with { MotorCurrentA = 1 })
            .Only(ControllerBurstCurrent)
            .Message;

        Assert.Contains(said, message, StringComparison.Ordinal);
        Assert.EndsWith(end, message, StringComparison.Ordinal);
        Assert.Equal(share > 0.9, message.Contains(ControllerBurstCurrent.Consequence));
        Assert.Equal(share is > 0.9 and <= 1, message.Contains("too close to be sure"));
    }
}
