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
);
