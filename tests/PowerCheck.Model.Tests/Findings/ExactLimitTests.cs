using PowerCheck.Model.Batteries;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Figures that meet their limit to the last bit: a printed limit that is just met holds (M11).</summary>
public sealed class ExactLimitTests
{
    // Two cells, for a product with two is exact: 8.4 V full and 6.4 V empty, high-voltage cells 8.7 V full.
    private static Inspection Supplied(
        double? minV = null,
        double? maxV = null,
        Chemistry chemistry = Chemistry.Lipo
    ) =>
        Inspected.Of(label =>
            label with
            {
                Battery = label.Battery with { SeriesCells = 2, Chemistry = chemistry },
                Controller = label.Controller with { MinVoltageV = minV, MaxVoltageV = maxV },
            }
        );

    [Fact]
    public void High_voltage_cells_that_just_meet_the_printed_voltage_deserve_no_word() =>
        Assert.DoesNotContain(
            Supplied(maxV: 8.7, chemistry: Chemistry.Lihv).All(ControllerVoltage),
            found => found.Caution
        );

    [Fact]
    public void A_full_pack_at_the_lowest_supply_voltage_may_shut_down_early_but_starts()
    {
        var found = Supplied(minV: 8.4).Only(ControllerVoltage);

        Assert.Equal((true, Outcome.Holds), (found.Caution, found.Outcome));
    }

    [Fact]
    public void An_empty_pack_at_the_lowest_supply_voltage_deserves_no_word() =>
        Assert.Empty(Supplied(minV: 6.4).All(ControllerVoltage));

    [Fact]
    public void A_billionth_over_a_printed_limit_still_holds()
    {
        const double Limit = 8.4 / (1 + 1e-9);
        Assert.Equal(8.4, Limit * (1 + 1e-9));

        Assert.Equal(Outcome.Holds, Supplied(maxV: Limit).Only(ControllerVoltage).Outcome);
    }

    [Fact]
    public void A_back_EMF_that_is_just_enough_makes_do_without_a_sensor()
    {
        var it = Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { Sensored = null },
                    Controller = label.Controller with { LowSpeedStart = true },
                }
            )
            .With(LoadCaseName.Level, level => level with { MotorSpeedRadPerS = 128 });
        it = it.WithRig(rig =>
            rig with
            {
                Controller = rig.Controller with
                {
                    LowSpeedBackEmfV = rig.Motor.TorqueConstantNmPerA * 128,
                },
            }
        );

        Assert.Equal(Outcome.Holds, it.Only(ControllerRotorSensing).Outcome);
    }

    [Fact]
    public void A_can_that_just_fits_its_mount_fits()
    {
        var it = Inspected.Of(label =>
            label with
            {
                Vehicle = label.Vehicle with
                {
                    Drivetrain = label.Vehicle.Drivetrain with { MotorClearanceM = 0.018 },
                },
            }
        );

        Assert.Equal(Outcome.Holds, it.Only(DrivetrainMotorClearance).Outcome);
    }

    [Fact]
    public void A_pack_whose_open_voltage_is_its_cut_off_has_no_room_whatever_flows()
    {
        var found = Inspected
            .Brushless.WithRig(rig =>
                rig with
                {
                    Controller = rig.Controller with
                    {
                        CutoffVPerCell = OpenCircuit.CellV(Chemistry.Lipo, 0.5),
                    },
                }
            )
            .With(LoadCaseName.Climb, climb => climb with { BusVoltageV = double.NaN })
            .Only(BatteryCutoff, "climb");

        Assert.Equal((double.PositiveInfinity, Outcome.Fails), (found.Severeness, found.Outcome));
    }
}
