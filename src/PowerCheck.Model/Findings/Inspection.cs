using PowerCheck.Model.Accessories;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Findings;

/// <summary>Everything that was computed of a rig, for the findings to look at.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Course">The course.</param>
/// <param name="Cases">The load cases.</param>
/// <param name="Result">Run time and temperatures.</param>
/// <param name="Drivetrain">What the gearing makes of the motor.</param>
/// <param name="ReceiverSupply">What the receiver supply has to give.</param>
/// <param name="Wiring">What the leads stand.</param>
public sealed record Inspection(
    Rig Rig,
    Course Course,
    LoadCases Cases,
    CourseResult Result,
    DrivetrainReport Drivetrain,
    ReceiverSupplyReport ReceiverSupply,
    WiringReport Wiring
)
{
    /// <summary>Everything that is computed of a completed rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    public static Inspection Of(Rig rig, Course course)
    {
        var cases = CaseRunner.Run(rig);
        var drivetrain = DrivetrainRunner.Run(rig);
        var result = CourseRunner.Run(rig, course, cases);
        return new(
            rig,
            course,
            cases,
            result,
            drivetrain,
            ReceiverSupplyRunner.Run(rig.ReceiverSupply, BusVoltages(rig, cases)),
            WiringRunner.Run(rig.Leads, rig.Battery.OpenCircuitV(1), rig.Battery.ShortResistanceOhm)
        );
    }

    private static BusVoltages BusVoltages(Rig rig, LoadCases cases)
    {
        var lowest = Math.Min(
            cases.PunchAtReserve.BusVoltageV,
            Math.Min(cases[LoadCaseName.Jam].BusVoltageV, cases[LoadCaseName.Climb].BusVoltageV)
        );
        return new(cases[LoadCaseName.Level].BusVoltageV, lowest);
    }

    /// <summary>
    /// A battery current or, where the duty is not known, the most that it can be if even that holds; else not known.
    /// </summary>
    /// <param name="batteryA">The battery current [A]; NaN when not known.</param>
    /// <param name="motorA">The motor current that it comes from [A].</param>
    /// <param name="limitA">The limit [A].</param>
    public double BatteryA(double batteryA, double motorA, double limitA)
    {
        if (!double.IsNaN(batteryA))
        {
            return batteryA;
        }

        var most = MostBatteryA(motorA);
        return Thresholds.Outcome(most / limitA) == Outcome.Holds ? most : double.NaN;
    }

    /// <summary>The most battery current that a motor current can come to [A]: fully on, magnet at its limit.</summary>
    /// <param name="motorA">Motor current, magnet cool [A].</param>
    public double MostBatteryA(double motorA)
    {
        var motor = Rig.Motor;
        var weak = motor.TorqueConstantNmPerA / motor.TorqueConstantAt(motor.Heat.MagnetLimitC);
        return (Rig.Vehicle.MotorCount * motorA * weak)
            + Rig.Auxiliary.CurrentA
            + (Rig.Auxiliary.PowerW / Rig.CutoffV);
    }
}
