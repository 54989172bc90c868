using MathNet.Numerics.OdeSolvers;
using PowerCheck.Referee.Tests.Deviations;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>The controller's thermal memory over a course, against stepping lap after lap through it (M7, M8).</summary>
public sealed class ControllerTests : IClassFixture<DeviationReport>
{
    [Fact]
    public void The_memory_rises_as_lap_after_lap_says()
    {
        var said = "";
        foreach (var rig in Integrated.All.Where(rig => !rig.Laps.Runaway))
        {
            var loads = rig.Emptied.Half.Select((flow, n) => Load(rig, n, flow)).ToArray();
            var laps = Math.Max(
                1,
                Math.Round(rig.Plain.Rig.Course.WantedMinutes * 60 / rig.Laps.LapS)
            );
            var (start, _) = Driven(rig, loads, (int)laps);
            var (_, peak) = Driven(rig, loads, 2000);
            var plain = rig.Plain.Rig;
            var whole = plain with
            {
                Course = plain.Course with { WantedMinutes = laps * rig.Laps.LapS / 60 },
            };
            said +=
                rig.Kelvin(
                    "end of whole laps, controller",
                    Shown(rig, start),
                    Refereed.Check(whole).Temperatures.Controller.CourseEndC
                )
                + rig.Kelvin(
                    "lap's peak, controller",
                    Shown(rig, peak),
                    rig.Check.Temperatures.Controller.PeakC
                );
        }

        Assert.True(said.Length == 0, said);
    }

    private static double Shown(Integrated rig, double level) =>
        rig.Plain.AmbientC + (level * (rig.Plain.Rig.Controller.MaxTemperatureC - 25));

    // Heat over what the continuous current makes in hot switches.
    private static double Load(Integrated rig, int n, Flow flow)
    {
        var controller = rig.Plain.Rig.Controller;
        var hot = controller.OnResistanceMilliohm / 1000 * controller.HotResistanceFactor;
        var switches = (((flow.MotorA * flow.MotorA) + flow.Ripple) * hot) + flow.SwitchW;
        var share = controller.StandstillRatingShare;
        var standing = rig.Laps.Stretches[n].Standing && !rig.Plain.Rig.Motor.Brushed;
        var supply = controller.ReceiverSupply;
        var linear = supply.Linear
            ? Math.Max(0, flow.BusV - supply.VoltageV) * rig.Plain.ReceiverA
            : 0;
        return ((standing ? switches / (share * share) : switches) + linear)
            / (controller.ContinuousCurrentA * controller.ContinuousCurrentA * hot);
    }

    // The level after some laps, and the highest within the last of them and where it starts.
    private static (double End, double Peak) Driven(Integrated rig, double[] loads, int laps)
    {
        var tau = rig.Plain.Rig.Controller.ThermalTimeConstantS;
        double level = 0,
            peak = 0;
        for (var lap = 0; lap < laps; lap++)
        {
            var before = level;
            peak = level;
            for (var n = 0; n < loads.Length; n++)
            {
                var steps = Math.Max(5, (int)(rig.Laps.Stretches[n].Seconds / tau * 20)) + 1;
                level = RungeKutta.FourthOrder(
                    level,
                    0,
                    rig.Laps.Stretches[n].Seconds,
                    steps,
                    (_, x) => (loads[n] - x) / tau
                )[^1];
                peak = Math.Max(peak, level);
            }

            if (Math.Abs(level - before) < 1e-10 * level)
            {
                break;
            }
        }

        return (level, peak);
    }
}
