namespace PowerCheck.Model.Drivetrain;

/// <summary>Motor, controller and bus at one current and speed (M3).</summary>
/// <param name="MotorA">Mean motor current [A].</param>
/// <param name="RippleA2">Mean square of the ripple [A²]; 0 from 8 kHz of switching on.</param>
/// <param name="MotorV">Mean voltage at the motor's terminals [V].</param>
/// <param name="SpeedRadPerS">Motor speed [rad/s].</param>
/// <param name="Bus">The bus.</param>
/// <param name="ControllerW">Heat in one controller, without the receiver supply [W].</param>
public readonly record struct OperatingPoint(
    double MotorA,
    double RippleA2,
    double MotorV,
    double SpeedRadPerS,
    Bus Bus,
    double ControllerW
)
{
    /// <summary>Motor current with its ripple.</summary>
    public RippledCurrent Current => new(MotorA, RippleA2);

    /// <summary>Root mean square motor current [A].</summary>
    public double MotorRmsA => Math.Sqrt(Current.MeanSquareA2);

    /// <summary>The point at which each motor is fed a current at a speed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="motorA">Motor current [A]; negative when the motor brakes.</param>
    /// <param name="speedRadPerS">Motor speed [rad/s].</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public static OperatingPoint Feeding(
        Rig rig,
        Source source,
        double motorA,
        double speedRadPerS,
        double windingC = 20,
        double magnetC = 20
    )
    {
        var motor = rig.Motor;
        var resistance = motor.ResistanceAt(windingC);
        var backEmf = motor.TorqueConstantAt(magnetC) * speedRadPerS;
        var motorV = (motorA * resistance) + backEmf + (motorA > 0 ? motor.BrushDropV : 0);
        var needed = motorV + (motorA * rig.LoopOhm);
        var (bus, loss) = FedBus.Of(rig, source, motorA, needed, resistance);
        if (!bus.Reached)
        {
            motorV = Math.Max(0, bus.BusV - (motorA * rig.LoopOhm));
        }

        return new(
            motorA,
            loss.RippleA2,
            motorV,
            speedRadPerS,
            bus,
            (motorA * motorA * rig.Controller.OnResistanceOhm) + loss.ControllerW
        );
    }

    /// <summary>The point that settles at a duty and a speed; at full throttle the duty is 1.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="duty">Duty, above 0 to 1.</param>
    /// <param name="speedRadPerS">Motor speed [rad/s].</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    public static OperatingPoint AtDuty(
        Rig rig,
        Source source,
        double duty,
        double speedRadPerS,
        double windingC = 20
    )
    {
        var resistance = rig.Motor.ResistanceAt(windingC);
        var bridge = Bridge.Of(rig.Controller);
        var loop = SwitchedLoop.Of(rig, resistance);
        BridgeLoss loss = default;
        (Bus Bus, double MotorA) at;
        BridgeLoss last;
        var tries = 0;
        do
        {
            last = loss;
            at = Bus.AtDuty(
                source,
                rig.Auxiliary,
                rig.Vehicle.MotorCount,
                duty,
                resistance + rig.LoopOhm,
                rig.Motor.CounterVoltage(speedRadPerS),
                bridge,
                last
            );
            loss = BridgeLoss.Of(rig, source, at.Bus, at.MotorA, loop);
        } while (!loss.Near(last) && ++tries < 40);

        var (bus, current) = at;
        return new(
            current,
            loss.RippleA2,
            (duty * bus.BusV) - ((1 - duty) * bridge.FreewheelV) - (current * rig.LoopOhm),
            speedRadPerS,
            bus,
            (current * current * rig.Controller.OnResistanceOhm) + loss.ControllerW
        );
    }
}
