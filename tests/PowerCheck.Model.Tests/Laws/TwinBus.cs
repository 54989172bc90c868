using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>One motor on a bus, as a search over bus voltages finds it.</summary>
/// <param name="BusV">Bus voltage, that of the on-time where nothing smooths [V].</param>
/// <param name="Duty">Share of the time that the bridge is on.</param>
/// <param name="MotorA">Mean motor current [A].</param>
/// <param name="RippleA2">Mean square of its ripple [A²].</param>
/// <param name="OthersA">What else draws from the bus [A].</param>
/// <param name="OnA">What the pack carries while the bridge is on, where nothing smooths [A].</param>
/// <param name="BatteryA">Mean battery current [A].</param>
/// <param name="BridgeW">Losses in diodes and edges [W].</param>
/// <param name="Reached">Whether the pack can do it.</param>
internal readonly record struct TwinPoint(
    double BusV,
    double Duty,
    double MotorA,
    double RippleA2,
    double OthersA,
    double OnA,
    double BatteryA,
    double BridgeW,
    bool Reached = true
);

/// <summary>
/// The bus of a rig, found by walking down from the open circuit and halving, with the ripple summed over the harmonics of the
/// square wave: no closed form of the model is used.
/// </summary>
internal sealed class TwinBus(Rig rig, Source source)
{
    private const int Steps = 2000;
    private readonly double diodeV = rig.Controller.Freewheel == Freewheel.Diode ? 0.8 : 0;
    private readonly double motors = rig.Vehicle.MotorCount;
    private readonly double edges =
        rig.Controller.EdgeTimeS > 0
            ? rig.Controller.EdgeTimeS * rig.Controller.PwmFrequencyHz / 2
            : 0;

    private bool Bare { get; } = rig.Controller.PwmFrequencyHz < 4000;

    /// <summary>Feeding a current against a counter voltage; null where a root lies too close to the edge to be found.</summary>
    public TwinPoint? Feed(double motorA, double counterV)
    {
        var loop = rig.Motor.ResistanceOhm + rig.LoopOhm;
        var needed = (motorA * loop) + counterV;
        if (!(motorA > 0 && needed > 0))
        {
            return Fall(0, busV => At(busV, 0, 0, loop)) is { } idle
                ? idle with
                {
                    MotorA = motorA,
                }
                : null;
        }

        TwinPoint Point(double busV) => At(busV, (needed + diodeV) / (busV + diodeV), motorA, loop);
        var found = Fall(needed, Point);
        // A ripple as large as the current itself runs dry: there the rule of ripple on a bare bus no longer holds.
        return Bare && found is { } at && at.RippleA2 > motorA * motorA
            ? null
            : found ?? Open(motorA);
    }

    /// <summary>Fully on, turning at a speed.</summary>
    public TwinPoint? Full(double counterV)
    {
        var loop = rig.Motor.ResistanceOhm + rig.LoopOhm;
        return Fall(0, busV => At(busV, 1, Math.Max(0, (busV - counterV) / loop), loop));
    }

    private TwinPoint At(double busV, double duty, double motorA, double loop)
    {
        var others = rig.Auxiliary.CurrentA + (rig.Auxiliary.PowerW / busV);
        var switches = duty is > 0 and < 1 && motorA > 0;
        var ripple = switches ? Ripple(busV, duty, loop) : 0;
        var heated = loop + (Bare ? duty * motors * source.ResistanceOhm : 0);
        var rippleA = ripple * heated / (busV + diodeV);
        var edgeA = switches ? edges * motorA : 0;
        var drawn = (duty * motorA) + rippleA + edgeA;
        var on = duty > 0 ? others + (motors * drawn / duty) : others;
        var diodes = switches ? diodeV * ((motorA * (1 - duty)) - rippleA) : 0;
        return new(
            busV,
            duty,
            motorA,
            ripple,
            others,
            on,
            others + (motors * drawn),
            diodes + (edgeA * busV)
        );
    }

    // The highest bus voltage at which the pack gives what is drawn; null where there is none above the least.
    private TwinPoint? Fall(double leastV, Func<double, TwinPoint> point)
    {
        double Left(double busV)
        {
            var at = point(busV);
            return source.OpenCircuitV
                - (source.ResistanceOhm * (Bare ? at.OnA : at.BatteryA))
                - busV;
        }

        var step = (source.OpenCircuitV - leastV) / Steps;
        for (var n = 1; n <= Steps; n++)
        {
            var low = source.OpenCircuitV - (n * step);
            if (low > 0 && Left(low) >= 0)
            {
                var high = low + step;
                for (var half = 0; half < 60; half++)
                {
                    var middle = (low + high) / 2;
                    (low, high) = Left(middle) >= 0 ? (middle, high) : (low, middle);
                }

                return point(low);
            }
        }

        return null;
    }

    // Out of reach: fully on, what the pack has left, or what it gives at its greatest power.
    private TwinPoint? Open(double motorA)
    {
        var ohm = source.ResistanceOhm;
        var steadyV = source.OpenCircuitV - (ohm * rig.Auxiliary.CurrentA);
        var left = steadyV - (ohm * motors * motorA);
        for (var n = 0; n < 500 && left > 0; n++)
        {
            left = steadyV - (ohm * ((motors * motorA) + (rig.Auxiliary.PowerW / left)));
        }

        var busV = Math.Max(left, steadyV / 2);
        var battery = rig.Auxiliary.CurrentA + ((steadyV - busV) / ohm);
        return steadyV > 0 ? new(busV, 1, motorA, 0, 0, battery, battery, 0, false) : null;
    }

    private double Ripple(double busV, double duty, double loop)
    {
        if (double.IsNaN(rig.Motor.InductanceH))
        {
            return 0;
        }

        var sum = 0.0;
        var turn = Math.Tau * rig.Controller.PwmFrequencyHz * rig.Motor.InductanceH;
        for (var k = 400; k > 0; k--)
        {
            var peakV = 2 * (busV + diodeV) * Math.Sin(Math.PI * k * duty) / (Math.PI * k);
            sum += peakV * peakV / 2 / ((loop * loop) + (turn * turn * k * k));
        }

        return sum;
    }
}
