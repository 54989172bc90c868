using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Courses;

/// <summary>How long the pack lasts on the course (M8).</summary>
public static class EnduranceRunner
{
    /// <summary>
    /// Charge is cut into so many stretches, each with a rule of so many points: the current bends where a segment is no
    /// longer reached.
    /// </summary>
    private const int Stretches = 8;
    private static readonly GaussLegendreRule Rule = new(0, 1, 4);

    /// <summary>
    /// Run time until the reserve, or until the bus falls under the cut-off in the hardest segment: the mean battery
    /// current of a lap, integrated over charge.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="lap">The lap.</param>
    /// <param name="half">What the lap takes half charged.</param>
    public static EnduranceReport Run(Rig rig, LapLoad lap, LapPower half)
    {
        var (end, endsBy) = End(rig, lap);
        var (seconds, energy) = Drain(rig, lap, end);
        return new(
            seconds,
            double.IsInfinity(seconds) ? null : endsBy,
            half.BatteryA,
            lap.Rms(half, power => power.BatteryRmsA),
            lap.Rms(half, power => power.MotorRmsA),
            energy
        );
    }

    // Time and energy from full to a charge, by Gauss-Legendre quadrature over charge.
    private static (double Seconds, double EnergyJ) Drain(Rig rig, LapLoad lap, double end)
    {
        if (!(end < 1))
        {
            return double.IsNaN(end) ? (end, end) : (0, 0);
        }

        var stretch = (1 - end) / Stretches;
        double seconds = 0,
            energy = 0;
        for (var piece = 0; piece < Stretches; piece++)
        {
            for (var n = 0; n < Rule.Order; n++)
            {
                var power = lap.At(end + (stretch * (piece + Rule.GetAbscissa(n))));
                var pace = stretch * Rule.GetWeight(n) * rig.Battery.DischargeS(power.BatteryA);
                seconds += pace;
                energy += pace * power.PowerW;
            }
        }

        return (seconds, energy);
    }

    private static (double Charge, RunEnd? EndsBy) End(Rig rig, LapLoad lap)
    {
        double Spare(double charge) => lap.At(charge).LowestBusV - rig.CutoffV;
        var reserve = rig.Battery.ReserveShare;
        var spare = Spare(reserve);
        if (double.IsNaN(spare))
        {
            return (double.NaN, null);
        }

        if (spare >= 0)
        {
            return (reserve, RunEnd.Reserve);
        }

        return Spare(1) <= 0
            ? (1, RunEnd.Cutoff)
            : (Brent.FindRoot(Spare, reserve, 1, 1e-9, 100), RunEnd.Cutoff);
    }
}
