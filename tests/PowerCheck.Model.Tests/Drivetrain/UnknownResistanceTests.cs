using PowerCheck.Model.Accessories;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>What can be said of the currents of a motor whose resistance is not known: the most that they can be (M13).</summary>
public sealed class UnknownResistanceTests
{
    private static readonly Rig Known = Two(
        SampleRig.Of(
            SampleRig.Brushed with
            {
                Accessories =
                [
                    new() { WorkingCurrentA = 1 },
                    new() { WorkingCurrentA = 1, Supply = AccessorySupply.Battery },
                ],
            }
        )
    );

    private static readonly Rig Blind = Known with
    {
        Motor = Known.Motor with { ResistanceOhm = double.NaN },
    };

    private static Rig Two(Rig rig) => rig with { Vehicle = rig.Vehicle with { MotorCount = 2 } };

    // Steady state of a motor that loses nothing in its winding: i = q/kt + i_s + s·ω and E = i·R_loop + kt·ω + v_b.
    private static double MostA(Rig rig, double shaftNm, double openV)
    {
        var (motor, loop) = (rig.Motor, rig.LoopOhm);
        var standing = (shaftNm / motor.TorqueConstantNmPerA) + motor.NoLoad.StandstillA;
        var slope = motor.NoLoad.SlopeAPerRadPerS;
        var speed =
            (openV - motor.BrushDropV - (standing * loop))
            / (motor.TorqueConstantNmPerA + (slope * loop));
        return standing + (slope * speed);
    }

    [Fact]
    public void A_punch_takes_its_torque_with_the_friction_of_the_highest_speed()
    {
        const double Charge = 0.5;
        var source = Blind.SourceAt(Charge, false);
        var shaft = WheelLoad.Slip(Blind, Blind.Vehicle.Gearing.LowestRatio, 0).ShaftNm;
        var current = MostA(Blind, shaft, source.OpenCircuitV);
        var auxiliary = Blind.Auxiliary;
        Assert.True(auxiliary.CurrentA > 0.1 && auxiliary.PowerW > 0);
        var battery = (2 * current) + auxiliary.CurrentA + (auxiliary.PowerW / source.OpenCircuitV);
        var bus = source.OpenCircuitV - (source.ResistanceOhm * battery);

        var punch = FullThrottleCases.Punch(Blind, Charge);

        Assert.Equal(current, punch.MotorCurrentA, 1e-9);
        Assert.Equal(battery, punch.BatteryCurrentA, 1e-9);
        Assert.Equal(battery, punch.BatteryRmsCurrentA, 1e-9);
        Assert.Equal(bus, punch.BusVoltageV, 1e-9);
        Assert.Equal(1, punch.DutyRatio);
        Assert.Equal(
            (current * current * Blind.Controller.OnResistanceOhm)
                + Blind.ReceiverSupply.HeatW(bus, Blind.ReceiverSupply.MeanOutputA),
            punch.ControllerHeatW,
            1e-9
        );
        Assert.True(double.IsNaN(punch.MotorSpeedRadPerS) && double.IsNaN(punch.MotorHeatW));
        Assert.True(punch.UpperBound);
        Assert.True(punch.MotorCurrentA >= FullThrottleCases.Punch(Known, Charge).MotorCurrentA);
    }

    [Fact]
    public void A_torque_of_a_resistance_not_known_counts_as_reached()
    {
        var bus = FullThrottleCases.Point(Blind, Blind.SourceAt(1, false), 0.01).Bus;

        Assert.Equal((true, false), (bus.Reached, bus.PowerExceeded));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(2.0)]
    public void A_punch_takes_no_more_than_the_controllers_limit(double share)
    {
        var source = Blind.SourceAt(1, false);
        var shaft = WheelLoad.Slip(Blind, Blind.Vehicle.Gearing.LowestRatio, 0).ShaftNm;
        var asked = MostA(Blind, shaft, source.OpenCircuitV);
        var limited = Blind with
        {
            Controller = Blind.Controller with { CurrentLimitA = share * asked },
        };

        Assert.Equal(
            Math.Min(1, share) * asked,
            FullThrottleCases.Punch(limited, 1).MotorCurrentA,
            1e-9
        );
    }

    [Fact]
    public void A_torque_that_no_speed_is_left_for_has_the_friction_of_standing_still()
    {
        var heavy = Blind with { Road = Blind.Road with { Friction = 1e5 } };
        var shaft = WheelLoad.Slip(heavy, heavy.Vehicle.Gearing.LowestRatio, 0).ShaftNm;

        Assert.Equal(
            (shaft / heavy.Motor.TorqueConstantNmPerA) + heavy.Motor.NoLoad.StandstillA,
            FullThrottleCases.Punch(heavy, 1).MotorCurrentA,
            1e-6
        );
    }

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(3.0)]
    public void A_jam_takes_what_the_driver_feeds_or_the_controllers_limit(double limit)
    {
        const double SlipA = 5;
        var rig = Blind with { Controller = Blind.Controller with { CurrentLimitA = limit } };
        var fed = rig.Road.JamSlipFactor * SlipA;

        var jam = LockedCases.Jam(rig, SlipA);

        Assert.Equal(Math.Min(fed, limit), jam.MotorCurrentA, 1e-12);
        Assert.True(jam.UpperBound);
        Assert.True(jam.Attainable);
        Assert.Equal(limit < fed ? Obstacle.CurrentLimit : null, jam.Obstacle);
        Assert.False(LockedCases.Jam(Known, SlipA).UpperBound);
    }

    [Fact]
    public void A_stall_is_not_known()
    {
        var stall = LockedCases.Stall(Blind);

        Assert.True(double.IsNaN(stall.MotorCurrentA));
        Assert.Null(stall.Attainable);
        Assert.True(LockedCases.Stall(Known).Attainable);
    }

    [Fact]
    public void A_drag_brake_carries_no_more_than_its_torque_asks_for_at_a_speed_not_known()
    {
        var (current, speed) = HoldCase.DragBrake(Blind, 0.05);

        Assert.Equal(0.05 / Blind.Motor.TorqueConstantNmPerA, current, 1e-12);
        Assert.True(double.IsNaN(speed));
    }

    [Fact]
    public void A_climb_past_the_tires_stays_unknown_where_the_bus_is()
    {
        var steep = Known with { Road = Known.Road with { SlopeRad = 1.4 } };
        var unknown = steep with { Motor = Blind.Motor };

        Assert.Equal(
            (false, Obstacle.Traction),
            (SteadyCases.Climb(steep).Attainable, SteadyCases.Climb(steep).Obstacle)
        );
        Assert.Null(SteadyCases.Climb(unknown).Attainable);
    }
}
