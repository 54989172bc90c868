using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>
/// Comparisons in which the circuits showed the check to be wrong and the check is being mended. Each goes as soon as it
/// is: this class must not stay.
/// </summary>
internal static class InProgress
{
    // The magnet of a climb lags by half a piece of ten seconds.
    private static readonly string[] Lagging =
    [
        "winding in a climb",
        "case in a climb",
        "magnet in a climb",
        "winding's limit in a climb",
    ];

    // The ripple's heat stays that of a cold winding.
    private static readonly string[] Rippled =
    [
        "winding in a jam",
        "winding's limit in a jam",
        "settled winding of a climb",
    ];

    // The cold case itself, from which controller and pack start, is not yet settled where the bus is unsmoothed or a diode
    // freewheels with ripple, nor the jam of a rig whose pack can just carry it.
    private static bool CaseAgreed(string quantity, PlainRig rig)
    {
        var khz = rig.Controller.PwmFrequencyKhz;
        var part =
            quantity.StartsWith("controller", StringComparison.Ordinal)
            || quantity.StartsWith("pack", StringComparison.Ordinal);
        var unsettled = khz < 4 || (khz < 8 && rig.Controller.DiodeFreewheel);
        return !(part && unsettled)
            && !(rig.Number == 73 && quantity.EndsWith("jam", StringComparison.Ordinal));
    }

    public static bool Agreed(string quantity, PlainRig rig) =>
        CaseAgreed(quantity, rig)
        && !(rig.Controller.PwmFrequencyKhz < 8 && Rippled.Contains(quantity))
        && !Lagging.Contains(quantity);

    // Laps are driven with the currents of the lap that repeats itself: only a course that stays cool agrees. The controller
    // of rig 150 is not yet understood.
    public static bool AgreedOnCourse(PlainRig rig, double peakC) =>
        rig.Controller.PwmFrequencyKhz >= 8
        && peakC < rig.Course.AmbientC + 20
        && rig.Number != 150;
}
