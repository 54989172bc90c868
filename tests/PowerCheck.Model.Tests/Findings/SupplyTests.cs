using PowerCheck.Model.Accessories;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Receiver supply, leads, fuse and run time (M8, M9, M10, M11), from both sides.</summary>
public sealed class SupplyTests
{
    private static Inspection Supplied(Func<ReceiverSupplyReport, ReceiverSupplyReport> change) =>
        Inspected.Brushless with
        {
            ReceiverSupply = change(Inspected.Brushless.ReceiverSupply),
        };

    /// <summary>Battery and motor current, root mean square, of course and climb.</summary>
    private static Inspection Lasting(
        Inspection it,
        (double Battery, double Motor) course,
        (double Battery, double Motor) climb
    ) =>
        it.With(
            LoadCaseName.Climb,
            load => load with { BatteryRmsCurrentA = climb.Battery, MotorRmsCurrentA = climb.Motor }
        ) with
        {
            Result = it.Result with
            {
                Endurance = it.Result.Endurance with
                {
                    RmsBatteryCurrentA = course.Battery,
                    RmsMotorCurrentA = course.Motor,
                },
            },
        };

    private static Inspection Wired(Inspection it) =>
        it.WithRig(rig =>
            rig with
            {
                Leads = rig.Leads with { ConnectorContinuousA = 60, FuseA = 40 },
            }
        ) with
        {
            Wiring = it.Wiring with
            {
                BatteryLeadLimitA = 50,
                MotorLeadLimitA = 70,
                LeadDamageCurrentA = 100,
            },
        };

    [Theory]
    [InlineData(2.0, Outcome.Holds)]
    [InlineData(2.8, Outcome.Doubtful)]
    [InlineData(3.1, Outcome.Fails)]
    public void What_works_at_once_is_held_against_the_continuous_current(
        double workingA,
        Outcome outcome
    ) =>
        Assert.Equal(
            (workingA, 3, outcome),
            Supplied(s => s with { WorkingCurrentA = workingA, ContinuousCurrentA = 3 })
                .Only(ReceiverSupplyContinuousCurrent)
                .Figures()
        );

    [Theory]
    [InlineData(4.4, false)]
    [InlineData(4.5, false)]
    [InlineData(4.6, true)]
    public void What_jams_at_once_over_the_peak_current_is_a_caution(double jammedA, bool caution)
    {
        var found = Supplied(s => s with { JammedCurrentA = jammedA, PeakCurrentA = 4.5 })
            .All(ReceiverSupplyPeakCurrent);

        Assert.Equal(caution ? 1 : 0, found.Length);
        Assert.All(found, f => Assert.Equal((jammedA, 4.5, Outcome.Holds), f.Figures()));
        Assert.All(found, f => Assert.Equal((2, true), (f.DurationS, f.Caution)));
    }

    [Theory]
    [InlineData(Regulator.Linear, 5.0, Outcome.Holds)]
    [InlineData(Regulator.Linear, 8.0, Outcome.Fails)]
    [InlineData(Regulator.Switching, 8.0, null)]
    public void A_linear_supply_is_held_against_the_heat_that_it_sheds(
        Regulator regulator,
        double heatW,
        Outcome? outcome
    )
    {
        var found = Supplied(s => s with { HeatW = heatW, MaxHeatW = 7 })
            .WithRig(rig =>
                rig with
                {
                    ReceiverSupply = rig.ReceiverSupply with { Regulator = regulator },
                }
            )
            .All(ReceiverSupplyHeat);

        Assert.Equal(outcome is null ? 0 : 1, found.Length);
        Assert.All(found, f => Assert.Equal((heatW, 7, outcome!.Value), f.Figures()));
    }

