using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>The same rig told in other words gets the same figures.</summary>
[Trait("speed", "slow")]
public sealed class EquivalenceLaws
{
    [Fact]
    public void Teeth_or_their_ratio() =>
        Same(label =>
        {
            var gearing = SampleRig.Of(label).Vehicle.Gearing;
            return (
                label,
                Chassis(
                    label,
                    v =>
                        v with
                        {
                            Drivetrain = v.Drivetrain with { OverallRatio = gearing.LowestRatio },
                        }
                )
            );
        });

    [Fact]
    public void One_gear_or_a_gearbox_of_one() =>
        Same(label =>
            (
                label,
                Chassis(
                    label,
                    v =>
                        v with
                        {
                            Drivetrain = v.Drivetrain with
                            {
                                TransmissionRatio = null,
                                Ratios = [v.Drivetrain.TransmissionRatio ?? 1],
                            },
                        }
                )
            )
        );

    [Fact]
    public void Counted_stages_or_their_product() =>
        Same(label =>
            (
                Chassis(
                    label,
                    v =>
                        v with
                        {
                            Drivetrain = v.Drivetrain with
                            {
                                Efficiency = null,
                                SpurStages = 2,
                                AxleGear = Model.Vehicles.AxleGear.Worm,
                            },
                        }
                ),
                Chassis(
                    label,
                    v =>
                        v with
                        {
                            Drivetrain = v.Drivetrain with { Efficiency = 0.95 * 0.95 * 0.6 },
                        }
                )
            )
        );

    [Fact]
    public void A_printed_diameter_or_the_loaded_one() =>
        Same(label =>
            (
                Chassis(
                    label,
                    v =>
                        v with
                        {
                            TireDiameterM = 0.12,
                            TireDiameterPrinted = true,
                            LoadedTireShare = 0.9,
                        }
                ),
                Chassis(
                    label,
                    v => v with { TireDiameterM = 0.12 * 0.9, TireDiameterPrinted = null }
                )
            )
        );

    [Fact]
    public void Two_cells_beside_each_other_or_one_of_half_the_resistance() =>
        Same(label =>
        {
            RigLabel Cells(int parallel, double ohm) =>
                label with
                {
                    Battery = label.Battery with
                    {
                        ParallelCells = parallel,
                        CellResistanceOhm = ohm,
                    },
                };
            return (Cells(2, 0.012), Cells(1, 0.006));
        });

    [Fact]
    public void Two_cells_beside_each_other_or_one_twice_as_large_where_the_resistance_is_assumed() =>
        Same(label =>
        {
            RigLabel Cells(int parallel) =>
                label with
                {
                    Battery = label.Battery with
                    {
                        ParallelCells = parallel,
                        CellResistanceOhm = null,
                    },
                };
            return (Cells(2), Cells(1));
        });

    [Fact]
    public void A_winding_measured_warm_or_cold() =>
        Same(label =>
        {
            RigLabel Measured(double ohm, double temperatureC) =>
                label with
                {
                    Motor = label.Motor with
                    {
                        ResistanceOhm = ohm,
                        ResistanceTemperatureC = temperatureC,
                    },
                };
            return (Measured(0.05 * (1 + (0.00393 * 30)), 50), Measured(0.05, 20));
        });

    [Fact]
    public void A_no_load_current_told_once_or_twice() =>
        Same(label =>
        {
            RigLabel Points(params NoLoadPoint[] points) =>
                label with
                {
                    Motor = label.Motor with
                    {
                        NoLoadPoints = points,
                        ResistanceOhm = 0.03,
                        BrushDropV = 0,
                        NoLoadStandstillShare = 0.5,
                    },
                };
            // The line through (9 V, 2 A) and a standstill share of one half: 1 A + 1 A·ω/ω₀ with ω₀ = (9 V − 2 A·R)/kt;
            // at ω₀/2 it is 1.5 A, which takes (9 V − 2 A·R)/2 + 1.5 A·R.
            return (
                Points(new NoLoadPoint(9, 2)),
                Points(new(9, 2), new((9 - (2 * 0.03)) / 2 + (1.5 * 0.03), 1.5))
            );
        });

    [Fact]
    public void Accessories_and_motor_kinds_in_any_order() =>
        Same(label =>
            (
                label,
                label with
                {
                    Accessories = label.Accessories is { } list ? [.. list.Reverse()] : null,
                    Controller = label.Controller with
                    {
                        MotorKinds = [.. label.Controller.MotorKinds.Reverse()],
                    },
                }
            )
        );

    [Fact]
    public void The_same_words_once_more() => Same(label => (label, label with { }));

    private static RigLabel Chassis(
        RigLabel label,
        Func<Model.Vehicles.VehicleLabel, Model.Vehicles.VehicleLabel> change
    ) => label with { Vehicle = change(label.Vehicle) };

    private static void Same(Func<RigLabel, (RigLabel One, RigLabel Other)> told) =>
        Law.Holds(
            60,
            1,
            label =>
            {
                var (one, other) = told(label);
                return Figures.Differences(SampleRig.Inspect(one), SampleRig.Inspect(other));
            }
        );
}
