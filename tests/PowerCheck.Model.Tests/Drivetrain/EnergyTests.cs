using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>
/// What the cells give is work at the motor shafts and heat in pack, leads, controllers and motors, and what the
/// accessories take: in every load case of random rigs whose switching is fast enough for ripple not to count.
/// </summary>
public sealed class EnergyTests
{
    public static TheoryData<LoadCaseName> Names => [.. Enum.GetValues<LoadCaseName>()];

    [Theory]
    [MemberData(nameof(Names))]
    public void Power_from_the_cells_is_work_and_heat(LoadCaseName name) =>
        Balance(name, static rig => rig);

    [Theory]
    [Trait("speed", "slow")]
    [MemberData(nameof(Names))]
    public void Two_motors_with_a_controller_each_share_the_work_and_both_heat(LoadCaseName name) =>
        Balance(name, static rig => rig with { Vehicle = rig.Vehicle with { MotorCount = 2 } });

    private static void Balance(LoadCaseName name, Func<Rig, Rig> change)
    {
        var seen = 0;
        foreach (
            var rig in Enumerable.Range(1, 400).Select(n => change(SampleRig.Of(RandomRig.Of(n))))
        )
        {
            var load = CaseRunner.Run(rig)[name];
            if (
                rig.Controller.PwmFrequencyHz < ControllerDefaults.SmoothFromHz
                || !Steady(load)
                || Collapsed(Source(rig, name), load)
            )
            {
                continue;
            }

            seen++;
            var source = Source(rig, name);
            var given = source.OpenCircuitV * load.BatteryCurrentA;
            Assert.True(
                Math.Abs(given - Taken(rig, load, source)) <= 1e-9 * given,
                $"{name}: {given:R} W given, {Taken(rig, load, source):R} W taken, duty {load.DutyRatio}"
            );
        }

        Assert.True(seen > 100, $"only {seen} rigs");
    }

    [Fact]
    public void A_drag_brake_turns_the_weights_work_into_heat()
    {
        foreach (var rig in Enumerable.Range(1, 100).Select(n => SampleRig.Of(RandomRig.Of(n))))
        {
            var hold = HoldCase.Of(rig);
            if (rig.Controller.Hold != HoldMode.DragBrake || hold.MotorCurrentA <= 0)
            {
                continue;
            }

            // Holding torque times speed goes into winding, brushes, switches and leads; friction is on top in the motor.
            var work = WheelLoad.HoldingNm(rig, rig.ClimbSlopeRad) * hold.MotorSpeedRadPerS;
            var loop = hold.MotorCurrentA * hold.MotorCurrentA * rig.LoopOhm;
            Assert.Equal(
                work,
                hold.MotorHeatW - rig.Motor.SpinHeatW(hold.MotorSpeedRadPerS) + loop,
                1e-9 * work
            );
        }
    }

    [Fact]
    public void What_a_motor_turns_reaches_the_wheels_less_the_gears_loss()
    {
        var rig = SampleRig.Of(SampleRig.Brushless);
        var climb = SteadyCases.Climb(rig);
        var shaft =
            rig.Motor.TorqueOf(climb.MotorCurrentA, climb.MotorSpeedRadPerS)
            * climb.MotorSpeedRadPerS;
        Assert.Equal(
            0.75 * shaft,
            climb.WheelTorqueNm * climb.RoadSpeedMPerS / rig.Vehicle.RadiusM,
            1e-9
        );
    }

    // Not where the point is out of reach: then speed and current do not go together.
    private static bool Steady(LoadCase load) =>
        load.DutyRatio < 1
        || load.Name
            is LoadCaseName.Punch
                or LoadCaseName.Jam
                or LoadCaseName.Stall
                or LoadCaseName.Top;

    // A pack that cannot even feed the accessories besides has no operating point at all.
    private static bool Collapsed(Source source, LoadCase load) =>
        load.BusVoltageV < source.OpenCircuitV / 10;

    private static Source Source(Rig rig, LoadCaseName name) =>
        name switch
        {
            LoadCaseName.Punch => rig.SourceAt(0.5, false),
            LoadCaseName.Jam or LoadCaseName.Stall => rig.SourceAt(1, false),
            LoadCaseName.Top => rig.SourceAt(1, true),
            _ => rig.SourceAt(0.5, true),
        };

    private static double Taken(Rig rig, LoadCase load, Source source)
    {
        var current = load.BatteryCurrentA;
        var supply = rig.ReceiverSupply;
        var auxiliary = (rig.Auxiliary.CurrentA * load.BusVoltageV) + rig.Auxiliary.PowerW;
        var leads = source.ResistanceOhm - (load.BatteryHeatW / (current * current));
        var pack = load.BatteryHeatW + (leads * current * current);
        if (load.Name == LoadCaseName.Hold && rig.Controller.Hold != HoldMode.Active)
        {
            return pack + auxiliary;
        }

        var i = load.MotorCurrentA;
        var shaft = rig.Motor.TorqueOf(i, load.MotorSpeedRadPerS) * load.MotorSpeedRadPerS;
        var controller = load.ControllerHeatW - supply.HeatW(load.BusVoltageV, supply.MeanOutputA);
        var motor = load.MotorHeatW + (i * i * rig.Leads.MotorOhm);
        return pack + auxiliary + (rig.Vehicle.MotorCount * (shaft + motor + controller));
    }
}
