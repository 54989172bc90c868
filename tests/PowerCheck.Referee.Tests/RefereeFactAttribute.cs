using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Referee.Tests;

/// <summary>A fact that needs the circuit simulator: without it skipped, or failed where it is required.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RefereeFactAttribute : FactAttribute
{
    public RefereeFactAttribute() => Skip = Referee.SkipReason;
}

/// <summary>A theory that needs the circuit simulator: without it skipped, or failed where it is required.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RefereeTheoryAttribute : TheoryAttribute
{
    public RefereeTheoryAttribute() => Skip = Referee.SkipReason;
}

/// <summary>Whether the referee can and must be there.</summary>
public static class Referee
{
    /// <summary>Where one of these is set, a missing simulator is a failure and not a skip.</summary>
    private static readonly string[] Requiring = ["CI", "POWERCHECK_REFEREE_REQUIRED"];

    /// <summary>Why tests are skipped; null when they run. Where the simulator is required they run, and fail without it.</summary>
    public static string? SkipReason { get; } =
        CircuitSimulator.Available || Required
            ? null
            : $"NOT REFEREED: ngspice is neither on the path nor named by {SimulatorProgram.Variable}.";

    private static bool Required =>
        Requiring.Any(name => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(name)));
}
