namespace PowerCheck.Model.Vehicles;

/// <summary>What the rig stands on and is asked to do (M4), every figure filled in.</summary>
/// <param name="AmbientC">Air temperature [°C].</param>
/// <param name="SlopeRad">Steepest slope to climb [rad].</param>
/// <param name="CreepMPerS">Creep speed [m/s].</param>
/// <param name="RollingResistance">Rolling resistance coefficient.</param>
/// <param name="Friction">Friction coefficient tire to ground.</param>
/// <param name="JamSlipFactor">Jam current over the slip current.</param>
/// <param name="HoldCreepMPerS">Creep-back speed up to which a rig counts as holding [m/s].</param>
public sealed record Road(
    double AmbientC,
    double SlopeRad,
    double CreepMPerS,
    double RollingResistance,
    double Friction,
    double JamSlipFactor,
    double HoldCreepMPerS
)
{
    /// <summary>Standard gravity [m/s²]. Source: msl.</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Force along the slope to hold a mass against gravity [N]: m·g·sin θ.</summary>
    /// <param name="massKg">Mass [kg].</param>
    /// <param name="slopeRad">Slope [rad].</param>
    public static double GradeForceN(double massKg, double slopeRad) =>
        massKg * GravityMPerS2 * Math.Sin(slopeRad);

    /// <summary>Force of rolling resistance [N]: Crr·m·g·cos θ.</summary>
    /// <param name="massKg">Mass [kg].</param>
    /// <param name="slopeRad">Slope [rad].</param>
    /// <param name="rollingResistance">Rolling resistance coefficient.</param>
    public static double RollingForceN(double massKg, double slopeRad, double rollingResistance) =>
        rollingResistance * massKg * GravityMPerS2 * Math.Cos(slopeRad);

    /// <summary>Slope at which the tires let go [rad]: atan(µ·driven share).</summary>
    /// <param name="friction">Friction coefficient.</param>
    /// <param name="drivenShare">Share of the weight on driven wheels.</param>
    public static double SlipSlopeRad(double friction, double drivenShare) =>
        Math.Atan(friction * drivenShare);
}
