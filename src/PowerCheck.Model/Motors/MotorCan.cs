using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Motors;

/// <summary>Mass and outer size of a motor; NaN is not known.</summary>
/// <param name="MassKg">Mass [kg].</param>
/// <param name="DiameterM">Can diameter [m].</param>
/// <param name="LengthM">Can length [m].</param>
public sealed record MotorCan(double MassKg, double DiameterM, double LengthM)
{
    /// <summary>Mass over the can's volume [kg/m³], assumed.</summary>
    public const double DensityKgPerM3 = 3500;

    /// <summary>Can length over its diameter where only one is known, assumed.</summary>
    public const double LengthOverDiameter = 1.4;

    /// <summary>Surface of side and both ends [m²]. Source: definition.</summary>
    public double SurfaceM2 =>
        (Math.PI * DiameterM * LengthM) + (Math.PI / 2 * DiameterM * DiameterM);

    /// <summary>Mass from size or size from mass; not known when neither is given.</summary>
    /// <param name="label">What the box says.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static MotorCan Complete(MotorLabel label, Ledger ledger)
    {
        if (label.MassKg is null && label.CanDiameterM is null)
        {
            var unknown = ledger.Known(null, "motor.massG", Unit.Gram, 0.02, 1);
            return new(unknown, double.NaN, label.CanLengthM ?? double.NaN);
        }

        var diameter = ledger.Figure(
            label.CanDiameterM,
            "motor.canDiameterMm",
            Unit.Millimetre,
            DiameterFromMass(label.MassKg ?? double.NaN, label.CanLengthM),
            Spread.Relative(0.12),
            "assumed: from the mass, 3500 kg/m³, length 1.4 times the diameter"
        );
        var length = ledger.Figure(
            label.CanLengthM,
            "motor.canLengthMm",
            Unit.Millimetre,
            LengthOverDiameter * diameter,
            Spread.Relative(0.25),
            "assumed: 1.4 times the diameter"
        );
        var mass = ledger.Figure(
            label.MassKg,
            "motor.massG",
            Unit.Gram,
            DensityKgPerM3 * Math.PI / 4 * diameter * diameter * length,
            Spread.Relative(0.25),
            "assumed: from the can's size, 3500 kg/m³"
        );
        return new(mass, diameter, length);
    }

    private static double DiameterFromMass(double massKg, double? lengthM)
    {
        var volume = massKg / DensityKgPerM3 * 4 / Math.PI;
        return lengthM is { } length
            ? Math.Sqrt(volume / length)
            : Math.Cbrt(volume / LengthOverDiameter);
    }
}
