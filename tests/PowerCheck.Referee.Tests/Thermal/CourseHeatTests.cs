using System.Collections.Concurrent;
using PowerCheck.Circuit.Rigs;
using PowerCheck.Circuit.Simulator;
using PowerCheck.Circuit.Thermal;
using PowerCheck.Model.Checks;
using PowerCheck.Referee.Tests.Deviations;
using PowerCheck.Referee.Tests.Electrical;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>A course, lap after lap from cold, against a circuit whose currents follow the temperatures of the moment.</summary>
public sealed class CourseHeatTests : IClassFixture<DeviationReport>
{
    private const int MostUnsolved = 1;
    private const double SmoothFromKhz = 8;
    private static readonly double[] Laps = [1.4, 3, 6.7];

    [RefereeFact]
    public void Circuits_and_check_agree_on_the_temperatures_along_a_course()
    {
        var apart = new ConcurrentBag<string>();
        var rigs = RefereedCases
            .All.Where(one =>
                one.Rig.Controller.PwmFrequencyKhz >= SmoothFromKhz
                && one.Check.Temperatures.MotorWinding.PeakC < ComparedHeat.RunawayC
            )
            .Select(one => Unrippled(one.Rig))
            .ToList();
        Assert.True(rigs.Count >= 100, $"{rigs.Count} rigs");
        var unsolved = new ConcurrentBag<int>();
        rigs.AsParallel()
            .ForAll(rig =>
            {
                try
                {
                    Compare(rig, apart);
                }
                catch (SimulatorException)
                {
                    unsolved.Add(rig.Number);
                }
            });
        Assert.True(unsolved.Count <= MostUnsolved, string.Join(' ', unsolved.Order()));
        Assert.True(apart.IsEmpty, string.Join('\n', apart.Order(StringComparer.Ordinal)));
    }

    private static void Compare(PlainRig rig, ConcurrentBag<string> apart)
    {
        var lapS = rig.Course.Segments.Sum(segment => segment.Seconds);
        var moments = Array.ConvertAll(Laps, laps => laps * lapS);
        var run = new CourseHeat(new(rig)).Run(moments[^1], moments);
        foreach (var (laps, moment) in Laps.Zip(moments))
        {
            var check = At(rig, moment).Temperatures;
            Note("winding", check.MotorWinding.CourseEndC, run.At(CourseHeat.Winding, moment));
            Note("magnet", check.MotorMagnet.CourseEndC, run.At(CourseHeat.Magnet, moment));
            Note("case", check.MotorCase.CourseEndC, run.At(CourseHeat.Case, moment));
            var share = run.At(CourseHeat.Controller, moment);
            Note(
                "controller",
                check.Controller.CourseEndC,
                rig.Course.AmbientC + (share * (rig.Controller.MaxTemperatureC - 25))
            );

            void Note(string node, double checkC, double circuitC)
            {
                var where = FormattableString.Invariant($"rig {rig.Number}, {laps} laps");
                if (
                    !DeviationLedger.Record(
                        $"{node} along a course",
                        "circuit simulator",
                        Math.Abs(checkC - circuitC),
                        ComparedHeat.ToleranceK,
                        "K",
                        where
                    )
                )
                {
                    apart.Add(
                        FormattableString.Invariant(
                            $"{where}: {node} {checkC:F2} by the check, {circuitC:F2} by the circuit"
                        )
                    );
                }
            }
        }
    }

    // The circuits of a course have no ripple: none counts where switching is fast and no inductance is told.
    private static PlainRig Unrippled(PlainRig rig) =>
        rig with
        {
            Motor = rig.Motor with { InductanceMicrohenry = null },
        };

    private static CheckResult At(PlainRig rig, double seconds) =>
        Refereed.Check(rig with { Course = rig.Course with { WantedMinutes = seconds / 60 } });
}
