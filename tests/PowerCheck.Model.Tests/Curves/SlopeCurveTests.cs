using PowerCheck.Model.Curves;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Curves;

/// <summary>Currents of the steady climb over the slope.</summary>
public sealed class SlopeCurveTests
{
    private const double DegreeRad = Math.PI / 180;

    private static RigLabel Climbing(double degrees) =>
        SampleRig.Brushless with
        {
            Course = new() { ClimbSlopeRad = degrees * DegreeRad },
        };

    private static SlopeCurve Curve(RigLabel label) => SlopeCurve.Of(SampleRig.Of(label));

    [Theory]
    [InlineData(17.3)]
    [InlineData(40)]
    [InlineData(48.25)]
    public void At_the_slope_asked_for_it_is_the_climb(double degrees)
    {
        var climb = SampleRig.Inspect(Climbing(degrees)).Cases[LoadCaseName.Climb];

        var point = Assert.Single(
            Curve(Climbing(degrees)).Points,
            p => p.SlopeRad == degrees * DegreeRad
        );

        Assert.Equal(climb.MotorCurrentA, point.MotorA);
        Assert.Equal(climb.BatteryCurrentA, point.BatteryA);
    }

    [Fact]
    [Trait("speed", "slow")]
    public void Random_rigs_agree_with_their_climb()
    {
        var seen = 0;
        for (var n = 1; n <= 150; n++)
        {
            var rig = SampleRig.Of(RandomRig.Of(n));
            var climb = CaseRunner.Run(rig)[LoadCaseName.Climb];
            var point = SlopeCurve.Of(rig).Points.First(p => p.SlopeRad == rig.Road.SlopeRad);
            var attained = climb.Attainable != false;
            seen += attained && !double.IsNaN(climb.BatteryCurrentA) ? 1 : 0;
            Assert.Equal(attained ? climb.MotorCurrentA : double.NaN, point.MotorA);
            Assert.Equal(attained ? climb.BatteryCurrentA : double.NaN, point.BatteryA);
        }

        Assert.InRange(seen, 50, 149);
    }

    // Worked by hand: F = m·g·(sin θ + c·cos θ) over the wheel's radius, through gearing and efficiency, over
    // kt = 60/(2π·KV), and the no-load current at the motor's speed on top. R. Hibbeler, Statics, chapter on friction; the
    // torque constant as every data sheet of a motor has it.
    [Theory]
    [InlineData(0)]
    [InlineData(12)]
    [InlineData(37)]
    public void Motor_current_is_weight_over_torque_constant(int degrees)
    {
        var label = Climbing(40) with
        {
            Vehicle = SampleRig.Brushless.Vehicle with
            {
                MassKg = 3,
                TireDiameterM = 0.12,
                TireDiameterPrinted = false,
                Drivetrain = new() { OverallRatio = 40, Efficiency = 0.7 },
            },
            Course = new()
            {
                ClimbSlopeRad = 40 * DegreeRad,
                RollingResistanceCoefficient = 0.05,
                CreepSpeedMPerS = 0.3,
            },
        };
        var rig = SampleRig.Of(label);
        var theta = degrees * DegreeRad;
        var force = 3 * 9.80665 * (Math.Sin(theta) + (0.05 * Math.Cos(theta)));
        var shaftNm = force * rig.Vehicle.RadiusM / (40 * 0.7);
        var noLoadA = rig.Motor.NoLoad.CurrentAt(0.3 / rig.Vehicle.RadiusM * 40);
        var byHand = (shaftNm / (60 / (2 * Math.PI * 3300))) + noLoadA;

        var point = Curve(label).Points.First(p => Math.Abs(p.SlopeRad - theta) < 1e-12);

        Assert.Equal(byHand, point.MotorA, 9);
    }

    [Fact]
    public void A_heavier_rig_takes_more_at_every_slope()
    {
        var light = Curve(Climbing(40));
        var heavy = Curve(
            Climbing(40) with
            {
                Vehicle = SampleRig.Brushless.Vehicle with { MassKg = 4.4 },
            }
        );

        Assert.All(
            light
                .Points.Zip(heavy.Points)
                .Where(pair => double.IsFinite(pair.First.MotorA + pair.Second.MotorA)),
            pair =>
            {
                Assert.Equal(pair.First.SlopeRad, pair.Second.SlopeRad);
                Assert.True(pair.Second.MotorA > pair.First.MotorA);
                Assert.True(pair.Second.BatteryA > pair.First.BatteryA);
            }
        );
    }

    [Theory]
    [InlineData(40, 0.8, 60)]
    [InlineData(55, 0.8, 65)]
    [InlineData(40, 3, 77)]
    [InlineData(85, 3, 89)]
    public void Slopes_go_as_far_as_is_asked_after(double climb, double friction, int end)
    {
        var curve = Curve(
            SampleRig.Brushless with
            {
                Course = new()
                {
                    ClimbSlopeRad = climb * DegreeRad,
                    FrictionCoefficient = friction,
                },
            }
        );

        Assert.Equal(0, curve.Points[0].SlopeRad);
        Assert.Equal(end, curve.Points[^1].SlopeRad / DegreeRad, 9);
        Assert.All(
            curve.Points.Zip(curve.Points.Skip(1)),
            pair =>
                Assert.InRange(
                    pair.Second.SlopeRad - pair.First.SlopeRad,
                    1e-12,
                    1.000001 * DegreeRad
                )
        );
        Assert.Contains(curve.Points, point => point.SlopeRad == curve.SlipSlopeRad);
    }

    [Fact]
    public void Past_the_slope_at_which_the_tires_let_go_there_is_nothing()
    {
        var curve = Curve(Climbing(40));

        Assert.Equal(Math.Atan(1.2), curve.SlipSlopeRad, 2);
        Assert.Equal(Obstacle.Traction, curve.EndsBy);
        Assert.Equal(curve.SlipSlopeRad, curve.AttainableRad, 6);
        Assert.All(
            curve.Points,
            point => Assert.Equal(point.SlopeRad > curve.SlipSlopeRad, double.IsNaN(point.MotorA))
        );
    }

    [Fact]
    public void A_controller_that_limits_its_current_ends_it_at_that_current()
    {
        var curve = Curve(
            Climbing(40) with
            {
                Controller = SampleRig.Brushless.Controller with { CurrentLimitA = 9 },
            }
        );

        Assert.Equal(Obstacle.CurrentLimit, curve.EndsBy);
        var last = curve.Points.Last(point => double.IsFinite(point.MotorA));
        Assert.Equal(curve.AttainableRad, last.SlopeRad);
        Assert.Equal(9, last.MotorA, 6);
    }

    [Fact]
    public void Without_a_sensor_there_is_no_steady_climb_at_all()
    {
        var curve = Curve(
            Climbing(40) with
            {
                Motor = SampleRig.Brushless.Motor with { Sensored = false },
            }
        );

        Assert.Equal(Obstacle.NoSensor, curve.EndsBy);
        Assert.True(double.IsNaN(curve.AttainableRad));
        Assert.All(curve.Points, point => Assert.True(double.IsNaN(point.MotorA)));
    }

    [Fact]
    public void Without_a_speed_constant_nothing_is_known()
    {
        var curve = Curve(
            Climbing(40) with
            {
                Motor = new() { Kind = Model.Motors.MotorKind.Brushless, Sensored = true },
            }
        );

        Assert.True(double.IsNaN(curve.AttainableRad));
        Assert.All(curve.Points, point => Assert.True(double.IsNaN(point.MotorA + point.BatteryA)));
    }
}
