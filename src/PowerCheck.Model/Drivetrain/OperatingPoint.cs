using PowerCheck.Model.Controllers;

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
    /// <summary>Root mean square motor current [A].</summary>
    public double MotorRmsA => Math.Sqrt((MotorA * MotorA) + RippleA2);

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
        var extra = 0.0;
        Bus bus;
        var tries = 0;
        double last;
        // Diode and switching losses depend on the duty, which they change a little: a quick contraction.
        do
        {
            bus = Bus.Feeding(
                source,
                rig.Auxiliary,
                rig.Vehicle.MotorCount,
                motorA,
                needed,
                extra,
                Smoothed(rig.Controller)
            );
            last = extra;
            extra = ExtraW(rig.Controller, motorA, bus);
        } while (Math.Abs(extra - last) > 1e-12 * (1 + extra) && ++tries < 40);

        if (!bus.Reached)
        {
            motorV = Math.Max(0, bus.BusV - (motorA * rig.LoopOhm));
        }

        return new(
            motorA,
            RippleOf(rig, bus, resistance),
            motorV,
            speedRadPerS,
            bus,
            (motorA * motorA * rig.Controller.OnResistanceOhm) + extra
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
        var (bus, current) = Bus.AtDuty(
            source,
            rig.Auxiliary,
            rig.Vehicle.MotorCount,
            duty,
            resistance + rig.LoopOhm,
            rig.Motor.CounterVoltage(speedRadPerS),
            Smoothed(rig.Controller)
        );
        return new(
            current,
            RippleOf(rig, bus, resistance),
            (duty * bus.BusV) - (current * rig.LoopOhm),
            speedRadPerS,
            bus,
            (current * current * rig.Controller.OnResistanceOhm)
                + ExtraW(rig.Controller, current, bus)
        );
    }

    /// <summary>
    /// Losses of a controller beyond its switches' resistance [W]: 0.8 V·i·(1 − D) of a freewheel diode, and ½·V·i·t·f of
    /// switching. Source: slva.
    /// </summary>
    /// <param name="controller">The controller.</param>
    /// <param name="motorA">Motor current [A].</param>
    /// <param name="bus">The bus.</param>
    public static double ExtraW(Controller controller, double motorA, Bus bus)
    {
        var diode =
            controller.Freewheel == Freewheel.Diode
                ? Controller.DiodeDropV * Math.Abs(motorA) * (1 - bus.Duty)
                : 0;
        var edges =
            bus.Duty < 1
                ? 0.5
                    * bus.BusV
                    * Math.Abs(motorA)
                    * controller.EdgeTimeS
                    * controller.PwmFrequencyHz
                : 0;
        return diode + edges;
    }

    /// <summary>Whether a controller's capacitors smooth the bus: from 4 kHz of switching on, assumed.</summary>
    /// <param name="controller">The controller.</param>
    public static bool Smoothed(Controller controller) =>
        controller.PwmFrequencyHz >= Ripple.UnsmoothedBelowHz;

    private static double RippleOf(Rig rig, Bus bus, double resistance) =>
        rig.Controller.PwmFrequencyHz >= ControllerDefaults.SmoothFromHz || bus.Duty is <= 0 or >= 1
            ? 0
            : Ripple.MeanSquare(
                bus.BusV,
                bus.Duty,
                resistance + rig.LoopOhm,
                rig.Motor.InductanceH,
                rig.Controller.PwmFrequencyHz
            );
}
