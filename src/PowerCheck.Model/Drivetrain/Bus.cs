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
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motors">Motors on the bus.</param>
    /// <param name="motorA">Current of each motor [A].</param>
    /// <param name="neededV">
    /// Voltage that the bridge must make for it [V]; 0 or less when the motor brakes, and nothing is taken for it.
    /// </param>
    /// <param name="extraW">Further loss in each controller, fed from the bus [W].</param>
    public static Bus Feeding(
        Source source,
        AuxiliaryLoad auxiliary,
        double motors,
        double motorA,
        double neededV,
        double extraW = 0
    )
    {
        if (double.IsNaN(neededV))
        {
            return new(double.NaN, double.NaN, double.NaN, false, false);
        }

        var drives = neededV > 0 && motorA > 0;
        var motorW = drives ? motors * ((neededV * motorA) + extraW) : 0;
        var steady = source with
        {
            OpenCircuitV = source.OpenCircuitV - (source.ResistanceOhm * auxiliary.CurrentA),
        };
        var power = motorW + auxiliary.PowerW;
        if (!drives || Reaches(steady, auxiliary, motors * motorA, neededV, extraW * motors))
        {
            var bus = VoltageUnderPower(steady, power);
            return new(
                bus,
                drives ? neededV / bus : 0,
                auxiliary.CurrentA + (power / bus),
                true,
                false
            );
        }

        var open = FullyOn(steady, auxiliary, motors * motorA);
        var battery = auxiliary.CurrentA + (motors * motorA) + (auxiliary.PowerW / open);
        return new(open, 1, battery, false, power > steady.MaxPowerW);
    }

    /// <summary>
    /// The bus while the bridge of each motor stays at a duty, and the current that then flows:
    /// i = (D·V − counter)/R with V = E − Rs·(n·D·i + I_aux + P_aux/V).
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="auxiliary">What else draws from the bus.</param>
    /// <param name="motors">Motors on the bus.</param>
    /// <param name="duty">Duty, above 0 to 1.</param>
    /// <param name="loopOhm">Resistance of one motor loop, motor included [Ω].</param>
    /// <param name="counterV">Back-EMF and brush drop [V].</param>
    /// <returns>Bus and motor current [A], 0 when the counter voltage is not overcome.</returns>
    public static (Bus Bus, double MotorA) AtDuty(
        Source source,
        AuxiliaryLoad auxiliary,
        double motors,
        double duty,
        double loopOhm,
        double counterV
    )
    {
        var share = motors * source.ResistanceOhm * duty / loopOhm;
        var a = 1 + (share * duty);
        var b =
            source.OpenCircuitV - (source.ResistanceOhm * auxiliary.CurrentA) + (share * counterV);
        var root = (b * b) - (4 * a * source.ResistanceOhm * auxiliary.PowerW);
        var bus = (b + Math.Sqrt(Math.Max(0, root))) / (2 * a);
        var current = Math.Max(0, ((duty * bus) - counterV) / loopOhm);
        var battery = auxiliary.CurrentA + (auxiliary.PowerW / bus) + (motors * duty * current);
        return (new(bus, duty, battery, true, false), current);
    }

    // The upper root is the right one, and the point is reached, exactly when the bus with the bridge fully on still has
    // the needed voltage: E − Rs·(n·i + P_aux/v) ≥ v.
    private static bool Reaches(
        Source steady,
        AuxiliaryLoad auxiliary,
        double motorsA,
        double neededV,
        double extraW
    ) =>
        steady.OpenCircuitV
            - (steady.ResistanceOhm * (motorsA + ((auxiliary.PowerW + extraW) / neededV)))
        >= neededV;

    private static double FullyOn(Source steady, AuxiliaryLoad auxiliary, double motorsA)
    {
        var b = steady.OpenCircuitV - (steady.ResistanceOhm * motorsA);
        var root = (b * b) - (4 * steady.ResistanceOhm * auxiliary.PowerW);
        return Math.Max(0, (b + Math.Sqrt(Math.Max(0, root))) / 2);
    }
}
