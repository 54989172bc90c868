using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Thermal;

/// <summary>What heats a motor for a while: a torque at a speed, a held current, or a held throttle (M6).</summary>
/// <remarks>
/// A torque asks for more current as the magnet warms and weakens; a held throttle drives less as the winding warms and
/// grows resistive; a held current is what a controller limits to.
/// </remarks>
/// <param name="Follows">What the current follows.</param>
/// <param name="ShaftNm">Shaft or holding torque [N·m], where the current follows it.</param>
/// <param name="HeldA">Motor current [A], where it is held.</param>
/// <param name="ByWindingA">Motor current from the winding's temperature [A from °C], where the throttle is held.</param>
/// <param name="SpeedRadPerS">Speed [rad/s].</param>
/// <param name="RippleA2">Mean square of the ripple [A²].</param>
/// <param name="Uneven">Unevenness of the heat, 1 while turning.</param>
public sealed record Drive(
    DriveKind Follows,
    double ShaftNm,
    double HeldA,
    Func<double, double>? ByWindingA,
    double SpeedRadPerS,
    double RippleA2,
    double Uneven
)
{
    /// <summary>Nothing.</summary>
    public static readonly Drive Rest = Current(0, 0);

    /// <summary>A torque at a speed.</summary>
    /// <param name="shaftNm">Shaft torque [N·m]; negative when braking.</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="rippleA2">Mean square of the ripple [A²].</param>
    public static Drive Torque(double shaftNm, double speedRadPerS, double rippleA2 = 0) =>
        new(DriveKind.Torque, shaftNm, double.NaN, null, speedRadPerS, rippleA2, 1);

    /// <summary>A torque held at standstill or nearly so; the motor's friction is already taken off it.</summary>
    /// <param name="holdingNm">Torque [N·m].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Holding(double holdingNm, double uneven = 1) =>
        new(DriveKind.Holding, holdingNm, double.NaN, null, 0, 0, uneven);

    /// <summary>A held current.</summary>
    /// <param name="currentA">Motor current [A].</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="rippleA2">Mean square of the ripple [A²].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Current(
        double currentA,
        double speedRadPerS,
        double rippleA2 = 0,
        double uneven = 1
    ) => new(DriveKind.Current, double.NaN, currentA, null, speedRadPerS, rippleA2, uneven);

    /// <summary>A held throttle on a locked motor.</summary>
    /// <param name="byWindingA">Motor current from the winding's temperature [A from °C].</param>
    /// <param name="rippleA2">Mean square of the ripple [A²].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Throttle(Func<double, double> byWindingA, double rippleA2, double uneven) =>
        new(DriveKind.Throttle, double.NaN, double.NaN, byWindingA, 0, rippleA2, uneven);

    /// <summary>Longest piece in which the current may be held [s].</summary>
    public double LongestPieceS =>
        Follows switch
        {
            DriveKind.Torque or DriveKind.Holding => 10,
            DriveKind.Throttle => 1,
            _ => double.PositiveInfinity,
        };

    /// <summary>Motor current at given temperatures [A].</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="windingC">Winding temperature [°C].</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public double CurrentA(Motor motor, double windingC, double magnetC) =>
        Follows switch
        {
            DriveKind.Torque => motor.CurrentFor(ShaftNm, SpeedRadPerS, magnetC),
            DriveKind.Holding => ShaftNm / motor.TorqueConstantAt(magnetC),
            DriveKind.Throttle => ByWindingA!(windingC),
            _ => HeldA,
        };

    /// <summary>The heat network under this drive, the current held as given temperatures ask for it.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="x">Winding and case.</param>
    public TwoNode Network(MotorWarmth warmth, MotorTemperature x)
    {
        var motor = warmth.Motor;
        var current = CurrentA(motor, x.WindingC, warmth.MagnetC(x));
        return new(
            motor.Heat,
            motor.ResistanceOhm,
            Uneven * ((current * current) + RippleA2),
            motor.SpinHeatW(SpeedRadPerS) + (motor.BrushDropV * Math.Abs(current)),
            warmth.AmbientC
        );
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
