using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Courses;

/// <summary>How long the pack lasts on the course (M8).</summary>
public static class EnduranceRunner
{
    private const int Order = 16;

    /// <summary>
    /// Run time until the reserve, or until the bus falls under the cut-off in the hardest segment: the mean battery
    /// current of a lap, integrated over charge.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="lap">The lap.</param>
    public static EnduranceReport Run(Rig rig, LapLoad lap)
    {
        var (end, endsBy) = End(rig, lap);
        double Pace(double charge) =>
            rig.Battery.DischargeS(lap.Mean(charge, power => power.BatteryA));
        var seconds = end < 1 ? GaussLegendreRule.Integrate(Pace, end, 1, Order) : 0 * end;
        var energy =
            end < 1
                ? GaussLegendreRule.Integrate(
                    charge => Pace(charge) * lap.Mean(charge, power => power.BusV * power.BatteryA),
                    end,
                    1,
                    Order
                )
                : 0 * end;
        return new(
            double.IsNaN(end) ? double.NaN : seconds,
            endsBy,
            lap.Mean(CaseRunner.HalfCharge, power => power.BatteryA),
            lap.Rms(CaseRunner.HalfCharge, power => power.BatteryRmsA),
            lap.Rms(CaseRunner.HalfCharge, power => power.MotorRmsA),
            double.IsNaN(end) ? double.NaN : energy
        );
    }

    private static (double Charge, RunEnd? EndsBy) End(Rig rig, LapLoad lap)
    {
        double Spare(double charge) => lap.LowestBusV(charge) - rig.CutoffV;
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
