using PowerCheck.Model.Accessories;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>
/// Random rigs with what few builders have on top: two motors, slow switching, diodes, slow edges, current limits,
/// accessories on the pack, a known inductance. The same number gives the same rig.
/// </summary>
internal static class AnyRig
{
    public static RigLabel Of(int number)
    {
        var dice = new Random(~number);
        bool Chance(double share) => dice.NextDouble() < share;
        T Pick<T>(params T[] from) => from[dice.Next(from.Length)];

        var rig = RandomRig.Of(number);
        return rig with
        {
            Vehicle = rig.Vehicle with { MotorCount = Chance(0.2) ? 2 : null },
            Controller = rig.Controller with
            {
                Freewheel = Chance(0.5) ? Pick(Freewheel.Diode, Freewheel.Synchronous) : null,
                PwmFrequencyHz = Chance(0.6)
                    ? Pick(1_000, 2_000, 3_900, 4_000, 7_900, 8_000, 16_000, 32_000)
                    : null,
                EdgeTimeS = Chance(0.5) ? 4e-7 * dice.NextDouble() : null,
                CurrentLimitA = Chance(0.2) ? 20 + (80 * dice.NextDouble()) : null,
                Hold = Pick(HoldMode.DragBrake, HoldMode.Active, HoldMode.None),
            },
            Accessories = Chance(0.2)
                ?
                [
                    .. rig.Accessories ?? [],
                    new() { Kind = AccessoryKind.Winch, Supply = AccessorySupply.Battery },
                ]
                : rig.Accessories,
            Motor = rig.Motor with
            {
                InductanceH = Chance(0.3) ? 1e-6 * Math.Pow(100, dice.NextDouble()) : null,
            },
        };
    }
}
