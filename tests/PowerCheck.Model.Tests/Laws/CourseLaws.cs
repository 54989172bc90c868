using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>How a lap is written down is of no account: only what is driven for how long.</summary>
[Trait("speed", "slow")]
public sealed class CourseLaws
{
    [Fact]
    public void A_course_cut_in_two_halves_gives_the_temperatures_of_the_whole() =>
        Law.Holds(
            100,
            0.2,
            label =>
            {
                var whole = label with { Course = AnyCourse.Of(label) };
                var a = SampleRig.Inspect(whole).Result.Temperatures;
                // Near runaway every step counts many times over.
                if (
                    !(a.MotorWinding.PeakC < 155)
                    || StopsRippling(SampleRig.Of(whole), whole.Course.Segments)
                )
                {
                    return null;
                }

                var b = SampleRig.Inspect(Halved(whole)).Result.Temperatures;
                return Motor(a, b, 0.2)
                    + Near("end", a.MotorWinding.CourseEndC, b.MotorWinding.CourseEndC, 0.2)
                    // Both run at each segment's mean winding temperature, which halves follow more closely.
                    + Near("controller", a.Controller.PeakC, b.Controller.PeakC, 0.5)
                    + Near("pack", a.Battery.PeakC, b.Battery.PeakC, 0.5);
            }
        );

    [Fact]
    public void A_lap_written_down_twice_is_two_laps() =>
        Law.Holds(
            100,
            0.3,
            label =>
            {
                var once = label with { Course = AnyCourse.Of(label) };
                var lap = once.Course.Segments;
                if (StopsRippling(SampleRig.Of(once), lap))
                {
                    return null;
                }

                var twice = once with { Course = once.Course with { Segments = [.. lap, .. lap] } };
                var (a, b) = (
                    SampleRig.Inspect(once).Result.Temperatures,
                    SampleRig.Inspect(twice).Result.Temperatures
                );
                // The repeating lap is found by rounds that close in the more slowly the nearer runaway is.
                var kelvin = a.MotorWinding.PeakC < 155 ? 1e-4 : 0.2;
                return Motor(a, b, kelvin)
                    + (
                        a.MotorWinding.PeakC < 155
                            ? Near("end", a.MotorWinding.CourseEndC, b.MotorWinding.CourseEndC, 0.2)
                            : ""
                    )
                    // Its loads follow the warmth at the start of a lap.
                    + Near("controller", a.Controller.PeakC, b.Controller.PeakC, 0.2)
                    + Near("pack", a.Battery.PeakC, b.Battery.PeakC, kelvin);
            }
        );

    // On a descent a motor drives or brakes, and a warm magnet turns one into the other: slow switching ripples in the first
    // and not in the second, so that the heat jumps within the lap.
    private static bool StopsRippling(Rig rig, IReadOnlyList<SegmentLabel> lap) =>
        rig.Ripples && lap.Any(s => s.SlopeRad < 0);

    private static RigLabel Halved(RigLabel whole) =>
        whole with
        {
            Course = whole.Course with
            {
                Segments =
                [
                    .. whole.Course.Segments.SelectMany(s =>
                        Enumerable.Repeat(s with { DurationS = s.DurationS / 2 }, 2)
                    ),
                ],
            },
        };

    private static string Motor(TemperatureReport a, TemperatureReport b, double kelvin) =>
        Near("winding", a.MotorWinding.PeakC, b.MotorWinding.PeakC, kelvin)
        + Near("magnet", a.MotorMagnet.PeakC, b.MotorMagnet.PeakC, kelvin)
        + Near("case", a.MotorCase.PeakC, b.MotorCase.PeakC, kelvin);

    private static string Near(string what, double a, double b, double kelvin) =>
        a.Equals(b) || Math.Abs(a - b) <= kelvin ? "" : $"{what}: {a:R} and {b:R} °C; ";
}
