using PowerCheck.Circuit.Electrical;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Referee.Tests.Electrical;

/// <summary>Rigs at the edge of what they can do, where a formula is most easily wrong.</summary>
internal static class HardRigs
{
    /// <summary>What is hard about a rig, by the figures of the rig and the circuits; the runaway is the check's.</summary>
    public static IEnumerable<string> Of(RefereedCases rig)
    {
        var climb = rig.Circuits[PlainCase.Climb];
        if (!climb.Attained)
        {
            yield return "the pack cannot carry the climb";
        }

        if (climb.MotorA > rig.Rig.Controller.CurrentLimitA)
        {
            yield return "the climb asks for more than the current limit";
        }

        if (rig.Circuits[PlainCase.Punch].MotorA >= rig.Rig.Controller.CurrentLimitA * (1 - 1e-9))
        {
            yield return "the punch is held to the current limit";
        }

        var physics = new RigPhysics(rig.Rig);
        if (physics.SlipSlopeRad < rig.Rig.Course.ClimbSlopeDegrees * Math.PI / 180)
        {
            yield return "the tires let go on the climb";
        }

        if (
            rig.Check.Temperatures.MotorWinding.Cases.Any(one =>
                one.Case == LoadCaseName.Climb && double.IsPositiveInfinity(one.SettledC)
            )
        )
        {
            yield return "the climb ends in runaway";
        }
    }
}
