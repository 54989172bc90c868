using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>
/// What the cells give is work at the motor shafts, heat in pack, leads, controllers and motors, and what the accessories
/// take: in every load case of any rig, with one motor or two, fast switching or slow, diodes or not.
/// </summary>
public sealed class EnergyLaws
{
    public static TheoryData<LoadCaseName> Names => [.. Enum.GetValues<LoadCaseName>()];

    [Theory]
    [MemberData(nameof(Names))]
    public void Power_from_the_cells_is_work_and_heat(LoadCaseName name) =>
        Law.Holds(
            400,
            0.6,
            label =>
            {
                var rig = SampleRig.Of(label);
                var load = CaseRunner.Run(rig)[name];
                var balance = new Balance(rig, load, Source(rig, name));
                return !OnePoint(load) || balance.Starved
                    ? null
                    : Law.Same($"{name}, duty {load.DutyRatio}", balance.GivenW, balance.TakenW);
            }
        );

    [Fact]
    public void A_drag_brake_turns_the_weights_work_into_heat() =>
        Law.Holds(
            400,
            0.2,
            label =>
            {
                var rig = SampleRig.Of(label);
                var hold = HoldCase.Of(rig);
                if (rig.Controller.Hold != HoldMode.DragBrake || hold.MotorCurrentA <= 0)
                {
                    return null;
                }

                // What the slope turns goes into winding, brushes, switches, leads and the motor's own friction.
                var friction = rig.Motor.TorqueConstantNmPerA * rig.Motor.NoLoad.StandstillA;
                var torque = WheelLoad.HoldingNm(rig, rig.ClimbSlopeRad) + friction;
                var loop = hold.MotorCurrentA * hold.MotorCurrentA * rig.LoopOhm;
                return Law.Same("work", torque * hold.MotorSpeedRadPerS, hold.MotorHeatW + loop);
            }
        );

    [Fact]
    public void What_a_motor_turns_reaches_the_wheels_less_the_gears_loss() =>
        Law.Holds(
            400,
            0.9,
            label =>
            {
                var rig = SampleRig.Of(label);
                var climb = SteadyCases.Climb(rig);
                var speed = climb.MotorSpeedRadPerS;
                var shafts =
                    rig.Vehicle.MotorCount * rig.Motor.TorqueOf(climb.MotorCurrentA, speed) * speed;
                var wheels = climb.WheelTorqueNm * climb.RoadSpeedMPerS / rig.Vehicle.RadiusM;
                return Law.Same("work", rig.Vehicle.Gearing.Efficiency * shafts, wheels);
            }
        );

    // Where a steady point is out of reach, speed and current shown are those that it would need: they do not go together.
    // Likewise a jam held to a limit so close under full throttle that the edges' loss leaves no duty for it.
    private static bool OnePoint(LoadCase load) =>
        load.DutyRatio < 1
        || load.Name is LoadCaseName.Punch or LoadCaseName.Top
        || (
            load.Name is LoadCaseName.Jam or LoadCaseName.Stall
            && load.Obstacle != Obstacle.CurrentLimit
        );

    private static Source Source(Rig rig, LoadCaseName name) =>
        name switch
        {
            LoadCaseName.Punch => rig.SourceAt(0.5, false),
            LoadCaseName.Jam or LoadCaseName.Stall => rig.SourceAt(1, false),
            LoadCaseName.Top => rig.SourceAt(1, true),
            _ => rig.SourceAt(0.5, true),
        };
}
