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
/// <param name="Reached">Whether the wanted motor voltage is reached.</param>
/// <param name="PowerExceeded">Whether more power is asked than the source can deliver at any voltage.</param>
public readonly record struct Bus(
    double BusV,
    double Duty,
    double BatteryA,
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
        return root < 0 ? double.NaN : (e + Math.Sqrt(root)) / 2;
    }

    /// <summary>The bus while each motor is fed a current at a voltage.</summary>
    /// <remarks>
    /// The point is reached exactly when the upper root exists and has the needed voltage. Where it is not, the bridge is
    /// fully on, or the pack at the voltage of its greatest power.
    /// </remarks>
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motors">Motors on the bus.</param>
    /// <param name="motorA">Current of each motor [A].</param>
    /// <param name="neededV">
    /// Voltage that the bridge must make for it [V]; 0 or less when the motor brakes, and nothing is taken for it.
    /// </param>
    /// <param name="extraW">Further loss in each controller, fed from the bus [W].</param>
    /// <param name="smoothed">Whether capacitors smooth the bus; else the pack carries the motor current while on.</param>
    public static Bus Feeding(
        Source source,
        AuxiliaryLoad auxiliary,
        double motors,
        double motorA,
        double neededV,
        double extraW = 0,
        bool smoothed = true
    )
    {
        if (double.IsNaN(neededV + source.OpenCircuitV + source.ResistanceOhm))
        {
            return new(double.NaN, double.NaN, double.NaN, false, false);
        }

        var steady = source with
        {
            OpenCircuitV = Math.Max(
                0,
                source.OpenCircuitV - (source.ResistanceOhm * auxiliary.CurrentA)
            ),
        };
        var drives = neededV > 0 && motorA > 0;
        var motorsA = drives ? motors * motorA : 0;
        var power = (drives ? motors * extraW : 0) + auxiliary.PowerW;
        var bus =
            smoothed || !drives
                ? VoltageUnderPower(steady, power + (motorsA * Math.Max(0, neededV)))
                : VoltageUnderPower(Behind(steady, motorsA), power);
        if (bus >= neededV && bus > 0)
        {
            var duty = drives ? neededV / bus : 0;
            var battery = auxiliary.CurrentA + (duty * motorsA) + (power / bus);
            return new(bus, duty, battery, true, false);
        }

        var best = steady.OpenCircuitV / 2;
        var open = VoltageUnderPower(Behind(steady, motorsA), power);
        open = open > best ? open : best;
        return new(
            open,
            drives ? 1 : 0,
            AtMost(
                source,
                auxiliary.CurrentA + ((steady.OpenCircuitV - open) / source.ResistanceOhm)
            ),
            false,
            power + (motorsA * neededV) > steady.MaxPowerW
        );
    }

    /// <summary>
    /// The bus while the bridge of each motor stays at a duty, and the current that then flows:
    /// i = (D·V − counter)/R with V = E − Rs·(n·D·i + I_aux + P_aux/V), or n·i instead of n·D·i where nothing smooths.
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motors">Motors on the bus.</param>
    /// <param name="duty">Duty, above 0 to 1.</param>
    /// <param name="loopOhm">Resistance of one motor loop, motor included [Ω].</param>
    /// <param name="counterV">Back-EMF and brush drop [V].</param>
    /// <param name="smoothed">Whether capacitors smooth the bus; else the pack carries the motor current while on.</param>
    /// <returns>Bus and motor current [A], 0 when the counter voltage is not overcome.</returns>
    public static (Bus Bus, double MotorA) AtDuty(
        Source source,
        AuxiliaryLoad auxiliary,
        double motors,
        double duty,
        double loopOhm,
        double counterV,
        bool smoothed = true
    )
    {
        var steadyV = Math.Max(
            0,
            source.OpenCircuitV - (source.ResistanceOhm * auxiliary.CurrentA)
        );
        var carried = motors * (smoothed ? duty : 1);
        var share = carried * source.ResistanceOhm / loopOhm;
        var powerV2 = source.ResistanceOhm * auxiliary.PowerW;
        var a = 1 + (share * duty);
        var bus = Upper(a, steadyV + (share * counterV), powerV2);
        var current = ((duty * bus) - counterV) / loopOhm;
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
        var battery = auxiliary.CurrentA + others + (motors * duty * current);
        return (new(bus, duty, AtMost(source, battery), true, false), current);
    }

    // A source that cannot carry what is asked gives what it can, and no more.
    private static double AtMost(Source source, double askedA) =>
        askedA > source.OpenCircuitV / source.ResistanceOhm
            ? source.OpenCircuitV / source.ResistanceOhm
            : askedA;

    // What is left of a source behind a current.
    private static Source Behind(Source source, double currentA) =>
        source with
        {
            OpenCircuitV = Math.Max(0, source.OpenCircuitV - (source.ResistanceOhm * currentA)),
        };

    // Upper root of a·V² − b·V + c = 0; where there is none, the voltage of the greatest power.
    private static double Upper(double a, double b, double c) =>
        (b + Math.Sqrt(Math.Max(0, (b * b) - (4 * a * c)))) / (2 * a);
}
