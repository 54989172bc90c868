using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>Rules between parts and defaults that take more than one figure, by hand arithmetic.</summary>
public sealed class PartRuleTests
{
    [Fact]
    public void A_punch_that_only_the_reserve_cannot_feed_is_cut_off()
    {
        // Half charged a cell has 3.756 V, at a fifth 3.693 V: 0.19 V a pack lie between the two.
        var cases = Enumerable
            .Range(40, 80)
            .Select(n =>
                SampleRig.Brushless with
                {
                    Battery = SampleRig.Brushless.Battery with { CellResistanceOhm = n * 0.25e-3 },
                }
            )
            .Select(label => CaseRunner.Run(SampleRig.Of(label)))
            .First(cases =>
                cases[LoadCaseName.Punch].BusVoltageV > 9.6
                && cases.PunchAtReserve.BusVoltageV < 9.6
            );

        Assert.Equal(Obstacle.Cutoff, cases[LoadCaseName.Punch].Obstacle);
        Assert.False(cases[LoadCaseName.Punch].Attainable);
    }

    [Theory]
    [InlineData(0.5, 0.001, 150 * 0.5 / 11.1)]
    [InlineData(0.15, 0.022, 150 * 0.15 / 11.1)]
    [InlineData(0.15, 0.1, 0.01 * 11.1 / 0.1)]
    public void An_unsaid_no_load_current_is_a_share_of_stall_bounded_by_the_mass(
        double massKg,
        double resistanceOhm,
        double expectedA
    )
    {
        var label = SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with
            {
                NoLoadPoints = [],
                MassKg = massKg,
                ResistanceOhm = resistanceOhm,
            },
        };

        var assumed = RigCompletion
            .Of(label)
            .Ledger.Assumptions.Single(a => a.Path == "motor.noLoadPoints.0.currentA");

        Assert.Equal(expectedA, assumed.Value, 1e-9);
    }

    [Theory]
    [InlineData(new[] { MotorKind.Brushless }, MotorKind.Brushless)]
    [InlineData(new[] { MotorKind.Brushed }, MotorKind.Brushed)]
    [InlineData(new[] { MotorKind.Brushless, MotorKind.Brushed }, MotorKind.Brushed)]
    public void An_unsaid_kind_of_motor_is_the_one_that_the_controller_drives(
        MotorKind[] driven,
        MotorKind expected
    )
    {
        var label = SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with
            {
                Kind = null,
                Sensored = null,
                Rotor = null,
                PolePairs = null,
            },
            Controller = SampleRig.Brushless.Controller with { MotorKinds = driven },
        };

        Assert.Equal(expected, SampleRig.Of(label).Motor.Kind);
    }

    [Theory]
    [InlineData(12.5, false)]
    [InlineData(12.7, true)]
    public void A_full_pack_of_12_6_V_fails_a_controller_that_needs_more(double leastV, bool fails)
    {
        var label = SampleRig.Brushless with
        {
            Controller = SampleRig.Brushless.Controller with { MinVoltageV = leastV },
        };

        var found = Judgement
            .Inspect(SampleRig.Inspect(label))
            .Any(f => f.Kind == FindingCatalogue.ControllerVoltage && f.Outcome == Outcome.Fails);

        Assert.Equal(fails, found);
    }

    [Theory]
    [InlineData(true, Outcome.Holds)]
    [InlineData(false, Outcome.Unknown)]
    public void A_low_speed_start_with_back_EMF_does_without_knowing_of_a_sensor(
        bool lowSpeedStart,
        Outcome expected
    )
    {
        var label = SampleRig.Brushless with
        {
            Controller = SampleRig.Brushless.Controller with
            {
                SensorInput = null,
                LowSpeedStart = lowSpeedStart,
            },
        };

        var found = Judgement
            .Inspect(SampleRig.Inspect(label))
            .Single(f => f.Kind == FindingCatalogue.ControllerRotorSensing);

        Assert.Equal(expected, found.Outcome);
    }

    [Fact]
    public void Two_to_three_lithium_cells_are_six_to_nine_of_nickel_metal_hydride()
    {
        // 4.20 V over 1.40 V is three (common practice, no source).
        var limits = new SupplyLimits([], 2, 3, double.NaN, double.NaN);

        Assert.Equal((6, 9), limits.CellsFor(Chemistry.Nimh));
        Assert.Equal((2, 3), limits.CellsFor(Chemistry.Lipo));
    }

    [Fact]
    public void A_locked_winding_of_unknown_mass_has_no_temperature_and_no_time()
    {
        var label = SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with
            {
                MassKg = null,
                CanDiameterM = null,
                CanLengthM = null,
            },
        };

        var jam = SampleRig
            .Inspect(label)
            .Result.Temperatures.MotorWinding.Cases.Single(c => c.Case == LoadCaseName.Jam);

        Assert.True(double.IsNaN(jam.FromColdS), Say.Time(jam.FromColdS));
        Assert.True(double.IsNaN(jam.JudgedC), Say.Degrees(jam.JudgedC));
    }
}
