using PowerCheck.Model.Batteries;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Figures that the findings compute themselves (M2, M7, M8, M13), against hand arithmetic.</summary>
public sealed class FigureTests
{
    private static readonly RigLabel Brushed = SampleRig.Brushed with
    {
        Accessories = [],
        Course = new() { AmbientC = 25 },
    };

    private static Inspection With(
        Inspection it,
        LoadCaseName name,
        Func<LoadCase, LoadCase> change
    ) =>
        it with
        {
            Cases = it.Cases with
            {
                All = [.. it.Cases.All.Select(load => load.Name == name ? change(load) : load)],
            },
        };

    private static Finding? Find(Inspection it, FindingKind kind, string? loadCase = null) =>
        Judgement
            .Inspect(it)
            .SingleOrDefault(f =>
                f.Kind == kind
                && (
                    loadCase is null
                    || string.Equals(f.LoadCase, loadCase, StringComparison.Ordinal)
                )
            );

    [Fact]
    public void The_most_battery_current_is_that_of_a_weak_magnet_and_an_empty_pack()
    {
        var it = SampleRig.Inspect(
            SampleRig.Brushless with
            {
                Accessories = [new() { IdleCurrentA = 1, WorkingCurrentA = 1 }],
                Controller = SampleRig.Brushless.Controller with
                {
                    ReceiverSupply = new() { VoltageV = 6, Efficiency = 0.8 },
                },
            }
        );
        it = it with { Rig = it.Rig with { Vehicle = it.Rig.Vehicle with { MotorCount = 2 } } };
        // At 120 °C the magnet is at 1 − 0.0011·100 = 0.89 and takes more current for the torque: 2·30/0.89 = 67.4157 A;
        // two controllers draw 0.05 A each, the supply 6·1/0.8 = 7.5 W at the cut-off of 3·3.2 V.
        Assert.Equal(67.4157 + 0.1 + (7.5 / 9.6), it.MostBatteryA(30), 1e-4);
    }

    [Fact]
    public void Cells_side_by_side_share_the_current_of_the_label_and_heat_the_same_pack()
    {
        var it = SampleRig.Inspect(
            Brushed with
            {
                Battery = new BatteryLabel
                {
                    Chemistry = Chemistry.Lipo,
                    SeriesCells = 3,
                    ParallelCells = 2,
                    CapacityCoulomb = 4 * 3600,
                    ContinuousC = 10,
                    // 1 J/K and 10 K/W: settled long before the 360 s are over.
                    MassKg = 0.001,
                    PackToAmbientKPerW = 10,
                },
            }
        );
        // 35 K over 10 K/W are 3.5 W in six cells of 20 A each; lasting resistance is 1.4 times the short one.
        Assert.Equal(
            3.5 / (20 * 20 * 6) / 1.4,
            Find(it, FindingCatalogue.BatteryLabelResistance)!.Limit,
            1e-9
        );
    }

    [Fact]
    public void A_freewheel_diode_heats_the_controller_while_the_switch_is_off()
    {
        var it = SampleRig.Inspect(
            Brushed with
            {
                Controller = Brushed.Controller with { Freewheel = null, OnResistanceOhm = 0.002 },
            }
        );
        it = With(
            it,
            LoadCaseName.Level,
            level =>
                level with
                {
                    MotorCurrentA = 20,
                    MotorRmsCurrentA = 20,
                    ControllerHeatW = 20 * 20 * 0.002,
                    DutyRatio = 0.25,
                }
        );
        // Rated for 40²·0.002·1.3 = 4.16 W; hot switches lose 20²·0.002·1.3 = 1.04 W, the diode 0.8·20·0.75 = 12 W.
        Assert.Equal(
            25 + (75 * (1.04 + 12) / 4.16),
            Find(it, FindingCatalogue.ControllerFreewheel)!.Estimate,
            1e-9
        );
    }

    [Theory]
    [InlineData(29.9, false)]
    [InlineData(30.1, true)]
    public void A_commutator_stands_three_times_the_lasting_current(double jamA, bool caution)
    {
        var it = SampleRig.Inspect(Brushed);
        it = With(it, LoadCaseName.Jam, jam => jam with { MotorCurrentA = jamA });
        var computed = it with { Result = it.Result with { ContinuousMotorA = 10 } };
        Assert.Equal(caution, Find(computed, FindingCatalogue.MotorCommutator) is not null);
        // What the box says goes before what was computed.
        var printed = it with
        {
            Rig = it.Rig with
            {
                Motor = it.Rig.Motor with
                {
                    Ratings = it.Rig.Motor.Ratings with { ContinuousCurrentA = 10 },
                },
            },
            Result = it.Result with { ContinuousMotorA = 1000 },
        };
        Assert.Equal(caution, Find(printed, FindingCatalogue.MotorCommutator) is not null);
    }

    [Theory]
    [InlineData(1.0, Outcome.Holds)]
    [InlineData(1.09, Outcome.Holds)]
    [InlineData(1.11, Outcome.Doubtful)]
    [InlineData(1.2, Outcome.Doubtful)]
    [InlineData(1.34, Outcome.Doubtful)]
    [InlineData(1.36, Outcome.Fails)]
    [InlineData(1.4, Outcome.Fails)]
    public void A_fuse_carries_1_10_times_its_rating_and_may_open_from_1_35_times_on(
        double multiple,
        Outcome outcome
    )
    {
        var it = With(
            SampleRig.Inspect(Brushed with { Wiring = new() { FuseA = 30 } }),
            LoadCaseName.Punch,
            punch => punch with { BatteryCurrentA = 30 * multiple }
        );
        Assert.Equal(outcome, Find(it, FindingCatalogue.WiringFuseCarries, "punch")!.Outcome);
    }

    [Fact]
    public void A_fuse_surely_opens_at_twice_its_rating_within_five_seconds()
    {
        var it = SampleRig.Inspect(Brushed with { Wiring = new() { FuseA = 30 } });
        var protects = Find(it, FindingCatalogue.WiringFuseProtects)!;
        Assert.Equal((60, 5), (protects.Estimate, protects.DurationS));
    }
}
