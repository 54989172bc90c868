using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Thermal;

/// <summary>What heats a motor for a while: a torque at a speed, a held current, or a held throttle (M6).</summary>
/// <remarks>
/// A torque asks for more current as the magnet warms and weakens; a held throttle drives less as the winding warms and
/// grows resistive; a held current is what a controller limits to. The ripple of slow switching follows the duty, which
/// follows the temperatures.
/// </remarks>
/// <param name="Follows">What the current follows.</param>
/// <param name="ShaftNm">Shaft or holding torque [N·m], where the current follows it.</param>
/// <param name="HeldA">Motor current [A], where it is held.</param>
/// <param name="ByWinding">Motor current from the winding's temperature [°C], where the throttle is held.</param>
/// <param name="SpeedRadPerS">Speed [rad/s].</param>
/// <param name="Ripple">Mean square of the ripple from winding and magnet temperature [A² from °C]; null for none.</param>
/// <param name="Uneven">Unevenness of the heat, 1 while turning.</param>
public sealed record Drive(
    DriveKind Follows,
    double ShaftNm,
    double HeldA,
    Func<double, RippledCurrent>? ByWinding,
    double SpeedRadPerS,
    Func<double, double, double>? Ripple,
    double Uneven
)
{
    /// <summary>Nothing.</summary>
    public static readonly Drive Rest = Current(0, 0);

    /// <summary>A torque at a speed.</summary>
    /// <param name="shaftNm">Shaft torque [N·m]; negative when braking.</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="ripple">Mean square of the ripple from winding and magnet temperature [A² from °C].</param>
    public static Drive Torque(
        double shaftNm,
        double speedRadPerS,
        Func<double, double, double>? ripple = null
    ) => new(DriveKind.Torque, shaftNm, double.NaN, null, speedRadPerS, ripple, 1);

    /// <summary>A torque held at standstill or nearly so; the motor's friction is already taken off it.</summary>
    /// <param name="holdingNm">Torque [N·m].</param>
    /// <param name="speedRadPerS">Speed of creeping back [rad/s].</param>
    /// <param name="ripple">Mean square of the ripple from winding and magnet temperature [A² from °C].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Holding(
        double holdingNm,
        double speedRadPerS,
        Func<double, double, double>? ripple = null,
        double uneven = 1
    ) => new(DriveKind.Holding, holdingNm, double.NaN, null, speedRadPerS, ripple, uneven);

    /// <summary>A held current.</summary>
    /// <param name="currentA">Motor current [A].</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="ripple">Mean square of the ripple from winding and magnet temperature [A² from °C].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Current(
        double currentA,
        double speedRadPerS,
        Func<double, double, double>? ripple = null,
        double uneven = 1
    ) => new(DriveKind.Current, double.NaN, currentA, null, speedRadPerS, ripple, uneven);

    /// <summary>A held throttle on a locked motor.</summary>
    /// <param name="byWinding">Motor current from the winding's temperature [°C].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Throttle(Func<double, RippledCurrent> byWinding, double uneven) =>
        new(DriveKind.Throttle, double.NaN, double.NaN, byWinding, 0, null, uneven);

    /// <summary>Whether current and ripple stay whatever the temperatures do.</summary>
    public bool Held => Follows == DriveKind.Current && Ripple is null;

    /// <summary>Motor current at given temperatures [A].</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public double CurrentA(Motor motor, double windingC, double magnetC) =>
        Follows switch
        {
            DriveKind.Torque => motor.CurrentFor(ShaftNm, SpeedRadPerS, magnetC),
            DriveKind.Holding => ShaftNm / motor.TorqueConstantAt(magnetC),
            DriveKind.Throttle => ByWinding!(windingC).MeanA,
            _ => HeldA,
        };

    /// <summary>Motor current and its ripple at given temperatures.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public RippledCurrent At(Motor motor, double windingC, double magnetC) =>
        Follows == DriveKind.Throttle
            ? ByWinding!(windingC)
            : new(
                CurrentA(motor, windingC, magnetC),
                Ripple is null ? 0 : Ripple(windingC, magnetC)
            );

    /// <summary>
    /// The heat network under this drive near given temperatures: the current held as they ask for it; at a held throttle,
    /// where the current falls as the winding warms, the heat along its tangent.
    /// </summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="x">Winding and case.</param>
    public TwoNode Network(MotorWarmth warmth, MotorTemperature x)
    {
        var motor = warmth.Motor;
        var magnet = warmth.MagnetC(x);
        var current = At(motor, x.WindingC, magnet);
        var brushesW = motor.BrushDropV * Math.Abs(current.MeanA);
        var constant = motor.SpinHeatW(SpeedRadPerS) + brushesW;
        if (Follows == DriveKind.Throttle)
        {
            return new(motor.Heat, Tangent(motor, x.WindingC, magnet), constant, warmth.AmbientC);
        }

        var square = Uneven * current.MeanSquareA2;
        return new(motor.Heat, motor.ResistanceOhm, square, constant, warmth.AmbientC);
    }

    private CopperHeat Tangent(Motor motor, double touchC, double magnetC)
    {
        return CopperHeat.Along(Copper, touchC);

        double Copper(double windingC) =>
            Uneven * At(motor, windingC, magnetC).MeanSquareA2 * motor.ResistanceAt(windingC);
    }
}

/// <summary>What a motor's current follows.</summary>
public enum DriveKind
{
    /// <summary>The torque asked for.</summary>
    Torque,

    /// <summary>A torque held against the slope, friction taken off.</summary>
    Holding,

    /// <summary>Nothing: it is held.</summary>
    Current,

    /// <summary>The throttle, against the winding's resistance.</summary>
    Throttle,
}
