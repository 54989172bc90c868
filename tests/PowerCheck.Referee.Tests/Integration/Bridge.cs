namespace PowerCheck.Referee.Tests.Integration;

/// <summary>What bus, pack and switches do at one motor current.</summary>
/// <param name="MotorA">Mean motor current [A].</param>
/// <param name="Ripple">Mean square of the ripple [A²].</param>
/// <param name="BusV">Bus voltage [V].</param>
/// <param name="Duty">Share of the time that the bridge is on.</param>
/// <param name="BatteryA">Battery current [A].</param>
/// <param name="SwitchW">Losses in one controller beyond its resistance [W].</param>
/// <param name="RadPerS">Motor speed [rad/s].</param>
internal readonly record struct Flow(
    double MotorA,
    double Ripple,
    double BusV,
    double Duty,
    double BatteryA,
    double SwitchW,
    double RadPerS = 0
);

/// <summary>
/// A bridge on a smoothed bus, from the energy of one period: the bus gives (V + V_f) times the mean current of the
/// on-time, which is what motor, ripple and freewheel path take. Bus voltages by Newton's method from the open circuit down.
/// </summary>
internal sealed class Bridge(Plain plain)
{
    /// <summary>Feeding a current against a voltage behind winding and brushes.</summary>
    public Flow Feed(double charge, double motorA, double ohm, double counterV)
    {
        var loop = ohm + plain.LoopOhm;
        var needed = (motorA * loop) + counterV;
        var openV = plain.OpenCircuitV(charge);
        if (!(motorA > 0 && needed > 0))
        {
            return Idle(openV, motorA);
        }

        Flow At(double busV) =>
            Point(busV, (needed + plain.FreewheelV) / (busV + plain.FreewheelV), motorA, loop);
        var found = Bus(openV, busV => At(busV).BatteryA);
        return found >= needed ? At(found) : Open(openV, motorA);
    }

    /// <summary>Holding a duty against a voltage behind winding and brushes.</summary>
    public Flow Hold(double charge, double duty, double ohm, double counterV)
    {
        var loop = ohm + plain.LoopOhm;
        double Current(double busV) =>
            Math.Max(0, ((duty * busV) - ((1 - duty) * plain.FreewheelV) - counterV) / loop);
        var openV = plain.OpenCircuitV(charge);
        var found = Bus(openV, busV => Point(busV, duty, Current(busV), loop).BatteryA);
        return Point(found, duty, Current(found), loop);
    }

    private Flow Point(double busV, double duty, double motorA, double loop)
    {
        var ripple = motorA > 0 && duty < 1 ? Ripple(busV, duty, loop) : 0;
        var drawn = (duty * motorA) + (ripple * loop / (busV + plain.FreewheelV));
        var edges = duty < 1 ? plain.EdgeShare * motorA : 0;
        var battery =
            plain.AuxiliaryA + (plain.AuxiliaryW / busV) + (plain.Motors * (drawn + edges));
        var freewheel = plain.FreewheelV * (motorA - drawn);
        return new(motorA, ripple, busV, duty, battery, freewheel + (edges * busV));
    }

    private Flow Idle(double openV, double motorA)
    {
        var busV = Bus(openV, v => plain.AuxiliaryA + (plain.AuxiliaryW / v));
        return new(motorA, 0, busV, 0, (openV - busV) / plain.SourceOhm, 0);
    }

    // Fully on and still short of what is asked: what is left behind the motors' current, or the greatest power.
    private Flow Open(double openV, double motorA)
    {
        var best = (openV - (plain.SourceOhm * plain.AuxiliaryA)) / 2;
        var left = Bus(
            openV,
            v => plain.AuxiliaryA + (plain.Motors * motorA) + (plain.AuxiliaryW / v)
        );
        var busV = left > best ? left : best;
        return new(motorA, 0, busV, 1, (openV - busV) / plain.SourceOhm, 0);
    }

    // The upper root of E − Rs·I(V) = V; NaN where there is none.
    private double Bus(double openV, Func<double, double> batteryA)
    {
        double Left(double v) => openV - (plain.SourceOhm * batteryA(v)) - v;
        var busV = openV;
        for (var n = 0; n < 200; n++)
        {
            var left = Left(busV);
            var slope = (Left(busV * (1 + 1e-7)) - left) / (busV * 1e-7);
            var next = busV - (left / slope);
            if (!(next > 0) || slope >= 0)
            {
                return double.NaN;
            }

            if (Math.Abs(next - busV) < 1e-12 * busV)
            {
                return next;
            }

            busV = next;
        }

        return double.NaN;
    }

    // The periodic current of a resistance and an inductance, its square integrated piece by piece.
    private double Ripple(double busV, double duty, double loop)
    {
        if (plain.Rig.Motor.InductanceMicrohenry is not { } microhenry)
        {
            return 0;
        }

        var tau = microhenry * 1e-6 / loop;
        var period = 1e-3 / plain.Rig.Controller.PwmFrequencyKhz;
        var (on, off) = (duty * period, (1 - duty) * period);
        var most = (busV + plain.FreewheelV) / loop;
        var high = most * (1 - Math.Exp(-on / tau)) / (1 - Math.Exp(-period / tau));
        var low = high * Math.Exp(-off / tau);
        var (fall, square) = (1 - Math.Exp(-on / tau), 1 - Math.Exp(-2 * on / tau));
        var rising =
            (most * most * on)
            + (2 * most * (low - most) * tau * fall)
            + ((low - most) * (low - most) * tau / 2 * square);
        var falling = high * high * tau / 2 * (1 - Math.Exp(-2 * off / tau));
        return ((rising + falling) / period) - (duty * duty * most * most);
    }
}
