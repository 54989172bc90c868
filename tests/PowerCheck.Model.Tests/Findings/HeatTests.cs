using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Temperatures held against their limits on the scale of the rise over the air (M11), in air of 25 °C.</summary>
public sealed class HeatTests
{
    private static Inspection Winding(
        double peakC,
        double whenS = double.PositiveInfinity,
        double runS = 1000
    )
    {
        var it = Inspected.Brushless.WithWarmth(warm =>
            warm with
            {
                MotorWinding = warm.MotorWinding with { PeakC = peakC, CourseTime = new(whenS) },
            }
        );
        return it with { Result = it.Result with { RunS = runS } };
    }

    private static Inspection Case(
        LoadCaseName name,
        double judgedC,
        double judgedS = 3,
        double fromWarmS = double.PositiveInfinity
    ) =>
        Inspected.Brushless.WithWarmth(warm =>
            warm with
            {
                MotorWinding = warm.MotorWinding with
                {
                    Cases =
                    [
                        .. warm.MotorWinding.Cases.Select(c =>
                            c.Case == name
                                ? c with
                                {
                                    JudgedC = judgedC,
                                    JudgedS = judgedS,
                                    FromWarm = new(fromWarmS),
                                }
                                : c
                        ),
                    ],
                },
            }
        );

    // The limit is class B's 130 °C less 10 K: 95 K over the air.
    [Theory]
    [InlineData(105, Outcome.Holds)]
    [InlineData(115, Outcome.Doubtful)]
    [InlineData(120, Outcome.Doubtful)]
    public void A_peak_under_the_limit_is_judged_by_its_rise_over_the_air(
        double peakC,
        Outcome outcome
    )
    {
        var found = Winding(peakC).Only(MotorWindingTemperature, "course");

        Assert.Equal((peakC, 120, outcome), found.Figures());
        Assert.Equal((peakC - 25) / 95, found.Severeness, 1e-12);
        Assert.True(double.IsNaN(found.DurationS));
        Assert.Contains($"{peakC:0} °C, at most 120 °C", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(600, Outcome.Fails, "after about 10 min from cold;")]
    [InlineData(1000, Outcome.Fails, "from cold;")]
    [InlineData(1200, Outcome.Doubtful, "from cold, later than this run lasts;")]
    [InlineData(double.PositiveInfinity, Outcome.Doubtful, "long after this run;")]
    public void A_limit_reached_within_the_run_fails_and_later_is_in_doubt(
        double whenS,
        Outcome outcome,
        string said
    )
    {
        var found = Winding(130, whenS).Only(MotorWindingTemperature, "course");

        Assert.Equal((130, 120, outcome), found.Figures());
        Assert.Equal(double.IsFinite(whenS) ? whenS : double.NaN, found.DurationS);
        Assert.Contains(
            "would reach 130 °C, and passes 120 °C",
            found.Message,
            StringComparison.Ordinal
        );
        Assert.Contains(said, found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_time_is_told_only_where_the_limit_is_passed() =>
        Assert.True(
            double.IsNaN(Winding(119, 700).Only(MotorWindingTemperature, "course").DurationS)
        );

    [Fact]
    public void Runaway_never_settles() =>
        Assert.Contains(
            "never settles, and passes 120 °C",
            Winding(double.PositiveInfinity, 300).Only(MotorWindingTemperature, "course").Message,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(105, Outcome.Holds)]
    [InlineData(115, Outcome.Unknown)]
    [InlineData(130, Outcome.Unknown)]
    public void Without_a_run_time_only_what_holds_for_ever_is_known(
        double peakC,
        Outcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Winding(peakC, 100, double.NaN).Only(MotorWindingTemperature, "course").Outcome
        );

    [Theory]
    [InlineData(100, Outcome.Holds)]
    [InlineData(115, Outcome.Doubtful)]
    [InlineData(125, Outcome.Fails)]
    public void A_case_is_judged_after_its_seconds(double judgedC, Outcome outcome)
    {
        var found = Case(LoadCaseName.Punch, judgedC).Only(MotorWindingTemperature, "punch");

        Assert.Equal((judgedC, 120, outcome), found.Figures());
        Assert.Equal(3, found.DurationS);
        Assert.Contains(
            "in a full-throttle punch, after 3 s, warm from the course:",
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_settled_case_has_no_seconds_and_one_that_is_not_judged_no_finding()
    {
        var found = Case(LoadCaseName.Level, 60, double.PositiveInfinity)
            .Only(MotorWindingTemperature, "level");

        Assert.True(double.IsNaN(found.DurationS));
        Assert.Contains("on the level, settled:", found.Message, StringComparison.Ordinal);
        Assert.Empty(Inspected.Brushless.All(MotorWindingTemperature, "stall"));
    }

    [Theory]
    [InlineData(100, double.PositiveInfinity, "The tires let go before the motor is in danger.")]
    [InlineData(100, 40, "The tires let go first, but spinning them on and on cooks the motor.")]
    [InlineData(125, 2, "; ")]
    public void Slipping_says_whether_the_tires_let_go_first(
        double judgedC,
        double fromWarmS,
        string said
    )
    {
        var it = Case(LoadCaseName.Slip, judgedC, 3, fromWarmS);

        Assert.Contains(
            said,
            it.Only(MotorWindingTemperature, "slip").Message,
            StringComparison.Ordinal
        );
        Assert.Equal(
            judgedC < 120,
            it.Only(MotorWindingTemperature, "slip")
                .Message.Contains("The tires", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(
            "The tires",
            it.Only(MotorWindingTemperature, "climb").Message,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            "The tires",
            it.Only(MotorMagnetTemperature, "slip").Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(119.0)]
    [InlineData(120.0)]
    public void In_air_as_warm_as_the_limit_nothing_is_left(double limitC)
    {
        var it = Inspected
            .Brushless.WithRig(rig => rig with { Road = rig.Road with { AmbientC = 120 } })
            .WithWarmth(warm =>
                warm with
                {
                    MotorMagnet = warm.MotorMagnet with { LimitC = limitC, PeakC = 120 },
                }
            );

        Assert.Equal(double.PositiveInfinity, it.Only(MotorMagnetTemperature, "course").Severeness);
    }

    [Theory]
    [InlineData(2.2, "Controller over")]
    [InlineData(2.9, "Controller over")]
    [InlineData(3.3, "Controller, heated mostly by its receiver supply, over")]
    public void A_controller_heated_mostly_by_its_supply_is_called_so(double amperes, string said)
    {
        // Rated for 40²·0.002·1.3125 = 4.2 W, half of it 2.1 W; three cells of 3.7 V less 10.4 V leave 0.7 V.
        var found = Inspected
            .Of(label =>
                label with
                {
                    Controller = label.Controller with
                    {
                        OnResistanceOhm = 0.002,
                        HotResistanceFactor = 1.3125,
                        ReceiverSupply = new() { Regulator = Regulator.Linear, VoltageV = 10.4 },
                    },
                    Accessories = [new() { IdleCurrentA = amperes, WorkingCurrentA = amperes }],
                }
            )
            .Only(ControllerHeat, "course");

        Assert.StartsWith(said, found.Message, StringComparison.Ordinal);
    }
}
