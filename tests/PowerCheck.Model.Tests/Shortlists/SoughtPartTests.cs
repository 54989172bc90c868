using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Tests.Shortlists.RequirementTests;

namespace PowerCheck.Model.Tests.Shortlists;

/// <summary>What single sought parts are asked for, and what was assumed to find it (M14).</summary>
public sealed class SoughtPartTests
{
    [Fact]
    public void What_is_assumed_of_the_rig_and_of_a_motor_without_a_mass_is_listed()
    {
        var label = SampleRig.Brushless with { Motor = new() { Kind = MotorKind.Brushless } };
        var assumed = RequiredPart
            .Of(label, SoughtPart.Motor, SpreadMethod.None)
            .Assumptions.Select(a => a.Path)
            .ToArray();

        Assert.Contains("motor.massG", assumed);
        Assert.Contains("vehicle.drivetrain.efficiency", assumed);
        Assert.DoesNotContain(
            "motor.massG",
            RequiredPart
                .Of(
                    label with
                    {
                        Motor = new() { Kind = MotorKind.Brushless, MassKg = 0.2 },
                    },
                    SoughtPart.Motor,
                    SpreadMethod.None
                )
                .Assumptions.Select(a => a.Path)
        );
    }

    [Fact]
    public void A_pack_that_is_just_full_asks_a_controller_for_its_voltage()
    {
        // Three cells of 4.2 V, full: common practice, no source.
        var label = SampleRig.Brushless with
        {
            Controller = new(),
        };
        var voltage = RequiredPart
            .Of(label, SoughtPart.Controller, SpreadMethod.None)
            .Requirements.Single(r => r.Path == "controller.maxVoltageV");

        Assert.Equal(4.2 * label.Battery.SeriesCells!.Value, voltage.Minimum, 1e-6);
        Assert.Equal("controller.voltage", voltage.SetBy);
    }

    [Theory]
    [InlineData(SoughtPart.Controller)]
    [InlineData(SoughtPart.Battery)]
    [Trait("speed", "slow")]
    public void With_spread_a_part_that_is_just_so_is_within_its_limits_without_a_caution_and_five_per_cent_less_is_not(
        SoughtPart part
    )
    {
        var found = RequiredPart.Of(Without(part, SampleRig.Brushless), part, SpreadMethod.Linear);

        Assert.All(
            found.Requirements.Where(r => r.Unit != Unit.Cells && r.Unit != Unit.Volt),
            requirement =>
            {
                var just = Setter(requirement, found.Settled, SpreadMethod.Linear);
                var sign = double.IsNaN(requirement.Minimum) ? 1.05 : 0.95;
                var beyond = Setter(
                    requirement,
                    RigFigures.With(found.Settled, requirement.Path, sign * Bound(requirement)),
                    SpreadMethod.Linear
                );
                Assert.True(IsHeld(just), $"{requirement.Path} {just.Message}");
                Assert.False(IsHeld(beyond), $"{requirement.Path} {beyond.Message}");
            }
        );
    }
}
