using MathNet.Numerics.RootFinding;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Thermal;

/// <summary>Winding and case temperature of a motor.</summary>
/// <param name="WindingC">Mean winding (brushed: rotor) temperature [°C].</param>
/// <param name="CaseC">Case temperature [°C].</param>
public readonly record struct MotorTemperature(double WindingC, double CaseC)
{
    /// <summary>Both at one temperature.</summary>
    /// <param name="temperatureC">The temperature [°C].</param>
    public static MotorTemperature At(double temperatureC) => new(temperatureC, temperatureC);
}

/// <summary>
/// The two-node heat network of a motor under a constant current (M6), solved exactly.
/// </summary>
/// <remarks>
/// C_w·dT_w/dt = i²·R₂₀·(1 + α(T_w − 20)) + P_w − (T_w − T_c)/R_wc;
/// C_c·dT_c/dt = P_c + (T_w − T_c)/R_wc − (T_c − T_a)/R_ca. Copper loss is affine in temperature, so the whole is
/// dx/dt = A·x + b with two real eigenvalues; λ₁ ≥ 0 is runaway. Sources: msl, mjc.
/// </remarks>
public readonly struct TwoNode
{
    private readonly double a11;
    private readonly double a12;
    private readonly double a21;
    private readonly double a22;
    private readonly double b1;
    private readonly double b2;
    private readonly double fast;

    /// <summary>The network under one current.</summary>
    /// <param name="heat">The motor's heat network.</param>
    /// <param name="resistanceOhm">Resistance of the winding at 20 °C [Ω].</param>
    /// <param name="current2">Mean square current, unevenness included [A²].</param>
    /// <param name="constantW">Heat that does not depend on the winding's temperature: iron, friction, brushes [W].</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    public TwoNode(
        MotorHeat heat,
        double resistanceOhm,
        double current2,
        double constantW,
        double ambientC
    )
        : this(heat, CopperHeat.Of(current2, resistanceOhm), constantW, ambientC) { }

    /// <summary>The network under a copper heat.</summary>
    /// <param name="heat">The motor's heat network.</param>
    /// <param name="copper">Copper heat over the winding's temperature, unevenness included.</param>
    /// <param name="constantW">Heat that does not depend on the winding's temperature: iron, friction, brushes [W].</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    public TwoNode(MotorHeat heat, CopperHeat copper, double constantW, double ambientC)
    {
        var between = 1 / heat.WindingToCaseKPerW;
        var outward = 1 / heat.CaseToAmbientKPerW;
        a11 = (copper.PerKelvinW - between) / heat.WindingJPerK;
        a12 = between / heat.WindingJPerK;
        a21 = between / heat.CaseJPerK;
        a22 = -(between + outward) / heat.CaseJPerK;
        b1 = (copper.AtZeroW + (heat.SpinHeatInWinding ? constantW : 0)) / heat.WindingJPerK;
        b2 = ((heat.SpinHeatInWinding ? 0 : constantW) + (outward * ambientC)) / heat.CaseJPerK;
        var middle = (a11 + a22) / 2;
        var half = Math.Sqrt(((a11 - a22) * (a11 - a22) / 4) + (a12 * a21));
        Slow = middle + half;
        fast = middle - half;
    }

    /// <summary>The slow eigenvalue [1/s]: 0 or above means that the temperature never settles.</summary>
    public double Slow { get; }

    /// <summary>Where it settles; infinite in runaway.</summary>
    public MotorTemperature Settled
    {
        get
        {
            if (Slow >= 0)
            {
                return MotorTemperature.At(double.PositiveInfinity);
            }

            var determinant = (a11 * a22) - (a12 * a21);
            return new(
                ((a12 * b2) - (a22 * b1)) / determinant,
                ((a21 * b1) - (a11 * b2)) / determinant
            );
        }
    }

    /// <summary>The map from the temperatures at the start to those after a time: x(t) = Φ·x₀ + g.</summary>
    /// <param name="seconds">Time [s], 0 or more.</param>
    public HeatMap Over(double seconds)
    {
        var gap = Slow - fast;
        // Runaway is cut off far above any limit, so that nothing overflows.
        var eSlow = Math.Exp(Math.Min(Slow * seconds, 100));
        var eFast = Math.Exp(fast * seconds);
        var gSlow = Growth(Slow, seconds, eSlow);
        var gFast = Growth(fast, seconds, eFast);
        // Φ = e^(λ₁t)·P₁ + e^(λ₂t)·P₂ with P₁ = (A − λ₂I)/(λ₁ − λ₂), P₂ = I − P₁; g likewise with ∫e^(λt).
        var p11 = (a11 - fast) / gap;
        var p22 = (a22 - fast) / gap;
        var p12 = a12 / gap;
        var p21 = a21 / gap;
        var e = eSlow - eFast;
        var g = gSlow - gFast;
        return new(
            (e * p11) + eFast,
            e * p12,
            e * p21,
            (e * p22) + eFast,
            (((g * p11) + gFast) * b1) + (g * p12 * b2),
            (g * p21 * b1) + (((g * p22) + gFast) * b2)
        );
    }

    /// <summary>
    /// First time at which a weighted temperature reaches a limit [s]; infinity when it does not within the horizon.
    /// </summary>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="windingWeight">Weight of the winding; the case has the rest.</param>
    /// <param name="limitC">The limit [°C].</param>
    /// <param name="horizonS">How far to look [s].</param>
    public double FirstCrossing(
        MotorTemperature start,
        double windingWeight,
        double limitC,
        double horizonS
    )
    {
        var network = this;
        double Above(double t) => network.Over(t).Apply(start).Weighted(windingWeight) - limitC;

        if (Above(0) >= 0)
        {
            return 0;
        }

        var turn = Turn(start, windingWeight);
        var from = 0.0;
        foreach (var to in turn < horizonS ? [turn, horizonS] : (ReadOnlySpan<double>)[horizonS])
        {
            if (Above(to) >= 0)
            {
                return Brent.FindRoot(Above, from, to, 1e-9, 200);
            }

            from = to;
        }

        return double.PositiveInfinity;
    }

    /// <summary>Whether a weighted temperature reaches a limit within a time, by its ends and its turn.</summary>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="end">Temperatures at the end.</param>
    /// <param name="windingWeight">Weight of the winding; the case has the rest.</param>
    /// <param name="limitC">The limit [°C].</param>
    public bool Reaches(
        MotorTemperature start,
        MotorTemperature end,
        double windingWeight,
        double limitC
    )
    {
        if (start.Weighted(windingWeight) >= limitC || end.Weighted(windingWeight) >= limitC)
        {
            return true;
        }

        // It turns once at most: a peak between the ends rises from one and falls to the other.
        return Rate(start, windingWeight) > 0
            && Rate(end, windingWeight) < 0
            && Over(Turn(start, windingWeight)).Apply(start).Weighted(windingWeight) >= limitC;
    }

    /// <summary>How fast the winding warms [K/s].</summary>
    /// <param name="x">Winding and case.</param>
    public double WindingRate(MotorTemperature x) => Rate(x, 1);

    private double Rate(MotorTemperature x, double windingWeight) =>
        (windingWeight * ((a11 * x.WindingC) + (a12 * x.CaseC) + b1))
        + ((1 - windingWeight) * ((a21 * x.WindingC) + (a22 * x.CaseC) + b2));

    /// <summary>Highest weighted temperature within a time [°C].</summary>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="windingWeight">Weight of the winding; the case has the rest.</param>
    /// <param name="seconds">The time [s].</param>
    public double Peak(MotorTemperature start, double windingWeight, double seconds) =>
        Peak(start, Over(seconds).Apply(start), windingWeight);

    /// <summary>Highest weighted temperature between two moments [°C].</summary>
    /// <param name="start">Temperatures at the first.</param>
    /// <param name="end">Temperatures at the second.</param>
    /// <param name="windingWeight">Weight of the winding; the case has the rest.</param>
    public double Peak(MotorTemperature start, MotorTemperature end, double windingWeight)
    {
        return Rate(start, windingWeight) > 0 && Rate(end, windingWeight) < 0
            ? Over(Turn(start, windingWeight)).Apply(start).Weighted(windingWeight)
            : Math.Max(start.Weighted(windingWeight), end.Weighted(windingWeight));
    }

    // A sum of two exponentials turns once at most: where p·e^(λ₁t) + q·e^(λ₂t) = 0.
    private double Turn(MotorTemperature start, double windingWeight)
    {
        var d1 = (a11 * start.WindingC) + (a12 * start.CaseC) + b1;
        var d2 = (a21 * start.WindingC) + (a22 * start.CaseC) + b2;
        var gap = Slow - fast;
        var slow1 = (((a11 - fast) * d1) + (a12 * d2)) / gap;
        var slow2 = ((a21 * d1) + ((a22 - fast) * d2)) / gap;
        var slowPart = (windingWeight * slow1) + ((1 - windingWeight) * slow2);
        var whole = (windingWeight * d1) + ((1 - windingWeight) * d2);
        var turn = Math.Log((slowPart - whole) / slowPart) / gap;
        return turn > 0 ? turn : double.PositiveInfinity;
    }

    private static double Growth(double rate, double seconds, double exponential)
    {
        var x = rate * seconds;
        return Math.Abs(x) < 1e-5 ? seconds * (1 + (x / 2)) : (exponential - 1) / rate;
    }
}

