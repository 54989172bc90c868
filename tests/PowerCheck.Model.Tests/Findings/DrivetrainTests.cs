using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>The limits of gearing, throttle and tires (M11), from both sides.</summary>
public sealed class DrivetrainTests
{
    private static Inspection Driven(Func<DrivetrainReport, DrivetrainReport> change) =>
        Inspected.Brushless with
        {
            Drivetrain = change(Inspected.Brushless.Drivetrain),
        };

    [Theory]
    [InlineData(0.5, 2, Outcome.Fails)]
    [InlineData(0.001, 100, Outcome.Fails)]
    [InlineData(1.0, 0.95, Outcome.Doubtful)]
    [InlineData(1.49, 0.95, Outcome.Doubtful)]
    [InlineData(1.5, 0.9, Outcome.Holds)]
    [InlineData(3.0, 0.5, Outcome.Holds)]
    [InlineData(double.NaN, double.NaN, Outcome.Unknown)]
    public void A_torque_reserve_fails_under_1_and_is_in_doubt_under_1_5(
        double reserve,
        double severeness,
        Outcome outcome
    )
    {
        var found = Driven(d => d with { TorqueReserve = reserve }).Only(DrivetrainTorqueReserve);

        Assert.Equal((reserve, 1.0, outcome), (found.Estimate, found.Limit, found.Outcome));
        Assert.Equal(severeness, found.Severeness, 1e-9);
        Assert.True(
            outcome == Outcome.Unknown
                || found.Message.Contains("at least", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(0.02, Outcome.Doubtful, false)]
    [InlineData(0.03, Outcome.Holds, true)]
    [InlineData(0.04, Outcome.Holds, true)]
    [InlineData(0.05, Outcome.Holds, false)]
    [InlineData(0.2, Outcome.Holds, false)]
    [InlineData(double.NaN, Outcome.Unknown, false)]
    public void A_creep_at_a_sliver_of_throttle_is_in_doubt_and_at_little_a_caution(
        double duty,
        Outcome outcome,
        bool caution
    )
    {
        var found = Inspected
            .Brushless.With(LoadCaseName.Level, level => level with { DutyRatio = duty })
            .Only(DrivetrainCreepControl);

        Assert.Equal((duty, 0.03, outcome), (found.Estimate, found.Limit, found.Outcome));
        Assert.Equal(caution, found.Caution);
        Assert.Equal(
            double.IsNaN(duty) ? double.NaN
                : duty < 0.03 ? Thresholds.PastLimit
                : 0,
            found.Severeness
        );
        Assert.Equal(caution, found.Message.Contains("it is coarse", StringComparison.Ordinal));
        Assert.Equal(
            !caution && outcome != Outcome.Unknown,
            found.Message.Contains("at least", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(true, Outcome.Holds)]
    [InlineData(false, Outcome.Fails)]
    [InlineData(null, Outcome.Unknown)]
    public void A_fed_hold_holds_where_its_point_is_reached(bool? attainable, Outcome outcome)
    {
        var it = Inspected
            .Of(label =>
                label with
                {
                    Controller = label.Controller with { Hold = HoldMode.Active },
                }
            )
            .With(LoadCaseName.Hold, hold => hold with { Attainable = attainable });
        var found = it.Only(DrivetrainHold);

        Assert.Equal((outcome, "hold"), (found.Outcome, found.LoadCase));
        Assert.True(double.IsNaN(found.Limit));
        Assert.EndsWith(
            outcome switch
            {
                Outcome.Holds => "The controller feeds the motor to stand on the slope.",
                Outcome.Fails => DrivetrainHold.Consequence + ".",
                _ => "Not to be told from what was given.",
            },
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(HoldMode.None, false, Outcome.Fails)]
    [InlineData(HoldMode.None, true, Outcome.Holds)]
    [InlineData(HoldMode.DragBrake, false, Outcome.Holds)]
    public void Where_nothing_holds_the_rig_rolls_unless_friction_holds_it(
        HoldMode mode,
        bool attainable,
        Outcome outcome
    )
    {
        var it = Inspected
            .Of(label => label with { Controller = label.Controller with { Hold = mode } })
            .With(
                LoadCaseName.Hold,
                hold => hold with { Attainable = attainable, CreepBackMPerS = 0.01 }
            );
        var found = it.Only(DrivetrainHold);

        Assert.Equal((outcome, "hold"), (found.Outcome, found.LoadCase));
        Assert.Equal(
            outcome == Outcome.Fails,
            found.Message.StartsWith(
                "At neutral nothing holds the rig and it rolls; ",
                StringComparison.Ordinal
            )
        );
    }

    [Theory]
    [InlineData(0.05, Outcome.Holds)]
    [InlineData(0.095, Outcome.Doubtful)]
    [InlineData(0.2, Outcome.Doubtful)]
    [InlineData(0.3, Outcome.Doubtful)]
    [InlineData(0.31, Outcome.Fails)]
    public void Creeping_back_fails_only_when_faster_than_the_creep(double speed, Outcome outcome)
    {
        var found = Inspected
            .Brushless.With(LoadCaseName.Hold, hold => hold with { CreepBackMPerS = speed })
            .Only(DrivetrainHold);

        Assert.Equal((speed, 0.1, outcome), found.Figures());
        Assert.Equal((30, speed / 0.1), (found.DurationS, found.Severeness));
    }

    [Theory]
    [InlineData(0.4, Outcome.Holds, false)]
    [InlineData(0.8, Outcome.Holds, true)]
    [InlineData(0.85, Outcome.Holds, true)]
    [InlineData(0.9, Outcome.Doubtful, false)]
    public void A_slope_close_to_slipping_is_a_caution_and_past_it_in_doubt(
        double slopeRad,
        Outcome outcome,
        bool caution
    )
    {
        var it = Driven(d => d with { SlipSlopeRad = 0.85 })
            .WithRig(rig => rig with { Road = rig.Road with { SlopeRad = slopeRad } });
        var found = it.Only(DrivetrainTraction);

        Assert.Equal((slopeRad, 0.85, outcome), found.Figures());
        Assert.Equal(caution, found.Caution);
        Assert.Equal(slopeRad / 0.85, found.Severeness, 1e-9);
        Assert.Contains(
            outcome == Outcome.Doubtful ? "the climb is judged there"
                : caution ? "close to letting go"
                : "at most 48.7° allowed",
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(8.0, Outcome.Holds)]
    [InlineData(9.5, Outcome.Doubtful)]
    [InlineData(10.5, Outcome.Fails)]
    public void A_wedged_wheel_strains_the_driveline(double wheelNm, Outcome outcome)
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Vehicle = label.Vehicle with
                    {
                        Drivetrain = label.Vehicle.Drivetrain with { MaxWheelTorqueNm = 10 },
                    },
                }
            )
            .With(LoadCaseName.Jam, jam => jam with { WheelTorqueNm = wheelNm })
            .Only(DrivetrainWheelTorque);

        Assert.Equal((wheelNm, 10, outcome), found.Figures());
        Assert.Empty(Inspected.Brushless.All(DrivetrainWheelTorque));
    }

    [Theory]
    [InlineData(11.9, 12.0, "under 12")]
    [InlineData(12.0, null, "")]
    [InlineData(120.0, null, "")]
    [InlineData(121.0, 120.0, "over 120")]
    public void A_ratio_outside_12_to_120_is_a_caution(double ratio, double? limit, string said)
    {
        var found = Driven(d => d with { OverallRatio = ratio }).All(DrivetrainRatio);

        Assert.Equal(limit is null ? 0 : 1, found.Length);
        Assert.All(
            found,
            f =>
            {
                Assert.Equal((ratio, limit!.Value, true), (f.Estimate, f.Limit, f.Caution));
                Assert.Contains(said, f.Message, StringComparison.Ordinal);
            }
        );
    }

    [Fact]
    public void A_higher_gear_that_cannot_climb_is_a_caution_and_the_lowest_is_judged_elsewhere()
    {
        var gear = Inspected.Brushless.Drivetrain.Gears[0];
        var found = Driven(d =>
                d with
                {
                    Gears =
                    [
                        gear with
                        {
                            TorqueReserve = 0.5,
                        },
                        gear with
                        {
                            TorqueReserve = 1.0,
                        },
                        gear with
                        {
                            TorqueReserve = 0.9,
                        },
                    ],
                }
            )
            .All(DrivetrainGear);

        Assert.Equal((0.9, 1.0, Outcome.Holds), Assert.Single(found).Figures());
        Assert.True(found[0].Caution);
    }
}
