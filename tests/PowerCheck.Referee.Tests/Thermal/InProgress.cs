using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>
/// Comparisons in which circuits and check do not agree yet, and the check or the circuit is being mended. Each goes as
/// soon as it is settled: this class must not stay.
/// </summary>
internal static class InProgress
{
    // Rigs whose controller along the course is not yet understood.
    private static readonly int[] OddControllers =
    [
        39,
        45,
        58,
        66,
        73,
        87,
        98,
        117,
        122,
        172,
        191,
        216,
        239,
    ];

    // Jams at the current limit that full throttle cannot drive any more once the winding is warm.
    private static readonly int[] HeldForEver = [42, 72, 73, 163];

    public static bool Agreed(string quantity, PlainRig rig) =>
        !(
            HeldForEver.Contains(rig.Number)
            && quantity.StartsWith("winding", StringComparison.Ordinal)
            && quantity.EndsWith("jam", StringComparison.Ordinal)
        );

    // Courses with ripple are not compared yet.
    public static bool AgreedOnCourse(PlainRig rig, double peakC) =>
        rig.Controller.PwmFrequencyKhz >= 8 && peakC < ComparedHeat.RunawayC;

    public static bool AgreedOnController(PlainRig rig) => !OddControllers.Contains(rig.Number);
}
