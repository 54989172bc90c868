using PowerCheck.Model.Materials;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Thermal;

/// <summary>Warmth of one motor in air of one temperature (M6).</summary>
/// <param name="Motor">The motor.</param>
/// <param name="AmbientC">Air temperature [°C].</param>
public sealed record MotorWarmth(Motor Motor, double AmbientC)
{
    /// <summary>Past this a settled temperature is called runaway [°C].</summary>
    public const double RunawayC = 400;

    /// <summary>A winding that hot drags everything past its limit at once; figures stay finite [°C].</summary>
    public const double FarBeyondC = 1e6;

    /// <summary>How far ahead a time to a limit is looked for [s].</summary>
    public const double HorizonS = 3600;

    /// <summary>How far ahead is looked at first [s], assumed.</summary>
    private const double FirstLookS = 60;

    /// <summary>Winding and case at the air's temperature.</summary>
    public MotorTemperature Cold => MotorTemperature.At(AmbientC);

    /// <summary>Weight of the winding in the magnet's temperature: the case's alone, or the mean of both.</summary>
    public double MagnetWeight => Motor.MagnetAtCase ? 0 : 0.5;

    /// <summary>Magnet temperature [°C].</summary>
    /// <param name="x">Winding and case.</param>
    public double MagnetC(MotorTemperature x) => x.Weighted(MagnetWeight);

    /// <summary>
    /// Lasting current above which a cool magnet's winding never settles [A]: α·i²·R₂₀·(R_wc + R_ca) = 1.
    /// </summary>
    public double RunawayA =>
        Math.Sqrt(
            1
                / (
                    Copper.TemperatureCoefficientPerK
                    * Motor.ResistanceOhm
                    * (Motor.Heat.WindingToCaseKPerW + Motor.Heat.CaseToAmbientKPerW)
                )
        );

    /// <summary>
    /// Lasting current that settles at the winding's limit [A], standing air, no spin heat:
    /// √[(T_lim − T_a)/((R_wc + R_ca)·R(T_lim))].
    /// </summary>
    public double ContinuousA =>
        Math.Sqrt(
            Math.Max(0, Motor.Heat.WindingLimitC - AmbientC)
                / (
                    (Motor.Heat.WindingToCaseKPerW + Motor.Heat.CaseToAmbientKPerW)
                    * Motor.ResistanceAt(Motor.Heat.WindingLimitC)
                )
        );

    /// <summary>
    /// Where a lasting drive settles: the one loop of the physics, in which resistance follows temperature follows current
    /// follows magnet. Infinite in runaway.
    /// </summary>
    /// <param name="drive">The drive.</param>
    public MotorTemperature Settled(Drive drive)
    {
        var x = Cold;
        var before = x;
        for (var round = 0; round < 500; round++)
        {
            var next = drive.Network(this, x).Settled;
            if (next.WindingC > RunawayC)
            {
                if (x.WindingC > RunawayC - 1e-6)
                {
                    return MotorTemperature.At(double.PositiveInfinity);
                }

                // A heat that falls as the motor warms may still settle: the next round asks at the bound.
                next = MotorTemperature.At(RunawayC);
            }

            if (!(next.DistanceK(x) >= 1e-7))
            {
                return next;
            }

            (before, x) = (x, next.Damped(x, before));
        }

        return x;
    }

    /// <summary>The temperatures after a drive of some time, in pieces short enough for the current to be held; infinite in runaway.</summary>
    /// <param name="drive">The drive.</param>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="seconds">How long [s].</param>
    public MotorTemperature After(Drive drive, MotorTemperature start, double seconds)
    {
        var x = start;
        for (var left = seconds; left > 0; )
        {
            if (x.WindingC > RunawayC)
            {
                return MotorTemperature.At(double.PositiveInfinity);
            }

            var piece = Piece.Next(this, drive, x, left);
            x = piece.Apply(x);
            left -= piece.Seconds;
        }

        return x.WindingC > RunawayC ? MotorTemperature.At(double.PositiveInfinity) : x;
    }

    /// <summary>First times at which winding and magnet reach their limits under a lasting drive [s].</summary>
    /// <param name="drive">The drive.</param>
    /// <param name="start">Temperatures at the start.</param>
    /// <param name="settled">Where the drive settles.</param>
    /// <returns>Infinity for what is not reached within an hour.</returns>
    public (double WindingS, double MagnetS) TimesToLimits(
        Drive drive,
        MotorTemperature start,
        MotorTemperature settled
    )
    {
        if (double.IsNaN(settled.WindingC))
        {
            return (double.NaN, double.NaN);
        }

        var heat = Motor.Heat;
        var winding = double.PositiveInfinity;
        var magnet = double.PositiveInfinity;
        var windingOpen = MayReach(settled, start, heat.WindingLimitC);
        var magnetOpen = MayReach(settled, start, heat.MagnetLimitC);
        var x = start;
        var piece = 0.0;
        for (var t = 0.0; (windingOpen || magnetOpen) && t < HorizonS; t += piece)
        {
            // Pieces may grow as time goes on: what warms fast does so at first.
            (var network, piece) = Piece.Next(
                this,
                drive,
                x,
                Math.Min(HorizonS - t, FirstLookS + t)
            );
            var next = network.Over(piece).Apply(x);
            if (windingOpen && network.Reaches(x, next, 1, heat.WindingLimitC))
            {
                winding = t + network.FirstCrossing(x, 1, heat.WindingLimitC, piece);
                windingOpen = false;
            }

            if (magnetOpen && network.Reaches(x, next, MagnetWeight, heat.MagnetLimitC))
            {
                magnet = t + network.FirstCrossing(x, MagnetWeight, heat.MagnetLimitC, piece);
                magnetOpen = false;
            }

            if (next.WindingC > FarBeyondC)
            {
                // The case follows within the next piece.
                return (winding, magnetOpen ? t + piece : magnet);
            }

            x = next;
        }

        return (winding, magnet);
    }

    // From no warmer than where it settles the motor never gets warmer than that, and the winding settles warmest. From a
    // warmer case the winding may overshoot.
    private static bool MayReach(MotorTemperature settled, MotorTemperature start, double limitC) =>
        settled.WindingC >= limitC
        || !(start.WindingC <= settled.WindingC && start.CaseC <= settled.CaseC);
}
