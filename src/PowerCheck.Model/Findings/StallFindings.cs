using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>How long motor and controller last wedged at full throttle: words of caution without a limit (M6, M7).</summary>
internal static class StallFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it) => [Motor(it), Controller(it)];

    private static Finding Motor(Inspection it)
    {
        var stall = it.Cases[LoadCaseName.Stall];
        var node = it.Result.Temperatures.MotorWinding.Cases.First(c =>
            c.Case == LoadCaseName.Stall
        );
        var time = node.FromColdS;
        var lasts = double.IsFinite(time)
            ? $"lasts about {Say.Time(time)} from cold; {MotorStallTime.Consequence}."
            : "stays under its limit for a quarter of an hour and more.";
        return Make.Caution(
            MotorStallTime,
            "stall",
            double.IsNaN(time)
                ? "How long the winding lasts wedged at full throttle is not to be told from what was given."
                : $"Wedged at full throttle the motor takes {Say.Figure(stall.MotorCurrentA, Unit.Ampere)} and its winding {lasts}",
            stall.MotorCurrentA,
            double.NaN,
            Unit.Ampere,
            double.IsFinite(time) ? time : double.NaN
        );
    }

    private static Finding Controller(Inspection it)
    {
        var stall = it.Cases[LoadCaseName.Stall];
        var time = it
            .Result.Temperatures.Controller.Cases.First(c => c.Case == LoadCaseName.Stall)
            .FromColdS;
        var lasts =
            double.IsNaN(time)
                ? "How long the controller lasts wedged at full throttle is not to be told from what was given."
            : double.IsFinite(time)
                ? $"Wedged at full throttle the controller carries {Say.Figure(stall.MotorCurrentA, Unit.Ampere)} of motor "
                    + $"current for about {Say.Time(time)} from cold; {ControllerStallTime.Consequence}."
            : $"Wedged at full throttle the controller carries {Say.Figure(stall.MotorCurrentA, Unit.Ampere)} of motor current "
                + "without end; the motor gives in first.";
        return Make.Caution(
            ControllerStallTime,
            "stall",
            lasts,
            stall.MotorCurrentA,
            double.NaN,
            Unit.Ampere,
            double.IsFinite(time) ? time : double.NaN
        );
    }
}
