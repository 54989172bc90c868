using PowerCheck.Circuit.Rigs;
using PowerCheck.Circuit.Simulator;
using PowerCheck.Circuit.Thermal;
using PowerCheck.Model.Checks;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>A rig's course from cold, by the check and by a circuit.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Compared">Every figure that both have, and after how many laps; empty where the simulator found no solution.</param>
internal sealed record RefereedCourse(
    PlainRig Rig,
    IReadOnlyList<(double Laps, ComparedHeat Heat)> Compared
)
{
    private static readonly double[] Laps = [1.4, 3, 6.7];

    private static readonly Lazy<IReadOnlyList<RefereedCourse>> Courses = new(() =>
        [.. Refereed.Numbers.AsParallel().AsOrdered().Select(n => Of(RandomPlainRig.Of(n)))]
    );

    /// <summary>All rigs, run once for all tests.</summary>
    public static IReadOnlyList<RefereedCourse> All => Courses.Value;

    private static RefereedCourse Of(PlainRig rig)
    {
        try
        {
            return new(rig, [.. Compare(rig)]);
        }
        catch (SimulatorException found) when (found.Unsolved)
        {
            return new(rig, []);
        }
    }

    private static IEnumerable<(double Laps, ComparedHeat Heat)> Compare(PlainRig rig)
    {
        var lapS = rig.Course.Segments.Sum(segment => segment.Seconds);
        var moments = Array.ConvertAll(Laps, laps => laps * lapS);
        var run = new CourseHeat(new(rig)).Run(moments[^1], moments);
        foreach (var (laps, moment) in Laps.Zip(moments))
        {
            var check = At(rig, moment).Temperatures;
            // What has run away once the check does not tell again.
            var ranAway = run.FirstReached(CourseHeat.Winding, ComparedHeat.RunawayC) <= moment;
            ComparedHeat Heat(string node, double checkC, double circuitC) =>
                new($"{node} along a course", checkC, circuitC) { RanAway = ranAway };

            yield return (
                laps,
                Heat("winding", check.MotorWinding.CourseEndC, run.At(CourseHeat.Winding, moment))
            );
            yield return (
                laps,
                Heat("magnet", check.MotorMagnet.CourseEndC, run.At(CourseHeat.Magnet, moment))
            );
            yield return (
                laps,
                Heat("case", check.MotorCase.CourseEndC, run.At(CourseHeat.Case, moment))
            );
            // Where the winding passes its limit the motor is lost: the controller's loads follow it no further.
            if (run.FirstReached(CourseHeat.Winding, check.MotorWinding.LimitC) > moments[^1])
            {
                var share = run.At(CourseHeat.Controller, moment);
                var circuitC =
                    rig.Course.AmbientC + (share * (rig.Controller.MaxTemperatureC - 25));
                yield return (laps, Heat("controller", check.Controller.CourseEndC, circuitC));
            }
        }
    }

    private static CheckResult At(PlainRig rig, double seconds) =>
        Refereed.Check(rig with { Course = rig.Course with { WantedMinutes = seconds / 60 } });
}
