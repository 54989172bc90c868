using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Api.Checks.Writing;

/// <summary>Writes temperatures.</summary>
internal static class TemperatureWriter
{
    public static TemperaturesAnswer Write(TemperatureReport report) =>
        new()
        {
            MotorWinding = Write(report.MotorWinding),
            MotorMagnet = Write(report.MotorMagnet),
            MotorCase = Write(report.MotorCase),
            Controller = Write(report.Controller),
            Battery = Write(report.Battery),
            RunawayCurrentA = Shown.Figure(report.RunawayCurrentA),
        };

    private static TemperatureAnswer Write(NodeReport node) =>
        new()
        {
            CourseEndC = Shown.Figure(node.CourseEndC),
            PeakC = Shown.Figure(node.PeakC),
            CourseSecondsToLimit = Shown.Figure(node.CourseTimeToLimitS),
            LimitC = Shown.Figure(node.LimitC),
            Runaway = double.IsPositiveInfinity(node.PeakC) ? true : null,
            SettledC = Settled(node),
            SecondsToLimit = Times(node),
        };

    private static SettledAnswer Settled(NodeReport node) =>
        new()
        {
            Level = Settled(node, LoadCaseName.Level),
            Climb = Settled(node, LoadCaseName.Climb),
            Hold = Settled(node, LoadCaseName.Hold),
            Slip = Settled(node, LoadCaseName.Slip),
            Punch = Settled(node, LoadCaseName.Punch),
            Jam = Settled(node, LoadCaseName.Jam),
            Stall = Settled(node, LoadCaseName.Stall),
            Top = Settled(node, LoadCaseName.Top),
        };

    private static SecondsToLimitAnswer Times(NodeReport node) =>
        new()
        {
            Level = Time(node, LoadCaseName.Level),
            Climb = Time(node, LoadCaseName.Climb),
            Hold = Time(node, LoadCaseName.Hold),
            Slip = Time(node, LoadCaseName.Slip),
            Punch = Time(node, LoadCaseName.Punch),
            Jam = Time(node, LoadCaseName.Jam),
            Stall = Time(node, LoadCaseName.Stall),
            Top = Time(node, LoadCaseName.Top),
        };

    private static double? Settled(NodeReport node, LoadCaseName name) =>
        Find(node, name) is { } found ? Shown.Figure(found.SettledC) : null;

    private static TimeToLimitAnswer? Time(NodeReport node, LoadCaseName name) =>
        Find(node, name) is { } found && Known(found)
            ? new()
            {
                Cold = Shown.Figure(found.FromColdS),
                Warm = Shown.Figure(found.FromWarmS),
                Reached = double.IsFinite(found.FromColdS) || double.IsFinite(found.FromWarmS),
            }
            : null;

    private static bool Known(CaseTemperature found) =>
        !double.IsNaN(found.FromColdS) || !double.IsNaN(found.FromWarmS);

    private static CaseTemperature? Find(NodeReport node, LoadCaseName name) =>
        node.Cases.FirstOrDefault(found => found.Case == name);
}
