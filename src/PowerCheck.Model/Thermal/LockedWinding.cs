using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;
using PowerCheck.Model.Materials;

namespace PowerCheck.Model.Thermal;

/// <summary>
/// A winding that stands still under current (M6): copper alone takes the heat for the first 2 s, unevenly; then the whole
/// network does. The current may follow the temperature, as at a set throttle.
/// </summary>
/// <param name="Warmth">The motor in its air.</param>
/// <param name="Drive">What drives the current; its unevenness counts.</param>
public sealed record LockedWinding(MotorWarmth Warmth, Drive Drive)
{
    /// <summary>For how long the copper alone takes the heat [s], assumed.</summary>
    public const double AloneS = 2;

    /// <summary>How far ahead a time to a limit is looked for [s].</summary>
    public const double HorizonS = 900;

    /// <summary>Heat in the winding at a temperature, unevenness included [W].</summary>
    /// <param name="windingC">Winding temperature [°C].</param>
    public double HeatW(double windingC) =>
        Drive.Uneven
        * Drive.At(Warmth.Motor, windingC, 20).MeanSquareA2
        * Warmth.Motor.ResistanceAt(windingC);

    /// <summary>
    /// Time from one temperature to another with the copper alone [s]: t = ∫ C dT/P(T), by adaptive quadrature.
    /// </summary>
    /// <param name="fromC">Temperature at the start [°C].</param>
    /// <param name="toC">Temperature to reach [°C], above the start.</param>
    public double AloneTimeS(double fromC, double toC) =>
        Warmth.Motor.Heat.CopperJPerK
        * GaussKronrodRule.Integrate(
            windingC => 1 / HeatW(windingC),
            fromC,
            toC,
            out _,
            out _,
            1e-8,
            8,
            15
        );

    /// <summary>
    /// Winding temperature after a time with the copper alone [°C]: exact at a held current; at a set throttle, or where the
    /// current ripples, the quadrature is solved.
    /// </summary>
    /// <param name="startC">Winding temperature at the start [°C].</param>
    /// <param name="seconds">How long [s], within the first 2 s.</param>
    public double AloneAfterC(double startC, double seconds)
    {
        var growth = Copper.Growth(startC);
        var rate =
            HeatW(startC)
            * Copper.TemperatureCoefficientPerK
            / (growth * Warmth.Motor.Heat.CopperJPerK);
        var held =
            startC
            + (
                (Math.Exp(Math.Min(rate * seconds, 50)) - 1)
                * growth
                / Copper.TemperatureCoefficientPerK
            );
        if (Drive.Held)
        {
            return Math.Min(held, Highest);
        }

        double Late(double toC) => AloneTimeS(startC, toC) - seconds;
        double LatePerK(double toC) => Warmth.Motor.Heat.CopperJPerK / HeatW(toC);
        if (!(Late(Highest) > 0))
        {
            return Highest;
        }

        // What the heat of the start would lead to is near; where that leads nowhere, the root is bracketed.
        var first = Math.Min(held, Highest);
        return NewtonRaphson.TryFindRoot(
            Late,
            LatePerK,
            first,
            startC,
            Highest,
            1e-6,
            20,
            out var found
        )
            ? found
            : Brent.FindRoot(Late, startC, Highest, 1e-6, 200);
    }

    // Without a current the copper alone stays as warm as it is.
    private MotorTemperature AfterAlone(MotorTemperature start, double seconds) =>
        HeatW(start.WindingC) > 0
            ? start with
            {
                WindingC = AloneAfterC(start.WindingC, seconds),
            }
            : start;

    /// <summary>Winding temperature after a time of any length [°C].</summary>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="seconds">How long [s].</param>
    public double AfterC(MotorTemperature start, double seconds)
    {
        if (double.IsNaN(HeatW(start.WindingC)))
        {
            return double.NaN;
        }

        var x = AfterAlone(start, Math.Min(seconds, AloneS));
        for (var t = AloneS; t < seconds; )
        {
            var piece = Piece.Next(Warmth, Drive, x, seconds - t);
            x = piece.Apply(x);
            t += piece.Seconds;
        }

        return Math.Min(x.WindingC, Highest);
    }

    /// <summary>Time to the winding's limit [s]; infinity when it is not reached within 15 minutes.</summary>
    /// <param name="start">Temperatures at the start.</param>
    public double TimeToLimit(MotorTemperature start)
    {
        var limit = Warmth.Motor.Heat.WindingLimitC;
        if (!NetworkKnown || double.IsNaN(start.WindingC) || double.IsNaN(HeatW(limit)))
        {
            return double.NaN;
        }

        if (start.WindingC >= limit - 1e-9)
        {
            return 0;
        }

        // Without a current only a warmer case can warm it.
        var alone =
            HeatW(start.WindingC) > 0 ? AloneTimeS(start.WindingC, limit) : double.PositiveInfinity;
        return alone <= AloneS ? alone : TimeInNetwork(AfterAlone(start, AloneS), limit);
    }

    // Whether every figure of the heat network is known.
    private bool NetworkKnown =>
        Warmth.Motor.Heat is var heat
        && !Array.Exists(
            [
                heat.CopperJPerK,
                heat.WindingJPerK,
                heat.CaseJPerK,
                heat.WindingToCaseKPerW,
                heat.CaseToAmbientKPerW,
            ],
            double.IsNaN
        );

    // Nothing gets this hot and stays a winding [°C]; it keeps figures finite.
    private const double Highest = 5000;

    private double TimeInNetwork(MotorTemperature start, double limit)
    {
        var x = start;
        for (var t = AloneS; t < HorizonS; )
        {
            var (network, piece) = Piece.Next(Warmth, Drive, x, HorizonS - t);
            var next = network.Over(piece).Apply(x);
            if (network.Reaches(x, next, 1, limit))
            {
                return t + network.FirstCrossing(x, 1, limit, piece);
            }

            x = next;
            t += piece;
        }

        return double.PositiveInfinity;
    }
}
