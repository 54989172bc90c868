using MathNet.Numerics.OdeSolvers;
using PowerCheck.Referee.Tests.Deviations;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>Run time, energy, currents and warmth of the pack, against emptying it lap by lap (M2, M8).</summary>
public sealed class EnduranceTests : IClassFixture<DeviationReport>
{
    [Fact]
    public void A_run_is_as_long_as_emptying_the_pack_takes()
    {
        var said = "";
        var ran = 0;
        foreach (var rig in Integrated.All.Where(rig => !rig.Laps.Runaway))
        {
            var (own, check) = (rig.Emptied, rig.Check.Endurance);
            said +=
                rig.Percent("lap's mean battery current", own.MeanA, check.MeanBatteryCurrentA)
                + rig.Percent(
                    "lap's rms battery current",
                    own.RmsBatteryA,
                    check.RmsBatteryCurrentA
                )
                + rig.Percent("lap's rms motor current", own.RmsMotorA, check.RmsMotorCurrentA);
            if (own.Seconds == 0)
            {
                said += check.RunTimeS == 0 ? "" : $"rig {rig.Plain.Rig.Number} runs no time\n";
                continue;
            }

            ran++;
            said +=
                rig.Percent("run time", own.Seconds, check.RunTimeS)
                + rig.Percent("energy", own.Joule, check.EnergyJ)
                + rig.WithinALap(
                    "run time, each segment in turn",
                    own.SecondsInTurn,
                    check.RunTimeS
                );
        }

        Assert.True(said.Length == 0, said);
        Assert.True(ran >= 60, $"{ran} rigs run");
    }

    [Fact]
    public void A_pack_warms_as_stepping_through_its_run_says()
    {
        var said = "";
        foreach (var rig in Integrated.All.Where(rig => !rig.Laps.Runaway))
        {
            var pack = rig.Plain.Rig.Battery;
            var ohm = rig.Plain.PackOhm;
            var rms = rig.Emptied.RmsBatteryA;
            var run = Math.Min(rig.Plain.Rig.Course.WantedMinutes * 60, rig.Emptied.Seconds);
            // 1000 J/(kg·K) is a joule a gram.
            var end = RungeKutta.FourthOrder(
                pack.TemperatureC,
                0,
                run,
                4001,
                (_, t) =>
                    ((rms * rms * ohm) - ((t - rig.Plain.AmbientC) / pack.PackToAmbientKPerW))
                    / pack.MassG
            )[^1];
            said += rig.Kelvin(
                "end of the run, pack",
                end,
                rig.Check.Temperatures.Battery.CourseEndC
            );
        }

        Assert.True(said.Length == 0, said);
    }
}
