using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Thermal;

/// <summary>What heats a motor for a while: a torque at a speed, or a fixed current (M6).</summary>
/// <remarks>
/// A torque asks for more current as the magnet warms and weakens; a fixed current is what a controller limits to.
/// </remarks>
/// <param name="ShaftNm">Shaft torque [N·m]; NaN when the current is fixed.</param>
/// <param name="FixedA">Motor current [A]; NaN when the torque is.</param>
/// <param name="SpeedRadPerS">Speed [rad/s].</param>
/// <param name="RippleA2">Mean square of the ripple [A²].</param>
/// <param name="Uneven">Unevenness of the heat, 1 while turning.</param>
public readonly record struct Drive(
    double ShaftNm,
    double FixedA,
    double SpeedRadPerS,
    double RippleA2,
    double Uneven
)
{
    /// <summary>Nothing.</summary>
    public static readonly Drive Rest = new(double.NaN, 0, 0, 0, 1);

    /// <summary>A torque at a speed.</summary>
    /// <param name="shaftNm">Shaft torque [N·m]; negative when braking.</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="rippleA2">Mean square of the ripple [A²].</param>
    public static Drive Torque(double shaftNm, double speedRadPerS, double rippleA2 = 0) =>
        new(shaftNm, double.NaN, speedRadPerS, rippleA2, 1);

    /// <summary>A fixed current.</summary>
    /// <param name="currentA">Motor current [A].</param>
    /// <param name="speedRadPerS">Speed [rad/s].</param>
    /// <param name="rippleA2">Mean square of the ripple [A²].</param>
    /// <param name="uneven">Unevenness of the heat.</param>
    public static Drive Current(
        double currentA,
        double speedRadPerS,
        double rippleA2 = 0,
        double uneven = 1
    ) => new(double.NaN, currentA, speedRadPerS, rippleA2, uneven);

    /// <summary>Whether the current follows the magnet's temperature.</summary>
    public bool FollowsMagnet => double.IsNaN(FixedA);

    /// <summary>Motor current with the magnet at a temperature [A].</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    public double CurrentA(Motor motor, double magnetC) =>
        FollowsMagnet ? motor.CurrentFor(ShaftNm, SpeedRadPerS, magnetC) : FixedA;

    /// <summary>The heat network under this drive, magnet at a temperature.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="magnetC">Magnet temperature [°C].</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    public TwoNode Network(Motor motor, double magnetC, double ambientC)
    {
        var current = CurrentA(motor, magnetC);
        return new(
            motor.Heat,
            motor.ResistanceOhm,
            Uneven * ((current * current) + RippleA2),
            motor.SpinHeatW(SpeedRadPerS) + (motor.BrushDropV * Math.Abs(current)),
            ambientC
        );
    }
}
