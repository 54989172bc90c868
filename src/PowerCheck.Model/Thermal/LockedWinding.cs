using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using MathNet.Numerics.RootFinding;

namespace PowerCheck.Model.Thermal;

/// <summary>
/// A winding that stands still under current (M6): copper alone takes the heat for the first 2 s, unevenly; then the whole
/// network does. The current may follow the temperature, as at a set throttle.
/// </summary>
/// <param name="Warmth">The motor in its air.</param>
/// <param name="CurrentAt">Motor current at a winding temperature [A from °C].</param>
/// <param name="RippleA2">Mean square of the ripple [A²].</param>
public sealed record LockedWinding(
    MotorWarmth Warmth,
    Func<double, double> CurrentAt,
    double RippleA2
)
{
    /// <summary>For how long the copper alone takes the heat [s], assumed.</summary>
    public const double AloneS = 2;

    /// <summary>How far ahead a time to a limit is looked for [s].</summary>
    public const double HorizonS = 900;

    /// <summary>Heat in the winding at a temperature, unevenness included [W].</summary>
    /// <param name="windingC">Winding temperature [°C].</param>
    public double HeatW(double windingC)
    {
        var current = CurrentAt(windingC);
        return Warmth.Motor.Heat.LockedHeatFactor
            * ((current * current) + RippleA2)
            * Warmth.Motor.ResistanceAt(windingC);
    }

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
            1e-9,
            8,
            15
        );

    /// <summary>Winding temperature after a time with the copper alone [°C].</summary>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="seconds">How long [s], within the first 2 s.</param>
    public double AloneAfterC(MotorTemperature start, double seconds)
    {
        var most = start.WindingC;
        for (var step = Rise(start.WindingC, seconds); ; step *= 2)
        {
            most += step;
            if (!(step > 0) || most > 1e5 || AloneTimeS(start.WindingC, most) >= seconds)
            {
                break;
            }
        }

        return most > start.WindingC && most <= 1e5
            ? Brent.FindRoot(
                toC => AloneTimeS(start.WindingC, toC) - seconds,
                start.WindingC,
                most,
                1e-7,
                200
            )
            : most;
    }

    /// <summary>Winding temperature after a time of any length [°C].</summary>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="seconds">How long [s].</param>
    public double AfterC(MotorTemperature start, double seconds)
    {
        if (double.IsNaN(HeatW(start.WindingC)))
        {
            return double.NaN;
        }

        if (!(HeatW(start.WindingC) > 0))
        {
            return start.WindingC;
        }

        var alone = AloneAfterC(start, Math.Min(seconds, AloneS));
        var x = new MotorTemperature(alone, start.CaseC);
        for (var t = AloneS; t < seconds; t += 10)
        {
            x = Step(x, Math.Min(10, seconds - t));
        }

        return x.WindingC;
    }

    /// <summary>Time to the winding's limit [s]; infinity when it is not reached within 15 minutes.</summary>
    /// <param name="start">Temperatures at the start.</param>
    public double TimeToLimit(MotorTemperature start)
    {
        var limit = Warmth.Motor.Heat.WindingLimitC;
        if (double.IsNaN(start.WindingC) || double.IsNaN(HeatW(limit)))
        {
            return double.NaN;
        }

        if (start.WindingC >= limit)
        {
            return 0;
        }

        if (!(HeatW(start.WindingC) > 0))
        {
            return double.PositiveInfinity;
        }

        var alone = AloneTimeS(start.WindingC, limit);
        return alone <= AloneS
            ? alone
            : TimeInNetwork(new(AloneAfterC(start, AloneS), start.CaseC), limit);
    }

    // Where the case stands in for the air at once, a winding that settles below its limit never reaches it.
    private double TimeInNetwork(MotorTemperature start, double limit)
    {
        var heat = Warmth.Motor.Heat;
        var out1 = heat.WindingToCaseKPerW + heat.CaseToAmbientKPerW;
        if (HeatW(limit) * out1 <= limit - Warmth.AmbientC && start.CaseC < limit)
        {
            return double.PositiveInfinity;
        }

        var x = start;
        var t = AloneS;
        for (var span = 1.0; t < HorizonS; span = Math.Min(2 * span, 30))
        {
            var next = Step(x, span);
            if (next.WindingC >= limit)
            {
                var from = x;
                return t + Brent.FindRoot(s => Step(from, s).WindingC - limit, 0, span, 1e-6, 100);
            }

            x = next;
            t += span;
        }

        return double.PositiveInfinity;
    }

    // Fourth-order steps, halved until they no longer change the winding by a hundredth of a kelvin.
    private MotorTemperature Step(MotorTemperature x, double seconds)
    {
        if (seconds <= 0)
        {
            return x;
        }

        var last = Integrate(x, seconds, 4);
        for (var points = 7; points <= 97; points = (2 * points) - 1)
        {
            var next = Integrate(x, seconds, points);
            if (Math.Abs(next.WindingC - last.WindingC) < 0.01)
            {
                return next;
            }

            last = next;
        }

        return last;
    }

    private MotorTemperature Integrate(MotorTemperature x, double seconds, int points)
    {
        var path = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense([x.WindingC, x.CaseC]),
            0,
            seconds,
            points,
            (_, y) => Slope(y)
        );
        return new(path[^1][0], path[^1][1]);
    }

    private Vector<double> Slope(Vector<double> y)
    {
        var heat = Warmth.Motor.Heat;
        var across = (y[0] - y[1]) / heat.WindingToCaseKPerW;
        return Vector<double>.Build.Dense([
            (HeatW(y[0]) - across) / heat.WindingJPerK,
            (across - ((y[1] - Warmth.AmbientC) / heat.CaseToAmbientKPerW)) / heat.CaseJPerK,
        ]);
    }

    private double Rise(double windingC, double seconds) =>
        HeatW(windingC) * seconds / Warmth.Motor.Heat.CopperJPerK;
}
