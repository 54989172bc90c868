using PowerCheck.Model.Accessories;

namespace PowerCheck.Model.Drivetrain;

/// <summary>The bus while a real bridge feeds each motor a current, and what is lost beside (M3).</summary>
/// <param name="Bus">The bus.</param>
/// <param name="Loss">Losses of freewheeling, switching and ripple in one motor and its controller.</param>
public readonly record struct FedBus(Bus Bus, BridgeLoss Loss)
{
    private const int MostSteps = 60;

    /// <summary>The bus at a current and a voltage that the bridge must make for it.</summary>
    /// <remarks>
    /// V = E − Rs·I(V), where duty, losses and so the current that the pack carries are known from V. The right side bends
    /// one way only, so that steps along tangent and chords from the open circuit come down to the upper root, if there is one.
    /// </remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="neededV">Voltage that the bridge must make [V].</param>
    /// <param name="motorOhm">Resistance of the motor [Ω].</param>
    public static FedBus Of(Rig rig, Source source, double motorA, double neededV, double motorOhm)
    {
        var ideal = Bus.Feeding(source, rig.Auxiliary, rig.Vehicle.MotorCount, motorA, neededV);
        if (!(neededV > 0 && motorA > 0) || double.IsNaN(ideal.BusV) || Lossless(rig))
        {
            return new(ideal, BridgeLoss.Of(rig, source, ideal, motorA, motorOhm));
        }

        var asked = new Asked(rig, source, motorA, neededV, SwitchedLoop.Of(rig, motorOhm));
        var root = asked.Descend(source.OpenCircuitV, neededV);
        return root >= neededV ? asked.At(root) : OutOfReach(rig, source, motorA, neededV);
    }

    private static bool Lossless(Rig rig) => Bridge.Of(rig.Controller) == default && !rig.Ripples;

    // Fully on, nothing switches, so that nothing is lost beside.
    private static FedBus OutOfReach(Rig rig, Source source, double motorA, double neededV) =>
        new(
            Bus.OutOfReach(source, rig.Auxiliary, rig.Vehicle.MotorCount * motorA, neededV),
            default
        );

    /// <summary>What is asked of the bus.</summary>
    private readonly struct Asked(
        Rig rig,
        Source source,
        double motorA,
        double neededV,
        SwitchedLoop loop
    )
    {
        private readonly Bridge bridge = Bridge.Of(rig.Controller);
        private readonly AuxiliaryLoad auxiliary = rig.Auxiliary;
        private readonly double motors = rig.Vehicle.MotorCount;

        // What is drawn at a bus voltage.
        public FedBus At(double busV)
        {
            var duty = bridge.DutyFor(neededV, busV);
            var others = auxiliary.CurrentA + (auxiliary.PowerW / busV);
            var bus = new Bus(busV, duty, double.NaN, others, true, false);
            var loss = BridgeLoss.Of(rig, source, bus, motorA, loop);
            return new(bus with { BatteryA = others + MeanA(bus, loss) }, loss);
        }

        // By how much the pack would be above a bus voltage with what is then drawn.
        private double LeftV(double busV)
        {
            var (bus, loss) = At(busV);
            var carried = bridge.Unsmoothed ? motors * (motorA + loss.LiftA) : MeanA(bus, loss);
            return source.OpenCircuitV - (source.ResistanceOhm * (bus.AuxiliaryA + carried)) - busV;
        }

        // Mean current of all motors.
        private double MeanA(Bus bus, BridgeLoss loss) =>
            motors * ((bus.Duty * motorA) + (loss.BesidesW / bus.BusV));

        // Steps down from a voltage along the chord of the last two, first along the tangent; NaN where the slope turns before
        // a root is found, or under the least voltage.
        public double Descend(double fromV, double leastV)
        {
            const double Small = 1e-6;
            var (v, leftV) = (fromV, LeftV(fromV));
            var slope = (leftV - LeftV(v - Small)) / Small;
            for (var n = 0; n < MostSteps && v >= leastV; n++)
            {
                if (!(slope < 0))
                {
                    return double.NaN;
                }

                var step = leftV / slope;
                if (Math.Abs(step) < 1e-13 * fromV)
                {
                    return v - step;
                }

                var last = leftV;
                v -= step;
                leftV = LeftV(v);
                slope = (last - leftV) / step;
            }

            return v;
        }
    }
}