    // Set to 6 V, reset under 4 V.
    [Theory]
    [InlineData(6.0, Outcome.Holds, false)]
    [InlineData(5.9, Outcome.Holds, true)]
    [InlineData(4.0, Outcome.Holds, true)]
    [InlineData(3.9, Outcome.Doubtful, false)]
    [InlineData(double.NaN, Outcome.Unknown, false)]
    public void Output_under_the_set_voltage_is_a_caution_and_under_the_reset_in_doubt(
        double leftV,
        Outcome outcome,
        bool caution
    )
    {
        var found = Supplied(s => s with { LowestOutputV = leftV })
            .Only(ReceiverSupplyOutputVoltage);

        Assert.Equal((leftV, 4, outcome), (found.Estimate, found.Limit, found.Outcome));
        Assert.Equal(caution, found.Caution);
        Assert.Equal(
            caution,
            found.Message.Contains("the receiver stays alive", StringComparison.Ordinal)
        );
        Assert.Equal(
            !caution && outcome != Outcome.Unknown,
            found.Message.Contains("at least 4 V needed", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(30, 20, 10, 15, 30, 15)]
    [InlineData(20, 30, 15, 10, 30, 15)]
    public void Leads_connector_and_fuse_carry_the_larger_of_course_and_climb(
        double courseA,
        double climbA,
        double courseMotorA,
        double climbMotorA,
        double batteryA,
        double motorA
    )
    {
        var it = Lasting(
            Wired(Inspected.Brushless),
            (courseA, courseMotorA),
            (climbA, climbMotorA)
        );

        Assert.Equal((batteryA, 50, Outcome.Holds), it.Only(WiringBatteryLead).Figures());
        Assert.Equal((batteryA, 60, Outcome.Holds), it.Only(WiringConnector).Figures());
        Assert.Equal((motorA, 70, Outcome.Holds), it.Only(WiringMotorLead).Figures());
        Assert.Equal((batteryA, 40, Outcome.Holds), it.Only(WiringFuseCarries, "climb").Figures());
        Assert.Empty(Inspected.Brushless.All(WiringConnector));
        Assert.Empty(Inspected.Brushless.All(WiringFuseCarries));
    }

    [Theory]
    [InlineData(48, Outcome.Doubtful, Outcome.Holds, Outcome.Fails)]
    [InlineData(61, Outcome.Fails, Outcome.Fails, Outcome.Fails)]
    public void Each_is_judged_by_its_own_limit(
        double amperes,
        Outcome lead,
        Outcome connector,
        Outcome fuse
    )
    {
        var it = Lasting(Wired(Inspected.Brushless), (amperes, 1), (0, 80));

        Assert.Equal(lead, it.Only(WiringBatteryLead).Outcome);
        Assert.Equal(connector, it.Only(WiringConnector).Outcome);
        Assert.Equal(fuse, it.Only(WiringFuseCarries, "climb").Outcome);
        Assert.Equal(Outcome.Fails, it.Only(WiringMotorLead).Outcome);
    }

    [Fact]
    public void Currents_that_are_not_known_hold_by_the_most_that_they_can_be()
    {
        var it = Lasting(Wired(Inspected.Brushless), (double.NaN, 20), (double.NaN, 30));
        // 30 A over a magnet of 0.89 and what the controller draws are about 34 A.
        var most = it.MostBatteryA(30);

        Assert.Equal((most, Outcome.Holds), Seen(it.Only(WiringBatteryLead)));
        Assert.Equal((most, Outcome.Holds), Seen(it.Only(WiringConnector)));
        Assert.Equal(Outcome.Holds, it.Only(WiringFuseCarries, "climb").Outcome);
        Assert.Equal(
            Outcome.Unknown,
            Lasting(Wired(Inspected.Brushless), (double.NaN, 60), (double.NaN, 30))
                .Only(WiringBatteryLead)
                .Outcome
        );

        static (double, Outcome) Seen(Finding found) => (found.Estimate, found.Outcome);
    }

    [Theory]
    [InlineData(20, 0.9 * 20 / 44)]
    [InlineData(44, 0.9)]
    [InlineData(50, 0.95)]
    [InlineData(54, 0.95)]
    [InlineData(81, 1.5)]
    public void A_punch_is_held_against_1_1_and_1_35_times_the_fuse(
        double punchA,
        double severeness
    )
    {
        var it = Wired(Inspected.Brushless)
            .With(LoadCaseName.Punch, punch => punch with { BatteryCurrentA = punchA });
        var found = it.Only(WiringFuseCarries, "punch");

        Assert.Equal(severeness, found.Severeness, 1e-9);
        Assert.Equal(
            (punchA, 54.0, 3),
            (found.Estimate, Math.Round(found.Limit, 9), found.DurationS)
        );
    }

    [Theory]
    [InlineData(100, Outcome.Holds)]
    [InlineData(85, Outcome.Doubtful)]
    [InlineData(70, Outcome.Fails)]
    public void A_fuse_opens_before_the_lead_is_damaged(double damageA, Outcome outcome)
    {
        var it = Wired(Inspected.Brushless);
        it = it with { Wiring = it.Wiring with { LeadDamageCurrentA = damageA } };

        Assert.Equal((80, damageA, outcome), it.Only(WiringFuseProtects).Figures());
    }

    [Theory]
    [InlineData(1200, Outcome.Holds, 0)]
    [InlineData(900, Outcome.Holds, 0)]
    [InlineData(800, Outcome.Doubtful, Thresholds.PastLimit)]
    [InlineData(double.NaN, Outcome.Unknown, double.NaN)]
    public void A_run_shorter_than_wanted_is_in_doubt(
        double runS,
        Outcome outcome,
        double severeness
    )
    {
        var it = Inspected.Brushless;
        it = it with
        {
            Course = it.Course with { WantedS = 900 },
            Result = it.Result with { Endurance = it.Result.Endurance with { RunTimeS = runS } },
        };
        var found = it.Only(CourseRunTime);

        Assert.Equal((runS, 900, outcome), (found.Estimate, found.Limit, found.Outcome));
        Assert.Equal(severeness, found.Severeness);
        Assert.True(
            outcome == Outcome.Unknown
                || found.Message.Contains("at least 15 min needed", StringComparison.Ordinal)
        );
        Assert.Empty(Inspected.Brushless.All(CourseRunTime));
    }
}
