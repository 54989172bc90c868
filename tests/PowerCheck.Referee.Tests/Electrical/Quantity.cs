using PowerCheck.Circuit.Electrical;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Referee.Tests.Electrical;

/// <summary>A figure that check and circuits both have.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Least">Size under which a deviation is no longer taken relative to the figure, in its unit.</param>
/// <param name="OfCheck">The check's figure.</param>
/// <param name="OfCircuit">The circuits' figure.</param>
internal sealed record Quantity(
    string Name,
    double Least,
    Func<LoadCase, double> OfCheck,
    Func<CasePoint, double> OfCircuit
)
{
    public static readonly IReadOnlyList<Quantity> All =
    [
        new("motor current", 0.1, one => one.MotorCurrentA, one => one.MotorA),
        new("motor rms current", 0.1, one => one.MotorRmsCurrentA, one => one.MotorRmsA),
        new("battery current", 0.1, one => one.BatteryCurrentA, one => one.BatteryA),
        new("battery rms current", 0.1, one => one.BatteryRmsCurrentA, one => one.BatteryRmsA),
        new("bus voltage", 0.1, one => one.BusVoltageV, one => one.BusV),
        new("motor voltage", 0.1, one => one.MotorVoltageV, one => one.MotorV),
        new("duty", 0.01, one => one.DutyRatio, one => one.Duty),
        new("motor speed", 1, one => one.MotorSpeedRadPerS, one => one.SpeedRadPerS),
        new("road speed", 0.01, one => one.RoadSpeedMPerS, one => one.RoadMPerS),
        new("creep-back speed", 0.01, one => one.CreepBackMPerS, one => one.CreepBackMPerS),
        new("prospective current", 0.1, one => one.ProspectiveCurrentA, one => one.ProspectiveA),
        new("wheel torque", 0.1, one => one.WheelTorqueNm, one => one.WheelNm),
        new("motor heat", 0.1, one => one.MotorHeatW, one => one.MotorW),
        new("controller heat", 0.1, one => one.ControllerHeatW, one => one.ControllerW),
        new("battery heat", 0.1, one => one.BatteryHeatW, one => one.BatteryW),
    ];

    /// <summary>Whether either side tells a figure; where only one does, they are not a number apart.</summary>
    public bool Told(LoadCase check, CasePoint circuit) =>
        !double.IsNaN(OfCheck(check)) || !double.IsNaN(OfCircuit(circuit));

    /// <summary>How far the figures are apart [%].</summary>
    public double DeviationPercent(LoadCase check, CasePoint circuit)
    {
        var (one, other) = (OfCheck(check), OfCircuit(circuit));
        return 100 * Math.Abs(one - other) / Math.Max(Least, Math.Abs(other));
    }
}
