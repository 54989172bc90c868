using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>Winding and case of one motor, stepped through time by a Runge-Kutta rule with the current of each moment.</summary>
/// <param name="plain">The rig.</param>
/// <param name="stepS">Longest step [s]: a small share of the winding's time constant, which is 10 s and more.</param>
internal sealed class Nodes(Plain plain, double stepS)
{
    public Vector<double> Cold => Vector<double>.Build.Dense([plain.AmbientC, plain.AmbientC]);

    /// <summary>The temperatures at every step of some time under a current that follows them.</summary>
    /// <param name="start">Winding and case at the start [°C].</param>
    /// <param name="seconds">How long.</param>
    /// <param name="flow">Current, ripple and speed, of winding and magnet temperature.</param>
    /// <param name="uneven">Unevenness of the winding's heat.</param>
    public Vector<double>[] Over(
        Vector<double> start,
        double seconds,
        Func<double, double, Flow> flow,
        double uneven
    )
    {
        var steps = Math.Max(4, (int)Math.Ceiling(seconds / stepS)) + 1;
        return RungeKutta.FourthOrder(
            start,
            0,
            seconds,
            steps,
            (_, t) => Rates(t, flow(t[0], plain.MagnetC(t[0], t[1])), uneven)
        );
    }

    private Vector<double> Rates(Vector<double> t, Flow flow, double uneven)
    {
        var motor = plain.Rig.Motor;
        var square = (flow.MotorA * flow.MotorA) + flow.Ripple;
        var copper = uneven * square * plain.Ohm(t[0]);
        var beside =
            (plain.Kt20 * plain.FrictionA(flow.RadPerS) * flow.RadPerS)
            + (motor.BrushDropV * Math.Abs(flow.MotorA));
        var inward = (t[0] - t[1]) / motor.WindingToCaseKPerW;
        var outward = (t[1] - plain.AmbientC) / motor.CaseToAmbientKPerW;
        return Vector<double>.Build.Dense([
            (copper + (motor.Brushed ? beside : 0) - inward) / motor.WindingJPerK,
            (inward + (motor.Brushed ? 0 : beside) - outward) / motor.CaseJPerK,
        ]);
    }
}
