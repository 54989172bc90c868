using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>What a rig's motor is driven by on a half-charged pack, as it heats the motor (M6, M8).</summary>
public static class Drives
{
    /// <summary>Turning a torque at a speed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="shaftNm">Shaft torque of one motor [N·m]; negative when it brakes.</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    public static Drive Turning(Rig rig, double shaftNm, double speedRadPerS)
    {
        var motor = rig.Motor;
        var source = Half(rig);
        OperatingPoint At(double windingC, double magnetC) =>
            OperatingPoint.Feeding(
                rig,
                source,
                motor.CurrentFor(shaftNm, speedRadPerS, magnetC),
                speedRadPerS,
                windingC,
                magnetC
            );
        return Drive.Torque(shaftNm, speedRadPerS, Ripple(rig, At));
    }

    /// <summary>Holding the rig on a slope; nothing where friction holds it or nothing does.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="slopeRad">Slope [rad].</param>
    public static Drive Holding(Rig rig, double slopeRad)
    {
        var motor = rig.Motor;
        var torque = WheelLoad.HoldingNm(rig, slopeRad);
        if (torque <= 0 || rig.Controller.Hold == HoldMode.None)
        {
            return Drive.Rest;
        }

        if (rig.Controller.Hold == HoldMode.DragBrake)
        {
            var (current, speed) = HoldCase.DragBrake(rig, torque);
            return Drive.Holding(current * motor.TorqueConstantNmPerA, speed);
        }

        var source = Half(rig);
        OperatingPoint At(double windingC, double magnetC) =>
            OperatingPoint.Feeding(
                rig,
                source,
                torque / motor.TorqueConstantAt(magnetC),
                0,
                windingC,
                magnetC
            );
        return Drive.Holding(torque, 0, Ripple(rig, At), motor.Heat.LockedHeatFactor);
    }

    /// <summary>Wedged at a throttle.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="throttle">Throttle, above 0 to 1.</param>
    public static Drive Jammed(Rig rig, double throttle)
    {
        var source = Half(rig);
        return Drive.Throttle(
            windingC => Wedged(rig, source, throttle, windingC).Current,
            rig.Motor.Heat.LockedHeatFactor
        );
    }

    /// <summary>The operating point of a locked motor at a throttle, or at the controller's limit.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="source">Pack and battery leads.</param>
    /// <param name="throttle">Throttle, above 0 to 1.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    public static OperatingPoint Wedged(Rig rig, Source source, double throttle, double windingC)
    {
        var point = OperatingPoint.AtDuty(rig, source, throttle, 0, windingC);
        return point.MotorA > rig.Controller.CurrentLimitA
            ? OperatingPoint.Feeding(rig, source, rig.Controller.CurrentLimitA, 0, windingC)
            : point;
    }

    /// <summary>
    /// Mean square of the ripple at an operating point that follows winding and magnet temperature [A² from °C]; null where
    /// none is counted.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="at">The operating point from winding and magnet temperature [°C].</param>
    public static Func<double, double, double>? Ripple(
        Rig rig,
        Func<double, double, OperatingPoint> at
    ) => !rig.Ripples ? null : (windingC, magnetC) => at(windingC, magnetC).RippleA2;

    private static Source Half(Rig rig) => rig.SourceAt(CaseRunner.HalfCharge, true);
}
