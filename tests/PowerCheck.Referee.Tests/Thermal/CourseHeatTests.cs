using PowerCheck.Referee.Tests.Deviations;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>A course, lap after lap from cold, against a circuit whose currents follow the temperatures of the moment.</summary>
public sealed class CourseHeatTests : IClassFixture<DeviationReport>
{
    private const int LeastSlow = 60;

    private static readonly string[] Named =
    [
        "winding along a course",
        "case along a course",
        "magnet along a course",
        "controller along a course",
    ];

    public static TheoryData<string> Quantities => [.. Named];

    [RefereeTheory]
    [MemberData(nameof(Quantities))]
    public void Circuits_and_check_agree_on_the(string quantity)
    {
        var apart = RefereedCourse.All.SelectMany(course => Apart(quantity, course)).ToList();
        Assert.True(apart.Count == 0, string.Join('\n', apart));
    }

    [RefereeFact]
    public void Every_figure_that_is_compared_is_named() =>
        Assert.Equal(
            Named.Order(StringComparer.Ordinal),
            RefereedCourse
                .All.SelectMany(course => course.Compared)
                .Select(one => one.Heat.Quantity)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    [RefereeFact]
    public void The_simulator_solves_every_course_of_every_rig()
    {
        Assert.Equal(Refereed.Count, RefereedCourse.All.Count);
        Assert.Empty(
            RefereedCourse
                .All.Where(course => course.Compared.Count == 0)
                .Select(course => course.Rig.Number)
        );
    }

    [RefereeFact]
    public void Courses_without_a_smoothed_bus_are_among_them()
    {
        var slow = RefereedCourse.All.Where(course =>
            course.Rig.Controller.PwmFrequencyKhz < 4 && course.Compared.Count > 0
        );
        Assert.True(slow.Count() >= LeastSlow, $"{slow.Count()} courses");
    }

    private static IEnumerable<string> Apart(string quantity, RefereedCourse course) =>
        from one in course.Compared
        where one.Heat.Quantity == quantity
        let place = FormattableString.Invariant($"rig {course.Rig.Number}, {one.Laps} laps")
        where
            !DeviationLedger.Record(
                quantity,
                "circuit simulator",
                one.Heat.DeviationK,
                ComparedHeat.ToleranceK,
                "K",
                place
            )
        select FormattableString.Invariant(
            $"{place}: {quantity} {one.Heat.CheckC:F2} by the check, {one.Heat.CircuitC:F2} by the circuit"
        );
}
