using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes load cases.</summary>
internal static class LoadCaseWriter
{
    public static LoadCasesAnswer Write(LoadCases cases) =>
        new()
        {
            Level = Write(cases[LoadCaseName.Level]),
            Climb = Write(cases[LoadCaseName.Climb]),
            Hold = Write(cases[LoadCaseName.Hold]),
            Slip = Write(cases[LoadCaseName.Slip]),
            Punch = Write(cases[LoadCaseName.Punch]),
            Jam = Write(cases[LoadCaseName.Jam]),
            Stall = Write(cases[LoadCaseName.Stall]),
            Top = Write(cases[LoadCaseName.Top]),
        };

    /// <summary>The word of an obstacle; null for none.</summary>
    public static string? Word(Obstacle? obstacle) =>
        obstacle switch
        {
            null => null,
            Obstacle.BatteryPower => "battery-power",
            Obstacle.Cutoff => "cutoff",
            Obstacle.Voltage => "voltage",
            Obstacle.CurrentLimit => "current-limit",
            Obstacle.Traction => "traction",
            Obstacle.SpeedLimit => "speed-limit",
            Obstacle.NoSensor => "no-sensor",
            _ => throw new ArgumentOutOfRangeException(nameof(obstacle)),
        };

    private static LoadCaseAnswer Write(LoadCase one) =>
        new()
        {
            MotorCurrentA = Shown.Figure(one.MotorCurrentA),
            MotorRmsCurrentA = Shown.Figure(one.MotorRmsCurrentA),
            BatteryCurrentA = Shown.Figure(one.BatteryCurrentA),
            BatteryRmsCurrentA = Shown.Figure(one.BatteryRmsCurrentA),
            BusVoltageV = Shown.Figure(one.BusVoltageV),
            MotorVoltageV = Shown.Figure(one.MotorVoltageV),
            DutyRatio = Shown.Figure(one.DutyRatio),
            MotorSpeedRpm = Shown.Figure(one.MotorSpeedRadPerS, Unit.Rpm),
            RoadSpeedMPerS = Shown.Figure(one.RoadSpeedMPerS),
            WheelTorqueNm = Shown.Figure(one.WheelTorqueNm),
            MotorHeatW = Shown.Figure(one.MotorHeatW),
            ControllerHeatW = Shown.Figure(one.ControllerHeatW),
            BatteryHeatW = Shown.Figure(one.BatteryHeatW),
            Attainable = one.Attainable,
            Obstacle = Word(one.Obstacle),
            CreepBackMPerS = Shown.Figure(one.CreepBackMPerS),
            ProspectiveMotorCurrentA = Shown.Figure(one.ProspectiveCurrentA),
        };
}
