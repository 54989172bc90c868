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

        (FedBus Fed, double LeftV) At(double busV) =>
            Drawn(rig, source, motorA, neededV, motorOhm, busV);
        var root = Descend(busV => At(busV).LeftV, source.OpenCircuitV, neededV);
        return root >= neededV ? At(root).Fed : OutOfReach(rig, source, motorA, neededV);
    }

    private static bool Lossless(Rig rig) => Bridge.Of(rig.Controller) == default && !rig.Ripples;

    // What is drawn at a bus voltage, and by how much the pack would then be above it.
    private static (FedBus Fed, double LeftV) Drawn(
        Rig rig,
        Source source,
        double motorA,
        double neededV,
        double motorOhm,
        double busV
    )
    {
        var bridge = Bridge.Of(rig.Controller);
        var auxiliary = rig.Auxiliary;
        var motors = rig.Vehicle.MotorCount;
        var duty = bridge.DutyFor(neededV, busV);
        var others = auxiliary.CurrentA + (auxiliary.PowerW / busV);
        var bus = new Bus(busV, duty, double.NaN, others, true, false);
        var loss = BridgeLoss.Of(rig, source, bus, motorA, motorOhm);
        var mean = motors * ((duty * motorA) + (loss.BesidesW / busV));
        var carried = bridge.Unsmoothed ? motors * (motorA + loss.LiftA) : mean;
        var left = source.OpenCircuitV - (source.ResistanceOhm * (others + carried)) - busV;
        return (new(bus with { BatteryA = others + mean }, loss), left);
    }

    // Fully on, nothing switches, so that nothing is lost beside.
    private static FedBus OutOfReach(Rig rig, Source source, double motorA, double neededV) =>
        new(
            Bus.OutOfReach(source, rig.Auxiliary, rig.Vehicle.MotorCount * motorA, neededV),
            default
        );

    // Steps down from a voltage along the chord of the last two, first along the tangent; NaN where the slope turns before a
    // root is found, or under the least voltage.
    private static double Descend(Func<double, double> left, double fromV, double leastV)
    {
        const double Small = 1e-6;
        var (v, leftV) = (fromV, left(fromV));
        var slope = (leftV - left(v - Small)) / Small;
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
            leftV = left(v);
            slope = (last - leftV) / step;
        }

        return v;
    }
}
