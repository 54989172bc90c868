using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Standing on a slope (M5): where nothing has to hold, where a drag brake does, and what is not known.</summary>
public sealed class HoldTests
{
    private static readonly Rig Sample = SampleRig.Of(SampleRig.Brushed with { Accessories = [] });

    // Frictionless on the level.
    private static readonly Rig Level = Sample with
    {
        Road = Sample.Road with { SlopeRad = 0, RollingResistance = 0 },
        Motor = Sample.Motor with { NoLoad = new(0, 1e-3) },
    };

    private static Rig Doing(Rig rig, HoldMode mode) =>
        rig with
        {
            Controller = rig.Controller with { Hold = mode },
        };

    [Fact]
    public void Where_nothing_pulls_the_rig_stands_by_itself()
    {
        Assert.Equal(0, WheelLoad.HoldingNm(Level, 0));
        var hold = HoldCase.Of(Doing(Level, HoldMode.None));

        Assert.Equal((true, 0, 0), (hold.Attainable, hold.MotorCurrentA, hold.CreepBackMPerS));
        Assert.Equal(0, hold.MotorHeatW);
    }

    [Theory]
    [InlineData(HoldMode.None, false)]
    [InlineData(HoldMode.DragBrake, true)]
    public void On_a_slope_the_controller_tells_whether_it_stands(HoldMode mode, bool stands) =>
        Assert.Equal(stands, HoldCase.Of(Doing(Sample, mode)).Attainable);

    [Theory]
    [InlineData(HoldMode.None)]
    [InlineData(HoldMode.DragBrake)]
    [InlineData(HoldMode.Active)]
    public void A_rig_of_unknown_mass_stands_or_not(HoldMode mode)
    {
        var rig = Doing(Sample, mode) with
        {
            Vehicle = Sample.Vehicle with { MassKg = double.NaN },
        };
        var hold = HoldCase.Of(rig);

        Assert.Null(hold.Attainable);
        Assert.True(double.IsNaN(hold.MotorCurrentA) && double.IsNaN(hold.MotorSpeedRadPerS));
        // Nothing is fed: the pack carries what the controller draws itself.
        Assert.False(double.IsNaN(hold.BusVoltageV));
    }

    [Fact]
    public void A_creeping_motor_is_heated_by_its_winding_its_brushes_and_its_friction()
    {
        var hold = HoldCase.Of(Doing(Sample, HoldMode.DragBrake));
        var (i, speed) = (hold.MotorCurrentA, hold.MotorSpeedRadPerS);
        var kt = 60 / (2 * Math.PI * 1600);
        var friction = kt * Sample.Motor.NoLoad.CurrentAt(speed) * speed;

        Assert.True(i > 0 && speed > 0);
        Assert.Equal((i * i * 0.09) + (0.3 * i) + friction, hold.MotorHeatW, 1e-9);
    }

    [Fact]
    public void A_drag_brake_too_weak_for_its_brushes_is_held_by_the_friction_that_grows_with_speed()
    {
        var motor = Sample.Motor;
        var slope = motor.NoLoad.SlopeAPerRadPerS;
        Assert.True(slope > 0 && motor.BrushDropV > 0);
        var holding = 0.5 * slope * motor.BrushDropV;

        var (current, speed) = HoldCase.DragBrake(Sample, holding);

        // Under the brushes' drop nothing flows: q = kt·s·ω.
        Assert.Equal(0, current);
        Assert.Equal(holding, motor.TorqueConstantNmPerA * slope * speed, 1e-12);
        Assert.True(motor.TorqueConstantNmPerA * speed < motor.BrushDropV);
    }
}
