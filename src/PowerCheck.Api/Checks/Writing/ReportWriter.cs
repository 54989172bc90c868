using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes the reports on run time, receiver supply, drivetrain and wiring.</summary>
internal static class ReportWriter
{
    public static EnduranceAnswer Write(EnduranceReport report) =>
        new()
        {
            Minutes = Shown.Figure(report.RunTimeS, Unit.Minute),
            EndsBy = report.EndsBy is { } end ? Words.Of(end) : null,
            MeanBatteryCurrentA = Shown.Figure(report.MeanBatteryCurrentA),
            RmsBatteryCurrentA = Shown.Figure(report.RmsBatteryCurrentA),
            RmsMotorCurrentA = Shown.Figure(report.RmsMotorCurrentA),
            EnergyWh = Shown.Figure(report.EnergyJ, Unit.WattHour),
        };

    public static ReceiverSupplyAnswer Write(ReceiverSupplyReport report) =>
        new()
        {
            IdleCurrentA = Shown.Figure(report.IdleCurrentA),
            WorkingCurrentA = Shown.Figure(report.WorkingCurrentA),
            JammedCurrentA = Shown.Figure(report.JammedCurrentA),
            ContinuousCurrentA = Shown.Figure(report.ContinuousCurrentA),
            PeakCurrentA = Shown.Figure(report.PeakCurrentA),
            HeatW = Shown.Figure(report.HeatW),
            MaxHeatW = Shown.Figure(report.MaxHeatW),
            LowestBusV = Shown.Figure(report.LowestBusV),
            LowestOutputV = Shown.Figure(report.LowestOutputV),
        };

    public static DrivetrainAnswer Write(DrivetrainReport report) =>
        new()
        {
            OverallRatio = Shown.Figure(report.OverallRatio),
            TopSpeedMPerS = Shown.Figure(report.TopSpeedMPerS),
            TorqueReserve = Shown.Figure(report.TorqueReserve),
            LimitedBy = LoadCaseWriter.Word(report.LimitedBy),
            SlipSlopeDegrees = Shown.Figure(report.SlipSlopeRad, Unit.Degree),
            MeshCenterMm = Shown.Figure(report.MeshCenterM, Unit.Millimetre),
            Gears = [.. report.Gears.Select(Write)],
        };

    public static WiringAnswer Write(WiringReport report) =>
        new()
        {
            BatteryLeadMilliohm = Shown.Figure(report.BatteryLeadOhm, Unit.Milliohm),
            MotorLeadMilliohm = Shown.Figure(report.MotorLeadOhm, Unit.Milliohm),
            BatteryLeadLimitA = Shown.Figure(report.BatteryLeadLimitA),
            MotorLeadLimitA = Shown.Figure(report.MotorLeadLimitA),
            LeadDamageCurrentA = Shown.Figure(report.LeadDamageCurrentA),
            LeadMeltingCurrentA = Shown.Figure(report.LeadMeltingCurrentA),
            FaultCurrentA = Shown.Figure(report.FaultCurrentA),
        };

    private static GearAnswer Write(GearReport gear) =>
        new()
        {
            OverallRatio = Shown.Figure(gear.OverallRatio),
            TopSpeedMPerS = Shown.Figure(gear.TopSpeedMPerS),
            ClimbCurrentA = Shown.Figure(gear.ClimbCurrentA),
            TorqueReserve = Shown.Figure(gear.TorqueReserve),
        };
}
