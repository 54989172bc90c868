using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

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

    [Fact]
    public void What_no_controller_can_help_is_told()
    {
        var heavy = SampleRig.Brushless with
        {
            Vehicle = SampleRig.Brushless.Vehicle with { MassKg = 9 },
            Controller = new(),
        };
        var unmet = RequiredPart.Of(heavy, SoughtPart.Controller, SpreadMethod.None).Unmet;

        Assert.Contains(unmet, finding => finding.Kind.Code == "motor.winding-temperature");
        Assert.DoesNotContain(unmet, finding => finding.Kind.Code == "controller.heat");
        Assert.DoesNotContain(
            unmet,
            finding => finding.Outcome is Outcome.Holds or Outcome.Unknown
        );
    }
}
