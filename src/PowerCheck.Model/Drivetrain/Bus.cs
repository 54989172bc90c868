using PowerCheck.Model.Accessories;

namespace PowerCheck.Model.Drivetrain;

/// <summary>
/// The averaged bridge in continuous conduction on a bus behind the source's resistance (M3). Motor current and battery
/// current are different figures: the battery carries D times the motor's.
/// </summary>
/// <remarks>Sources: rashid, definition. NaN in, NaN out.</remarks>
/// <param name="BusV">Voltage at the controllers' input [V].</param>
/// <param name="Duty">Share of the time that the bridge is on, 0 to 1.</param>
/// <param name="BatteryA">Mean battery current, auxiliaries included [A].</param>
/// <param name="AuxiliaryA">What the auxiliaries draw of it at this bus voltage [A].</param>
/// <param name="Reached">Whether the wanted motor voltage is reached.</param>
/// <param name="PowerExceeded">Whether more power is asked than the source can deliver at any voltage.</param>
public readonly record struct Bus(
    double BusV,
    double Duty,
    double BatteryA,
    double AuxiliaryA,
    bool Reached,
    bool PowerExceeded
)
{
    /// <summary>
    /// Bus voltage under constant power [V]: (E + √(E² − 4·Rs·P))/2, the upper root; NaN when the source cannot deliver it.
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="powerW">Power drawn [W], 0 or more.</param>
    public static double VoltageUnderPower(Source source, double powerW)
    {
        var e = source.OpenCircuitV;
        var root = (e * e) - (4 * source.ResistanceOhm * powerW);
        return (e + Math.Sqrt(root)) / 2;
    }

    /// <summary>The bus while an ideal bridge feeds each motor a current at a voltage.</summary>
    /// <remarks>The point is reached exactly when the upper root exists and has the needed voltage.</remarks>
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motors">Motors on the bus.</param>
    /// <param name="motorA">Current of each motor [A].</param>
    /// <param name="neededV">
    /// Voltage that the bridge must make for it [V]; 0 or less when the motor brakes, and nothing is taken for it.
    /// </param>
    public static Bus Feeding(
        Source source,
        AuxiliaryLoad auxiliary,
        double motors,
        double motorA,
        double neededV
    )
    {
        if (
            double.IsNaN(neededV)
            || double.IsNaN(source.OpenCircuitV)
            || double.IsNaN(source.ResistanceOhm)
        )
        {
            return new(double.NaN, double.NaN, double.NaN, double.NaN, false, false);
        }

        var drives = neededV > 0 && motorA > 0;
        var motorsA = drives ? motors * motorA : 0;
        var powerW = auxiliary.PowerW + (motorsA * neededV);
        var bus = VoltageUnderPower(source.Behind(auxiliary.CurrentA), powerW);
        return bus >= neededV && bus > 0
            ? new(
                bus,
                drives ? neededV / bus : 0,
                auxiliary.CurrentA + (powerW / bus),
                auxiliary.CurrentA + (auxiliary.PowerW / bus),
                true,
                false
            )
            : OutOfReach(source, auxiliary, motorsA, neededV);
    }

    /// <summary>
    /// The bus where a point is not reached: the bridge fully on, what the pack has left behind the wanted currents, but no
    /// less than the voltage of its greatest power.
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motorsA">Wanted current of all motors together [A].</param>
    /// <param name="neededV">Voltage that the bridge should make for it [V].</param>
    public static Bus OutOfReach(
        Source source,
        AuxiliaryLoad auxiliary,
        double motorsA,
        double neededV
    )
    {
        var steady = source.Behind(auxiliary.CurrentA);
        var best = steady.OpenCircuitV / 2;
        var left = VoltageUnderPower(steady.Behind(motorsA), auxiliary.PowerW);
        var open = double.MaxNumber(best, left);
        var drawn = (steady.OpenCircuitV - open) / source.ResistanceOhm;
        return new(
            open,
            motorsA > 0 ? 1 : 0,
            AtMost(source, auxiliary.CurrentA + drawn),
            auxiliary.CurrentA + Math.Max(0, drawn - motorsA),
            false,
            auxiliary.PowerW + (motorsA * neededV) > steady.MaxPowerW
        );
    }

    /// <summary>
    /// The bus while the bridge of each motor stays at a duty, and the current that then flows:
    /// i = (D·V − (1 − D)·V_f − counter)/R with V = E − Rs·(n·D·i + I_aux + P_aux/V), or n·i instead of n·D·i where nothing
    /// smooths.
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motors">Motors on the bus.</param>
    /// <param name="duty">Duty, above 0 to 1.</param>
    /// <param name="loopOhm">Resistance of one motor loop, motor included [Ω].</param>
    /// <param name="counterV">Back-EMF and brush drop [V].</param>
    /// <param name="bridge">How the bridge switches.</param>
    /// <param name="loss">Loss of switching and ripple beside one motor.</param>
    /// <returns>Bus and motor current [A], 0 when the counter voltage is not overcome.</returns>
    public static (Bus Bus, double MotorA) AtDuty(
        Source source,
        AuxiliaryLoad auxiliary,
        double motors,
        double duty,
        double loopOhm,
        double counterV,
        Bridge bridge = default,
        BridgeLoss loss = default
    )
    {
        var lifted = bridge.Unsmoothed ? motors * loss.LiftA : 0;
        var steadyV = source.Behind(auxiliary.CurrentA + lifted).OpenCircuitV;
        var against = counterV + ((1 - duty) * bridge.FreewheelV);
        var carried = bridge.Unsmoothed ? motors : motors * duty;
        var share = carried * source.ResistanceOhm / loopOhm;
        var besidesW = bridge.Unsmoothed ? 0 : motors * loss.BesidesW;
        var powerV2 = source.ResistanceOhm * (auxiliary.PowerW + besidesW);
        var a = 1 + (share * duty);
        var bus = Upper(a, steadyV + (share * against), powerV2);
        var current = ((duty * bus) - against) / loopOhm;
        if (current <= 0)
        {
            // The motor takes nothing, and does not hold the bus up either.
            a = 1;
            bus = Upper(a, steadyV, powerV2);
            current = 0;
        }

        // Where the auxiliaries ask for more than there is (no root), they get what the motors leave them.
        var others =
            powerV2 > a * bus * bus * (1 + 1e-9)
                ? Math.Max(0, ((steadyV - bus) / source.ResistanceOhm) - (carried * current))
            : auxiliary.PowerW > 0 ? auxiliary.PowerW / bus
            : 0;
        others += auxiliary.CurrentA;
        var besides = besidesW > 0 ? besidesW / bus : duty * lifted;
        var battery = others + besides + (motors * duty * current);
        return (new(bus, duty, AtMost(source, battery), others, true, false), current);
    }

    // A source that cannot carry what is asked gives what it can, and no more.
    private static double AtMost(Source source, double askedA) =>
        Math.Min(askedA, source.OpenCircuitV / source.ResistanceOhm);

    // Upper root of a·V² − b·V + c = 0; where there is none, the voltage of the greatest power.
    private static double Upper(double a, double b, double c) =>
        (b + Math.Sqrt(Math.Max(0, (b * b) - (4 * a * c)))) / (2 * a);
}
