using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Drivetrain;

/// <summary>What is lost beside the mean motor current's heat in one motor and its controller (M3).</summary>
/// <param name="ControllerW">In the freewheel path and in switching [W].</param>
/// <param name="RippleA2">Mean square of the ripple [A²]; 0 from 8 kHz of switching on.</param>
/// <param name="RippleW">Heat of the ripple in the whole loop, as it is drawn from the bus [W].</param>
public readonly record struct BridgeLoss(double ControllerW, double RippleA2, double RippleW)
{
    /// <summary>Nothing.</summary>
    public static readonly BridgeLoss None;

    /// <summary>All of it [W].</summary>
    public double DrawnW => ControllerW + RippleW;

    /// <summary>The losses at a bus and a motor current.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="bridge">Its bridge.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="bus">The bus.</param>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="motorOhm">Resistance of the motor [Ω].</param>
    public static BridgeLoss Of(
        Rig rig,
        Bridge bridge,
        Source source,
        Bus bus,
        double motorA,
        double motorOhm
    )
    {
        var ripple = RippleOf(rig, bridge, bus, motorA, motorOhm);
        // Without capacitors the pack carries the ripple of all motors too, while the bridge is on.
        var pack = bridge.Unsmoothed ? bus.Duty * rig.Vehicle.MotorCount * source.ResistanceOhm : 0;
        return new(
            bridge.LossW(motorA, bus),
            ripple,
            ripple > 0 ? ripple * (motorOhm + rig.LoopOhm + pack) : ripple
        );
    }

    /// <summary>Whether another one is the same to within rounding.</summary>
    /// <param name="other">The other one.</param>
    public bool Near(BridgeLoss other) => Math.Abs(DrawnW - other.DrawnW) <= 1e-12 * (1 + DrawnW);

    private static double RippleOf(
        Rig rig,
        Bridge bridge,
        Bus bus,
        double motorA,
        double motorOhm
    ) =>
        rig.Controller.PwmFrequencyHz >= ControllerDefaults.SmoothFromHz
        || bus.Duty is <= 0 or >= 1
        || motorA <= 0
            ? 0
            : Ripple.MeanSquare(
                bus.BusV + bridge.FreewheelV,
                bus.Duty,
                motorOhm + rig.LoopOhm,
                rig.Motor.InductanceH,
                rig.Controller.PwmFrequencyHz
            );
}
