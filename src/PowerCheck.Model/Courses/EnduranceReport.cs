namespace PowerCheck.Model.Courses;

/// <summary>How long the pack lasts on the course; NaN is not known.</summary>
/// <param name="RunTimeS">Run time until the reserve or the cut-off [s].</param>
/// <param name="EndsBy">What ends it; null when not known.</param>
/// <param name="MeanBatteryCurrentA">Mean battery current over a lap, half charged [A].</param>
/// <param name="RmsBatteryCurrentA">Root mean square battery current over a lap, half charged [A].</param>
/// <param name="RmsMotorCurrentA">Root mean square motor current over a lap [A].</param>
/// <param name="EnergyJ">Energy taken at the controllers' input over the run [J].</param>
public sealed record EnduranceReport(
    double RunTimeS,
    RunEnd? EndsBy,
    double MeanBatteryCurrentA,
    double RmsBatteryCurrentA,
    double RmsMotorCurrentA,
    double EnergyJ
);

/// <summary>What ends a run.</summary>
public enum RunEnd
{
    /// <summary>The charge kept back is reached.</summary>
    Reserve,

    /// <summary>The bus falls under the cut-off in the hardest segment.</summary>
    Cutoff,
}
