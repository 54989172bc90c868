using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using PowerCheck.Referee.Tests.Deviations;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>The controller's thermal memory over a course, against stepping lap after lap through it (M7, M8).</summary>
public sealed class ControllerTests : IClassFixture<DeviationReport>
{
    private const int MostLaps = 20_000;

    [Fact]
    public void The_memory_rises_as_lap_after_lap_says()
    {
        var said = "";
        foreach (var rig in Integrated.All.Where(rig => !rig.Laps.Runaway))
        {
            var laps = Math.Max(
                1,
                Math.Round(rig.Plain.Rig.Course.WantedMinutes * 60 / rig.Laps.LapS)
            );
            var (start, peak) = Driven(rig, (int)laps);
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
    private static double Load(Integrated rig, Stretch stretch, Flow flow)
    {
        var controller = rig.Plain.Rig.Controller;
        var hot = controller.OnResistanceMilliohm / 1000 * controller.HotResistanceFactor;
        var switches = (((flow.MotorA * flow.MotorA) + flow.Ripple) * hot) + flow.SwitchW;
        var share = controller.StandstillRatingShare;
        var standing = stretch.Standing && !rig.Plain.Rig.Motor.Brushed;
        var supply = controller.ReceiverSupply;
        var linear = supply.Linear
            ? Math.Max(0, flow.BusV - supply.VoltageV) * rig.Plain.ReceiverA
            : 0;
        return ((standing ? switches / (share * share) : switches) + linear)
            / (controller.ContinuousCurrentA * controller.ContinuousCurrentA * hot);
    }

    // The level after the run's laps, and the highest of all laps until they repeat themselves, the motor warming along.
    private static (double End, double Peak) Driven(Integrated rig, int laps)
    {
        var x = rig.Laps.Cold;
        double level = 0,
            peak = 0,
            end = 0;
        for (var lap = 0; lap < MostLaps; lap++)
        {
            end = lap <= laps ? level : end;
            var before = (x, level);
            foreach (var stretch in rig.Laps.Stretches)
            {
                (x, level) = Over(rig, stretch, x, level, ref peak);
            }

            if (
                lap >= laps
                && Math.Abs(level - before.level) < 1e-7
                && (x - before.x).InfinityNorm() < 1e-5
            )
            {
                break;
            }
        }

        return (end, peak);
    }

    // In pieces so short that their middle stands for them: a locked winding warms fast.
    private static (Vector<double> X, double Level) Over(
        Integrated rig,
        Stretch stretch,
        Vector<double> x,
        double level,
        ref double peak
    )
    {
        var pieces = stretch.Standing ? (int)Math.Ceiling(stretch.Seconds) : 1;
        var seconds = stretch.Seconds / pieces;
        for (var n = 0; n < pieces; n++)
        {
            var next = rig.Laps.Over(stretch, x, seconds);
            var amid = (x + next) / 2;
            var load = Load(
                rig,
                stretch,
                stretch.At(0.5, amid[0], rig.Plain.MagnetC(amid[0], amid[1]))
            );
            var tau = rig.Plain.Rig.Controller.ThermalTimeConstantS;
            var steps = Math.Max(5, (int)(seconds / tau * 20)) + 1;
            level = RungeKutta.FourthOrder(level, 0, seconds, steps, (_, y) => (load - y) / tau)[
                ^1
            ];
            peak = Math.Max(peak, level);
            x = next;
        }

        return (x, level);
    }
}