/// <summary>An affine map of winding and case temperature: x → Φ·x + g.</summary>
/// <param name="F11">Winding from winding.</param>
/// <param name="F12">Winding from case.</param>
/// <param name="F21">Case from winding.</param>
/// <param name="F22">Case from case.</param>
/// <param name="G1">Winding's own share [°C].</param>
/// <param name="G2">Case's own share [°C].</param>
public readonly record struct HeatMap(
    double F11,
    double F12,
    double F21,
    double F22,
    double G1,
    double G2
)
{
    /// <summary>The map that changes nothing.</summary>
    public static readonly HeatMap Identity = new(1, 0, 0, 1, 0, 0);

    /// <summary>The temperatures that it makes of others.</summary>
    /// <param name="x">Temperatures before.</param>
    public MotorTemperature Apply(MotorTemperature x) =>
        new((F11 * x.WindingC) + (F12 * x.CaseC) + G1, (F21 * x.WindingC) + (F22 * x.CaseC) + G2);

    /// <summary>This map, and another one after it.</summary>
    /// <param name="next">The later map.</param>
    public HeatMap Then(HeatMap next) =>
        new(
            (next.F11 * F11) + (next.F12 * F21),
            (next.F11 * F12) + (next.F12 * F22),
            (next.F21 * F11) + (next.F22 * F21),
            (next.F21 * F12) + (next.F22 * F22),
            (next.F11 * G1) + (next.F12 * G2) + next.G1,
            (next.F21 * G1) + (next.F22 * G2) + next.G2
        );

    /// <summary>Spectral radius: 1 or more means that repeating the map never settles.</summary>
    public double SpectralRadius
    {
        get
        {
            var half = (F11 - F22) / 2;
            return ((F11 + F22) / 2) + Math.Sqrt((half * half) + (F12 * F21));
        }
    }

    /// <summary>The temperatures that it leaves as they are: (I − Φ)·x = g.</summary>
    public MotorTemperature FixedPoint
    {
        get
        {
            var determinant = ((1 - F11) * (1 - F22)) - (F12 * F21);
            return new(
                (((1 - F22) * G1) + (F12 * G2)) / determinant,
                ((F21 * G1) + ((1 - F11) * G2)) / determinant
            );
        }
    }
}

