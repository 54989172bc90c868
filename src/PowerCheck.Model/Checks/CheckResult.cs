using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Checks;

/// <summary>Everything that the check of one rig found.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Confidence">How sure the verdict is; null where spread was not asked for.</param>
/// <param name="Summary">The deciding figure and the condition in one plain sentence.</param>
/// <param name="Findings">Every finding: deciding first, then by outcome, then the closest to its limit first.</param>
/// <param name="LoadCases">The eight load cases.</param>
/// <param name="Temperatures">How warm each part gets.</param>
/// <param name="Endurance">How long the pack lasts.</param>
/// <param name="ReceiverSupply">What the receiver supply has to give.</param>
/// <param name="Drivetrain">What the gearing makes of the motor.</param>
/// <param name="Wiring">What the leads add and stand.</param>
/// <param name="Assumptions">What was filled in for what the caller left out.</param>
/// <param name="Spread">How the spread of the inputs was carried to the limits.</param>
/// <param name="Inputs">The figures that may be off, and by how much.</param>
public sealed record CheckResult(
    Verdict Verdict,
    Confidence? Confidence,
    string Summary,
    IReadOnlyList<Finding> Findings,
    LoadCases LoadCases,
    TemperatureReport Temperatures,
    EnduranceReport Endurance,
    ReceiverSupplyReport ReceiverSupply,
    DrivetrainReport Drivetrain,
    WiringReport Wiring,
    IReadOnlyList<Assumption> Assumptions,
    SpreadReport Spread,
    IReadOnlyList<Input> Inputs
);

/// <summary>How the spread of the inputs was carried to the limits.</summary>
/// <param name="Asked">How it was asked for.</param>
/// <param name="Used">How it was done.</param>
/// <param name="Rigs">How many rigs were computed for it.</param>
public sealed record SpreadReport(SpreadMethod Asked, SpreadMethod Used, int Rigs);
