using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Whether the parts match at all (M11), by the words and figures on their boxes.</summary>
public sealed class MatchTests
{
    private static Inspection Supplied(
        int? min = null,
        int? max = null,
        double? minV = null,
        double? maxV = null,
        int cells = 3,
        Chemistry chemistry = Chemistry.Lipo,
        IReadOnlyList<CellLimit>? limits = null
    ) =>
        Inspected.Of(label =>
            label with
            {
                Battery = label.Battery with { SeriesCells = cells, Chemistry = chemistry },
                Controller = label.Controller with
                {
                    MinCells = min,
                    MaxCells = max,
                    MinVoltageV = minV,
                    MaxVoltageV = maxV,
                    CellLimits = limits ?? [],
                },
            }
        );

    [Theory]
    [InlineData(MotorKind.Brushless, Outcome.Holds, "The controller drives brushless motors.")]
    [InlineData(
        MotorKind.Brushed,
        Outcome.Fails,
        "The motor is brushless, and the controller does not drive that kind; "
    )]
    [InlineData(null, Outcome.Unknown, "Not to be told without controller.motorKinds.")]
    public void A_motor_is_of_a_kind_that_the_controller_drives(
        MotorKind? driven,
        Outcome outcome,
        string said
    )
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Controller = label.Controller with
                    {
                        MotorKinds = driven is { } kind ? [kind] : [],
                    },
                }
            )
            .Only(ControllerMotorKind);

        Assert.Equal(outcome, found.Outcome);
        Assert.Contains(said, found.Message, StringComparison.Ordinal);
        Assert.Equal(
            outcome switch
            {
                Outcome.Holds => 0,
                Outcome.Fails => double.PositiveInfinity,
                _ => double.NaN,
            },
            found.Severeness
        );
        Assert.Equal(outcome == Outcome.Unknown, found.Needs.Count > 0);
        Assert.All(found.Needs, need => Assert.False(need.HoldsBelow));
    }

    [Fact]
    public void Of_an_unsaid_kind_the_motor_and_the_controller_are_asked()
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { Kind = null },
                    Controller = label.Controller with { MotorKinds = [] },
                }
            )
            .Only(ControllerMotorKind);

        Assert.True(found.NeedsAll);
        Assert.Equal(
            ["motor.kind", "controller.motorKinds"],
            found.Needs.Select(need => need.Path)
        );
    }

    [Theory]
    [InlineData(3, 3, 3, Outcome.Holds, 3, 0)]
    [InlineData(1, 2, 3, Outcome.Fails, 2, 1.5)]
    [InlineData(4, 6, 3, Outcome.Fails, 4, double.PositiveInfinity)]
    [InlineData(2, 4, 3, Outcome.Holds, 4, 0)]
    [InlineData(null, 3, 3, Outcome.Holds, 3, 0)]
    public void A_count_of_cells_is_exact(
        int? min,
        int? max,
        int cells,
        Outcome outcome,
        double limit,
        double severeness
    )
    {
        var found = Supplied(min, max, cells: cells).Only(ControllerCellCount);

        Assert.Equal((cells, limit, outcome), found.Figures());
        Assert.Equal(severeness, found.Severeness);
        var said = (outcome, cells < limit) switch
        {
            (Outcome.Holds, _) => "at most",
            (_, true) => "the controller needs at least 4 cells",
            _ => "the controller takes at most 2 cells",
        };
        Assert.Contains(said, found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_count_and_voltage_the_count_is_open_and_the_voltage_decides_otherwise()
    {
        var open = Supplied().Only(ControllerCellCount);

        Assert.Equal(Outcome.Unknown, open.Outcome);
        Assert.Equal(
            new Need("controller.maxCells", Unit.Cells, 3, false),
            Assert.Single(open.Needs)
        );
        Assert.Empty(Supplied(maxV: 13).All(ControllerCellCount));
    }

    [Theory]
    [InlineData(Chemistry.Lihv, null, null, true)]
    [InlineData(Chemistry.Lipo, null, null, false)]
    [InlineData(Chemistry.Lihv, 13.0, null, true)]
    [InlineData(Chemistry.Lihv, 13.05, null, false)]
    [InlineData(Chemistry.Lihv, null, Chemistry.Lihv, false)]
    [InlineData(Chemistry.Lihv, null, Chemistry.Nimh, true)]
    public void High_voltage_cells_on_a_count_for_usual_ones_are_a_caution(
        Chemistry chemistry,
        double? maxV,
        Chemistry? counted,
        bool caution
    )
    {
        var found = Supplied(
                max: 3,
                maxV: maxV,
                chemistry: chemistry,
                limits: counted is { } of ? [new(of, 1, 3)] : []
            )
            .All(ControllerVoltage)
            .Where(f => f.Caution)
            .ToArray();

        Assert.Equal(caution ? 1 : 0, found.Length);
        // Three times 4.35 V, where three usual cells have 12.6 V.
        Assert.All(found, f => Assert.Equal((13.05, 12.6, Outcome.Holds), f.Figures()));
    }

    [Theory]
    [InlineData(12.6, Outcome.Holds, 0)]
    [InlineData(13.0, Outcome.Holds, 0)]
    [InlineData(12.0, Outcome.Fails, 1.05)]
    public void A_full_pack_is_no_more_than_the_highest_supply_voltage(
        double maxV,
        Outcome outcome,
        double severeness
    )
    {
        var found = Supplied(maxV: maxV).Only(ControllerVoltage);

        Assert.Equal((12.6, maxV, outcome), found.Figures());
        Assert.Equal(severeness, found.Severeness, 1e-9);
    }

    [Theory]
    [InlineData(9.5, null)]
    [InlineData(9.6, null)]
    [InlineData(9.7, Outcome.Holds)]
    [InlineData(12.6, Outcome.Holds)]
    [InlineData(12.7, Outcome.Fails)]
    public void An_empty_pack_under_the_lowest_supply_voltage_is_a_caution_and_a_full_one_fails(
        double minV,
        Outcome? outcome
    )
    {
        var found = Supplied(max: 3, minV: minV).All(ControllerVoltage);

        Assert.Equal(outcome is null ? 0 : 1, found.Length);
        Assert.All(
            found,
            f =>
            {
                var fails = outcome == Outcome.Fails;
                Assert.Equal((fails ? 12.6 : 9.6, minV, outcome!.Value), f.Figures());
                Assert.Equal(!fails, f.Caution);
                Assert.True(!fails || f.Message.Contains("at least 12.7 V needed"), f.Message);
            }
        );
    }

    [Theory]
    [InlineData(12.6, Outcome.Holds)]
    [InlineData(12.0, Outcome.Fails)]
    public void A_full_pack_is_no_more_than_the_motors_box_says(double maxV, Outcome outcome)
    {
        var found = Inspected
            .Of(label => label with { Motor = label.Motor with { MaxVoltageV = maxV } })
            .Only(MotorVoltage);

        Assert.Equal((12.6, maxV, outcome), found.Figures());
        Assert.Empty(Inspected.Brushless.All(MotorVoltage));
    }

    [Theory]
    [InlineData(41_600, Outcome.Holds)]
    [InlineData(41_580, Outcome.Holds)]
    [InlineData(41_500, Outcome.Fails)]
    public void No_load_speed_is_KV_times_a_full_pack(double maxRpm, Outcome outcome)
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { MaxSpeedRadPerS = Unit.Rpm.ToSi(maxRpm) },
                }
            )
            .Only(MotorSpeed);

        // 3300·12.6 = 41 580 rpm.
        Assert.Equal(41_580, Unit.Rpm.FromSi(found.Estimate), 1e-6);
        Assert.Equal(maxRpm, Unit.Rpm.FromSi(found.Limit), 1e-6);
        Assert.Equal(outcome, found.Outcome);
        Assert.Equal(outcome == Outcome.Fails ? 41_580.0 / maxRpm : 0, found.Severeness, 1e-9);
        Assert.Empty(Inspected.Brushed.All(MotorSpeed));
    }

    [Theory]
    [InlineData(2, 84_000, Outcome.Holds)]
    [InlineData(2, 83_000, Outcome.Fails)]
    [InlineData(4, 84_000, Outcome.Fails)]
    public void Electrical_speed_is_that_times_pole_pairs(
        int polePairs,
        double maxRpm,
        Outcome outcome
    )
    {
        Inspection With(MotorKind kind) =>
            Inspected.Of(label =>
                label with
                {
                    Motor = label.Motor with { PolePairs = polePairs, Kind = kind },
                    Controller = label.Controller with
                    {
                        MaxElectricalSpeedRadPerS = Unit.Rpm.ToSi(maxRpm),
                    },
                }
            );
        var found = With(MotorKind.Brushless).Only(ControllerElectricalSpeed);

        Assert.Equal(41_580 * polePairs, Unit.Rpm.FromSi(found.Estimate), 1e-6);
        Assert.Equal(outcome, found.Outcome);
        Assert.Empty(With(MotorKind.Brushed).All(ControllerElectricalSpeed));
        Assert.Empty(Inspected.Brushless.All(ControllerElectricalSpeed));
    }

    [Theory]
    [InlineData(35, 3, 36, true)]
    [InlineData(36, 3, 36, false)]
    [InlineData(37, 3, 36, false)]
    [InlineData(35, 2, 36, false)]
    public void Fewer_turns_than_asked_for_at_this_cell_count_are_a_caution(
        int turns,
        int cells,
        double fewest,
        bool caution
    )
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { Turns = turns },
                    Controller = label.Controller with { MinTurns = [new(cells, fewest)] },
                }
            )
            .All(ControllerMinimumTurns);

        Assert.Equal(caution ? 1 : 0, found.Length);
        Assert.All(found, f => Assert.Equal((turns, fewest), (f.Estimate, f.Limit)));
        Assert.All(found, f => Assert.True(f.Caution));
    }
}
