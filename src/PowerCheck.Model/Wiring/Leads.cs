using MathNet.Numerics.Interpolation;
using PowerCheck.Model.Materials;

namespace PowerCheck.Model.Wiring;

/// <summary>The leads of a rig, every figure filled in (M10). NaN is not given.</summary>
/// <param name="Battery">The battery leads.</param>
/// <param name="Motor">Two motor leads.</param>
/// <param name="InsulationC">Temperature that the insulation stands [°C].</param>
/// <param name="ConnectorContinuousA">Continuous current of the connector [A].</param>
/// <param name="FuseA">Rating of the fuse [A].</param>
public sealed record Leads(
    LeadPair Battery,
    LeadPair Motor,
    double InsulationC,
    double ConnectorContinuousA,
    double FuseA
)
{
    /// <summary>Length of the battery leads, one way [m].</summary>
    public double BatteryLeadM
    {
        get => Battery.LengthM;
        init => Battery = new(Battery.Awg, value, Battery.AmbientC);
    }

    /// <summary>Length of the motor leads, one way [m].</summary>
    public double MotorLeadM
    {
        get => Motor.LengthM;
        init => Motor = new(Motor.Awg, value, Motor.AmbientC);
    }

    /// <summary>Air temperature [°C].</summary>
    public double AmbientC
    {
        get => Battery.AmbientC;
        init =>
            (Battery, Motor) = (
                new(Battery.Awg, Battery.LengthM, value),
                new(Motor.Awg, Motor.LengthM, value)
            );
    }

    /// <summary>Both battery leads, there and back, at the air's temperature [Ω].</summary>
    public double BatteryOhm => Battery.Ohm;

    /// <summary>Two motor leads, there and back, at the air's temperature [Ω].</summary>
    public double MotorOhm => Motor.Ohm;
}

/// <summary>Two leads alike, there and back. Made as a whole, for its resistance is asked for again and again.</summary>
public readonly record struct LeadPair
{
    /// <summary>Two leads.</summary>
    /// <param name="awg">Gauge.</param>
    /// <param name="lengthM">Length, one way [m].</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    public LeadPair(double awg, double lengthM, double ambientC)
    {
        (Awg, LengthM, AmbientC) = (awg, lengthM, ambientC);
        Ohm = Wire.ResistanceOhm(awg, 2 * lengthM, ambientC);
    }

    /// <summary>Gauge.</summary>
    public double Awg { get; }

    /// <summary>Length, one way [m].</summary>
    public double LengthM { get; }

    /// <summary>Air temperature [°C].</summary>
    public double AmbientC { get; }

    /// <summary>Resistance of both at the air's temperature [Ω].</summary>
    public double Ohm { get; }
}

/// <summary>Round copper wire by gauge (M10).</summary>
public static class Wire
{
    /// <summary>Circular mils in a square metre: a circle of 0.001 in.</summary>
    private const double CircularMilM2 = Math.PI / 4 * 25.4e-6 * 25.4e-6;

    /// <summary>Diameter [m]: 0.127 mm × 92^((36 − n)/39). Source: ASTM B258 by memory, agrees with hph to 0.05 %.</summary>
    /// <param name="awg">Gauge number, 0 to 36.</param>
    public static double DiameterM(double awg) => 0.127e-3 * Math.Pow(92, (36 - awg) / 39);

    /// <summary>Cross section [m²].</summary>
    /// <param name="awg">Gauge number.</param>
    public static double AreaM2(double awg) => Math.PI / 4 * Math.Pow(DiameterM(awg), 2);

    /// <summary>Resistance [Ω]. Source: hph.</summary>
    /// <param name="awg">Gauge number.</param>
    /// <param name="lengthM">Length of wire [m].</param>
    /// <param name="temperatureC">Its temperature [°C].</param>
    public static double ResistanceOhm(double awg, double lengthM, double temperatureC) =>
        Copper.ResistivityOhmM * lengthM / AreaM2(awg) * Copper.Growth(temperatureC);

    /// <summary>
    /// Lasting current of a single lead in free air [A]: the free-air column of hph by gauge, brought to the rise that
    /// the insulation allows by its root, through 47 A for AWG 14 at a rise of 150 K (ac43).
    /// </summary>
    /// <param name="awg">Gauge number, 8 to 26; beyond, extrapolated.</param>
    /// <param name="insulationC">Temperature that the insulation stands [°C].</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    public static double FreeAirA(double awg, double insulationC, double ambientC) =>
        Math.Exp(LogFreeAir.Interpolate(awg))
        * (47.0 / 32)
        * Math.Sqrt(Math.Max(0, insulationC - ambientC) / 150);

    // hph, "chassis" column, AWG 8 to 26 in steps of one.
    private static readonly LinearSpline LogFreeAir = LinearSpline.InterpolateSorted(
        [.. Enumerable.Range(8, 19).Select(n => (double)n)],
        [
            .. new[]
            {
                73,
                64,
                55,
                47,
                41,
                35,
                32,
                28,
                22,
                19,
                16,
                14,
                11,
                9,
                7,
                4.7,
                3.5,
                2.7,
                2.2,
            }.Select(amperes => Math.Log(amperes)),
        ]
    );

    /// <summary>
    /// Current that brings a wire to a temperature in a time without losing heat [A], Onderdonk:
    /// A[circular mil]·√(log10((Tm − Ta)/(234 + Ta) + 1)/(33·t)). Valid under 10 s. Source: onderdonk.
    /// </summary>
    /// <param name="awg">Gauge number.</param>
    /// <param name="fromC">Temperature at the start [°C].</param>
    /// <param name="toC">Temperature to reach [°C].</param>
    /// <param name="seconds">Time [s], above 0.</param>
    public static double AdiabaticA(double awg, double fromC, double toC, double seconds) =>
        AreaM2(awg)
        / CircularMilM2
        * Math.Sqrt(Math.Log10(((toC - fromC) / (234 + fromC)) + 1) / (33 * seconds));

    /// <summary>
    /// Lasting current that melts a copper wire in free air [A], Preece: 10 244·d[in]^1.5. Source: a fuse maker's table.
    /// </summary>
    /// <param name="diameterM">Diameter [m].</param>
    public static double MeltingA(double diameterM) => 10244 * Math.Pow(diameterM / 0.0254, 1.5);
}
