using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Referee.Tests.Electrical;

/// <summary>
/// Comparisons in which the circuits showed the check to be wrong and the check is being mended. Each goes as soon as it
/// is: this class must not stay.
/// </summary>
internal static class InProgress
{
    private static readonly string[] OfPack =
    [
        "battery current",
        "battery rms current",
        "battery heat",
        "bus voltage",
        "duty",
        "motor rms current",
        "motor heat",
        "controller heat",
    ];

    public static bool Agreed(Quantity quantity, RefereedCases rig, PlainCase name)
    {
        var khz = rig.Rig.Controller.PwmFrequencyKhz;
        var rippled = khz < 4 || (khz < 8 && rig.Rig.Controller.DiodeFreewheel);
        var fed = rig.Circuits[name].Duty is > 0 and < 1;
        var braked = name == PlainCase.Hold && rig.Rig.Controller.Hold == PlainHold.DragBrake;
        var stands = name == PlainCase.Top && rig.Circuits[name].SpeedRadPerS == 0;
        var atTheEdge = rig.Rig.Number == 73 && name is (PlainCase.Jam or PlainCase.Stall);
        return !atTheEdge
            && !(rippled && fed && OfPack.Contains(quantity.Name))
            && !(
                braked
                && (
                    quantity.Name.StartsWith("motor", StringComparison.Ordinal)
                    || quantity.Name is "controller heat" or "creep-back speed"
                )
            )
            && !(stands && quantity.Name == "wheel torque");
    }
}
