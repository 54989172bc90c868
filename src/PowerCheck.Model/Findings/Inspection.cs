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
    /// <summary>
    /// Battery current of a case or, where the duty is not known, the most that it can be [A]: that of the motors.
    /// </summary>
    /// <param name="load">The case.</param>
    public double MostBatteryA(LoadCase load) =>
        double.IsNaN(load.BatteryRmsCurrentA)
            ? MostA(load.MotorRmsCurrentA)
            : load.BatteryRmsCurrentA;

    /// <summary>Root mean square battery current over the course or, where it is not known, the most that it can be [A].</summary>
    public double MostCourseBatteryA =>
        double.IsNaN(Result.Endurance.RmsBatteryCurrentA)
            ? MostA(Result.Endurance.RmsMotorCurrentA)
            : Result.Endurance.RmsBatteryCurrentA;

    private double MostA(double motorA) =>
        (Rig.Vehicle.MotorCount * motorA)
        + Rig.Auxiliary.CurrentA
        + (Rig.Auxiliary.PowerW / Rig.CutoffV);
}