/// <summary>Readings of a motor's temperatures.</summary>
public static class MotorTemperatureReadings
{
    /// <summary>Both temperatures, no higher than a bound.</summary>
    /// <param name="x">The temperatures.</param>
    /// <param name="mostC">The bound [°C].</param>
    public static MotorTemperature AtMost(this MotorTemperature x, double mostC) =>
        new(Math.Min(x.WindingC, mostC), Math.Min(x.CaseC, mostC));

    /// <summary>
    /// The next of a row of guesses: halfway where it turns back, so that the row closes in where what it follows, such as a
    /// ripple, falls as the motor warms.
    /// </summary>
    /// <param name="next">The next guess as it was found.</param>
    /// <param name="last">The last guess.</param>
    /// <param name="before">The one before that.</param>
    public static MotorTemperature Damped(
        this MotorTemperature next,
        MotorTemperature last,
        MotorTemperature before
    ) =>
        (next.WindingC - last.WindingC) * (last.WindingC - before.WindingC) < 0
            ? new((next.WindingC + last.WindingC) / 2, (next.CaseC + last.CaseC) / 2)
            : next;

    /// <summary>A state on the straight way to another one.</summary>
    /// <param name="x">Where the way starts.</param>
    /// <param name="other">Where it ends.</param>
    /// <param name="share">Share of the way, 0 to 1.</param>
    public static MotorTemperature Toward(
        this MotorTemperature x,
        MotorTemperature other,
        double share
    ) =>
        new(
            x.WindingC + (share * (other.WindingC - x.WindingC)),
            x.CaseC + (share * (other.CaseC - x.CaseC))
        );

    /// <summary>How far apart two readings are: the larger of both differences [K].</summary>
    /// <param name="x">One reading.</param>
    /// <param name="other">The other one.</param>
    public static double DistanceK(this MotorTemperature x, MotorTemperature other) =>
        Math.Max(Math.Abs(x.WindingC - other.WindingC), Math.Abs(x.CaseC - other.CaseC));

    /// <summary>A weighted mean of winding and case [°C].</summary>
    /// <param name="x">The temperatures.</param>
    /// <param name="windingWeight">Weight of the winding, 0 to 1; the case has the rest.</param>
    public static double Weighted(this MotorTemperature x, double windingWeight) =>
        double.IsInfinity(x.WindingC)
            ? x.WindingC
            : (windingWeight * x.WindingC) + ((1 - windingWeight) * x.CaseC);
}
