using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Thermal;

/// <summary>
/// A motor's heat as a circuit: a temperature [°C] is a voltage, a heat flow a current, a heat capacity a capacitor. The
/// winding is the node <c>tw</c>, the case <c>tc</c>, the magnet <c>tm</c>.
/// </summary>
internal static class MotorHeatDeck
{
    /// <summary>Above this nothing grows any further, so that a winding that runs away stays a number [°C].</summary>
    public const double ClampC = 700;

    /// <summary>Under this nothing shrinks: no winding is that cold, but a search may try it [°C].</summary>
    public const double LeastC = -100;

    /// <summary>Past this a winding runs away [°C].</summary>
    public const double RunawayC = 400;

    /// <summary>Adds winding, case and the way to the air, each at its temperature at the start.</summary>
    public static Deck Network(this Deck deck, RigPhysics rig, double windingC, double caseC)
    {
        var motor = rig.Rig.Motor;
        deck.Add($"VTA ta 0 {rig.Rig.Course.AmbientC}")
            .Add($"CW tw 0 {motor.WindingJPerK} ic={windingC}")
            .Add($"CC tc 0 {motor.CaseJPerK} ic={caseC}")
            .Add($"RWC tw tc {motor.WindingToCaseKPerW}")
            .Add($"RCA tc ta {motor.CaseToAmbientKPerW}");
        return motor.Brushed || motor.OuterRotor
            ? deck.Add($"EM tm 0 tc 0 1")
            : deck.Add($"EM tm 0 poly(2) tw 0 tc 0 0 0.5 0.5");
    }

    /// <summary>Adds the copper alone, which takes the heat of a locked motor at first.</summary>
    public static Deck Copper(this Deck deck, RigPhysics rig) =>
        deck.Add($"CW tw 0 {rig.Rig.Motor.CopperJPerK} ic={rig.Rig.Course.AmbientC}")
            .Add($"VTC tc 0 {rig.Rig.Course.AmbientC}")
            .Add($"VTM tm 0 {rig.Rig.Course.AmbientC}");

    /// <summary>
    /// Adds a clock with a corner at each moment that will be read, so that the simulator stops there and nothing is
    /// interpolated.
    /// </summary>
    public static Deck Moments(this Deck deck, IEnumerable<double> momentsS)
    {
        var corners = momentsS
            .Where(moment => moment > 0)
            .Distinct()
            .Order()
            .Select(
                (moment, index) => FormattableString.Invariant($"{moment:R} {(index + 1) % 2}")
            );
        return deck.Add($"VCLOCK clock 0 pwl(0 0 {string.Join(' ', corners)})")
            .Add($"RCLOCK clock 0 1");
    }
}
