using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>The figures of two rigs' answers side by side.</summary>
internal static class Figures
{
    /// <summary>Empty when cases, drivetrain, course, temperatures and verdict are the same, to rounding.</summary>
    public static string Differences(Inspection a, Inspection b) =>
        string.Concat(a.Cases.All.Zip(b.Cases.All).Select(pair => Of(pair.First, pair.Second)))
        + Law.Same("reserve", a.Drivetrain.TorqueReserve, b.Drivetrain.TorqueReserve)
        + Law.Same("top speed", a.Drivetrain.TopSpeedMPerS, b.Drivetrain.TopSpeedMPerS)
        + Law.Same("run time", a.Result.Endurance.RunTimeS, b.Result.Endurance.RunTimeS, 1e-7)
        + Law.Same("energy", a.Result.Endurance.EnergyJ, b.Result.Endurance.EnergyJ, 1e-7)
        + Law.Same(
            "lap's current",
            a.Result.Endurance.RmsMotorCurrentA,
            b.Result.Endurance.RmsMotorCurrentA
        )
        + Of(a.Result.Temperatures, b.Result.Temperatures)
        + (
            Judgement.Of(Judgement.Inspect(a)).Verdict == Judgement.Of(Judgement.Inspect(b)).Verdict
                ? ""
                : "verdict; "
        );

    private static string Of(LoadCase a, LoadCase b) =>
        Law.Same($"{a.Name} motor current", a.MotorCurrentA, b.MotorCurrentA)
        + Law.Same($"{a.Name} rms current", a.MotorRmsCurrentA, b.MotorRmsCurrentA)
        + Law.Same($"{a.Name} battery current", a.BatteryCurrentA, b.BatteryCurrentA)
        + Law.Same($"{a.Name} bus", a.BusVoltageV, b.BusVoltageV)
        + Law.Same($"{a.Name} duty", a.DutyRatio, b.DutyRatio)
        + Law.Same($"{a.Name} speed", a.RoadSpeedMPerS, b.RoadSpeedMPerS)
        + Law.Same($"{a.Name} wheel torque", a.WheelTorqueNm, b.WheelTorqueNm)
        + Law.Same($"{a.Name} controller heat", a.ControllerHeatW, b.ControllerHeatW)
        + (a.Obstacle == b.Obstacle ? "" : $"{a.Name} obstacle; ");

    private static string Of(TemperatureReport a, TemperatureReport b) =>
        Of("winding", a.MotorWinding, b.MotorWinding)
        + Of("magnet", a.MotorMagnet, b.MotorMagnet)
        + Of("case", a.MotorCase, b.MotorCase)
        + Of("controller", a.Controller, b.Controller)
        + Of("pack", a.Battery, b.Battery);

    private static string Of(string part, NodeReport a, NodeReport b) =>
        Law.Same($"{part} end", a.CourseEndC, b.CourseEndC, 1e-6)
        + Law.Same($"{part} peak", a.PeakC, b.PeakC, 1e-6)
        + string.Concat(
            a.Cases.Zip(b.Cases)
                .Select(pair =>
                    Law.Same(
                        $"{part}, {pair.First.Case}",
                        pair.First.JudgedC,
                        pair.Second.JudgedC,
                        1e-6
                    )
                )
        );
}
