namespace PowerCheck.Model.Drivetrain;

/// <summary>What is lost and drawn beside the mean motor current's own heat in one motor and its controller (M3).</summary>
/// <param name="ControllerW">In the freewheel path and in switching [W].</param>
/// <param name="RippleA2">Mean square of the ripple [A²]; 0 where the inductance is not known.</param>
/// <param name="RippleW">Heat of the ripple in the motor loop [W].</param>
/// <param name="BesidesW">Drawn from the bus beside the share D of the motor current [W].</param>
/// <param name="LiftA">What the motor current is more while the bridge is on than in the mean [A].</param>
public readonly record struct BridgeLoss(
    double ControllerW,
    double RippleA2,
    double RippleW,
    double BesidesW,
    double LiftA
)
{
    /// <summary>All of it [W].</summary>
    public double DrawnW => ControllerW + RippleW;

    /// <summary>The losses at a bus and a motor current.</summary>
    /// <remarks>
    /// A rippling current is more while the bridge is on than in the mean, so that the freewheel path carries less: the
    /// bridge draws D·i + ripple²·R/(V + V_f), and V_f·(i·(1 − D) − ripple²·R/(V + V_f)) is lost on the way back.
    /// </remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="bus">The bus.</param>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="motorOhm">Resistance of the motor [Ω].</param>
    public static BridgeLoss Of(Rig rig, Source source, Bus bus, double motorA, double motorOhm) =>
        Of(rig, source, bus, motorA, SwitchedLoop.Of(rig, motorOhm));

    /// <summary>The losses at a bus and a motor current.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="bus">The bus.</param>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="loop">The loop of the motor.</param>
    internal static BridgeLoss Of(Rig rig, Source source, Bus bus, double motorA, SwitchedLoop loop)
    {
        var bridge = Bridge.Of(rig.Controller);
        var edgeW = bridge.EdgeW(motorA, bus);
        var lossW = bridge.LossW(motorA, bus);
        var ripple = RippleOf(loop, bridge, bus, motorA);
        if (ripple == 0)
        {
            return new(lossW, 0, 0, edgeW, Lift(edgeW, bus));
        }

        // Without capacitors the pack carries the ripple of all motors too, while the bridge is on.
        var pack = bridge.Unsmoothed ? bus.Duty * rig.Vehicle.MotorCount * source.ResistanceOhm : 0;
        var drawnA = ripple * (loop.Ohm + pack) / (bus.BusV + bridge.FreewheelV);
        var besides = edgeW + (drawnA * bus.BusV);
        return new(
            lossW - (drawnA * bridge.FreewheelV),
            ripple,
            ripple * loop.Ohm,
            besides,
            Lift(besides, bus)
        );
    }

    /// <summary>Whether another one is the same to within rounding.</summary>
    /// <param name="other">The other one.</param>
    public bool Near(BridgeLoss other) => Math.Abs(DrawnW - other.DrawnW) <= 1e-12 * (1 + DrawnW);

    private static double Lift(double besidesW, Bus bus) =>
        besidesW > 0 ? besidesW / (bus.Duty * bus.BusV) : 0;

    private static double RippleOf(SwitchedLoop loop, Bridge bridge, Bus bus, double motorA) =>
        !loop.Counts || bus.Duty is <= 0 or >= 1 || motorA <= 0
            ? 0
            : Ripple.MeanSquare(bus.BusV + bridge.FreewheelV, bus.Duty, loop);
}
