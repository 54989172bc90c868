using PowerCheck.Model.Batteries;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>The pack's limits (M2, M11): three cells of lithium polymer, 3 Ah, cut off at 9.6 V.</summary>
public sealed class BatteryTests
{
    private static Inspection Rated(
        double continuousC,
        double burstC = double.NaN,
        double burstS = double.NaN
    ) =>
        Inspected.Brushless.WithRig(rig =>
            rig with
            {
                Battery = rig.Battery with
                {
                    ContinuousC = continuousC,
                    BurstC = burstC,
                    BurstS = burstS,
                },
            }
        );

    private static Inspection Rms(Inspection it, double batteryA, double motorA) =>
        it with
        {
            Result = it.Result with
            {
                Endurance = it.Result.Endurance with
                {
                    RmsBatteryCurrentA = batteryA,
                    RmsMotorCurrentA = motorA,
                },
            },
        };

    private static double Half => 3 * OpenCircuit.CellV(Chemistry.Lipo, 0.5);

    private static double AtReserve => 3 * OpenCircuit.CellV(Chemistry.Lipo, 0.2);

    [Theory]
    [InlineData(0.5, Outcome.Holds)]
    [InlineData(0.95, Outcome.Doubtful)]
    [InlineData(1.05, Outcome.Fails)]
    public void The_climb_may_sag_from_half_charge_to_the_cut_off(double share, Outcome outcome)
    {
        var bus = Half - (share * (Half - 9.6));
        var found = Inspected
            .Brushless.With(LoadCaseName.Climb, climb => climb with { BusVoltageV = bus })
            .Only(BatteryCutoff, "climb");

        Assert.Equal(share, found.Severeness, 1e-9);
        Assert.Equal((Math.Round(bus, 9), 9.6, outcome), found.Figures());
        Assert.True(double.IsNaN(found.DurationS));
        Assert.StartsWith(
            "Voltage at the controller creeping up the slope, half charged: ",
            found.Message,
            StringComparison.Ordinal
        );
        Assert.Contains("at least 9.6 V needed", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.5, Outcome.Holds)]
    [InlineData(1.05, Outcome.Fails)]
    public void The_punch_may_sag_from_the_reserve_to_the_cut_off(double share, Outcome outcome)
    {
        var it = Inspected.Brushless;
        var bus = AtReserve - (share * (AtReserve - 9.6));
        it = it with
        {
            Cases = it.Cases with
            {
                PunchAtReserve = it.Cases.PunchAtReserve with { BusVoltageV = bus },
            },
        };
        var found = it.Only(BatteryCutoff, "punch");

        Assert.Equal(share, found.Severeness, 1e-9);
        Assert.Equal((outcome, 3), (found.Outcome, found.DurationS));
        Assert.StartsWith(
            "Voltage at the controller in a full-throttle punch, at the reserve: ",
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(10, Outcome.Holds)]
    [InlineData(90, Outcome.Unknown)]
    public void A_bus_that_is_not_known_is_at_least_that_of_the_most_battery_current(
        double motorA,
        Outcome outcome
    )
    {
        var it = Inspected.Brushless.With(
            LoadCaseName.Climb,
            climb => climb with { BusVoltageV = double.NaN, MotorRmsCurrentA = motorA }
        );
        var found = it.Only(BatteryCutoff, "climb");
        var lowest = Half - (it.Rig.SourceAt(0.5, true).ResistanceOhm * it.MostBatteryA(motorA));

        Assert.Equal(outcome, found.Outcome);
        Assert.Equal(outcome == Outcome.Holds ? lowest : double.NaN, found.Estimate, 1e-9);
        Assert.Equal(
            outcome == Outcome.Holds ? (Half - lowest) / (Half - 9.6) : double.NaN,
            found.Severeness,
            1e-9
        );
    }

    [Theory]
    [InlineData(11.0)]
    [InlineData(double.NaN)]
    public void A_cut_off_above_the_open_voltage_leaves_no_room(double busV)
    {
        var found = Inspected
            .Brushless.WithRig(rig =>
                rig with
                {
                    Controller = rig.Controller with { CutoffVPerCell = 3.9 },
                }
            )
            .With(LoadCaseName.Climb, climb => climb with { BusVoltageV = busV })
            .Only(BatteryCutoff, "climb");

        Assert.Equal((double.PositiveInfinity, Outcome.Fails), (found.Severeness, found.Outcome));
    }

    [Theory]
    [InlineData(25, Outcome.Holds)]
    [InlineData(28, Outcome.Doubtful)]
    [InlineData(31, Outcome.Fails)]
    public void The_courses_rms_is_held_against_the_rate_times_the_one_hour_current(
        double rms,
        Outcome outcome
    )
    {
        // 10 C of 3 Ah are 30 A.
        var found = Rms(Rated(10), rms, 1).Only(BatteryContinuousRate);

        Assert.Equal((rms, 30, outcome), found.Figures());
        Assert.Empty(Inspected.Brushless.All(BatteryContinuousRate));
    }

    [Theory]
    [InlineData(20, Outcome.Holds)]
    [InlineData(25, Outcome.Unknown)]
    [InlineData(40, Outcome.Unknown)]
    public void A_course_current_that_is_not_known_holds_only_by_the_most_that_it_can_be(
        double motorA,
        Outcome outcome
    )
    {
        // 20 A at 120 °C, the magnet at 0.89, are 22.5 A of 30 A; 25 A are 28.1 A, too close.
        var it = Rms(Rated(10), double.NaN, motorA);
        var found = it.Only(BatteryContinuousRate);

        Assert.Equal(outcome, found.Outcome);
        Assert.Equal(
            outcome == Outcome.Holds ? it.MostBatteryA(motorA) : double.NaN,
            found.Estimate,
            1e-9
        );
    }

    [Theory]
    [InlineData(10, double.NaN, double.NaN, 35, Outcome.Doubtful, 30)]
    [InlineData(10, double.NaN, double.NaN, 20, Outcome.Holds, 30)]
    [InlineData(10, 20, 5, 65, Outcome.Fails, 60)]
    [InlineData(10, 20, 5, 35, Outcome.Holds, 60)]
    public void A_punch_past_the_burst_rate_fails_and_past_a_lasting_one_is_in_doubt(
        double continuousC,
        double burstC,
        double burstS,
        double punchA,
        Outcome outcome,
        double limitA
    )
    {
        var found = Rated(continuousC, burstC, burstS)
            .With(LoadCaseName.Punch, punch => punch with { BatteryCurrentA = punchA })
            .Only(BatteryBurstRate);

        Assert.Equal((punchA, limitA, outcome), found.Figures());
        Assert.Equal((3, "punch"), (found.DurationS, found.LoadCase));
        Assert.Empty(Inspected.Brushless.All(BatteryBurstRate));
    }

    private static Inspection Labelled(double milliohm, bool given, double continuousC = 100) =>
        Rated(continuousC)
            .WithRig(rig =>
                rig with
                {
                    Battery = rig.Battery with
                    {
                        CellResistanceOhm = milliohm * 1e-3,
                        CellResistanceGiven = given,
                        // So large a pack of heat that voltage alone counts.
                        HeatJPerK = 1e9,
                    },
                }
            );

    // 300 A in a cell: (U(0.5) − 3.2 V)/300 A are about 1.85 mΩ, over the lasting factor of 1.4 about 1.3 mΩ.
    [Theory]
    [InlineData(2.0, true, true)]
    [InlineData(1.0, true, false)]
    [InlineData(2.0, false, false)]
    public void A_label_needs_cells_that_carry_its_rate_to_the_cut_off(
        double milliohm,
        bool given,
        bool doubted
    )
    {
        var it = Labelled(milliohm, given);
        var needed = (OpenCircuit.CellV(Chemistry.Lipo, 0.5) - 3.2) / 300 / 1.4;
        var rate = it.All(BatteryLabelRate);
        var resistance = it.All(BatteryLabelResistance);

        Assert.Equal((doubted ? 1 : 0, given ? 0 : 1), (rate.Length, resistance.Length));
        Assert.All(
            rate.Concat(resistance),
            f =>
            {
                Assert.Equal(needed, f.Limit, 1e-12);
                Assert.Equal(milliohm * 1e-3, f.Estimate, 1e-12);
                Assert.True(f.Caution);
            }
        );
    }

    [Fact]
    public void Cells_of_just_the_needed_resistance_are_believed()
    {
        var needed = Labelled(1, false).Only(BatteryLabelResistance).Limit;

        Assert.Empty(Labelled(needed * 1e3, true).All(BatteryLabelRate));
    }

    [Fact]
    public void A_label_without_rate_or_capacity_is_not_tested()
    {
        var it = Labelled(2, false)
            .WithRig(rig =>
                rig with
                {
                    Battery = rig.Battery with { LabelCapacityCoulomb = double.NaN },
                }
            );

        Assert.Empty(it.All(BatteryLabelResistance));
        Assert.Empty(Labelled(2, false, double.NaN).All(BatteryLabelResistance));
    }

    [Fact]
    public void A_label_needs_cells_that_stay_cool_over_a_full_discharge()
    {
        var it = Rated(10)
            .WithRig(rig =>
                rig with
                {
                    Battery = rig.Battery with { CellResistanceGiven = false },
                }
            );
        var battery = it.Rig.Battery;
        // Held at the wanted watts for an hour over the rate, the pack ends at 60 °C.
        var watts = it.Only(BatteryLabelResistance).Limit * battery.LastingFactor * 30 * 30 * 3;
        var ends = new Model.Courses.PackWarmth(battery, 25).AfterC(25, watts, 360);

        Assert.Equal(60, ends, 1e-6);
    }

    [Fact]
    public void Temperatures_of_a_pack_without_mass_are_open() =>
        Assert.Equal(
            Outcome.Unknown,
            Inspected
                .Brushless.WithWarmth(warm =>
                    warm with
                    {
                        Battery = warm.Battery with { PeakC = double.NaN },
                    }
                )
                .Only(BatteryTemperature)
                .Outcome
        );
}
