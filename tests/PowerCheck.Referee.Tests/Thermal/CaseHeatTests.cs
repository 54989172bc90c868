using PowerCheck.Referee.Tests.Deviations;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>Temperatures of jam and climb, each rig from cold, against circuits of heat.</summary>
public sealed class CaseHeatTests : IClassFixture<DeviationReport>
{
    private const int MostUnrippled = 1;

    private static readonly string[] Named =
    [
        "winding in a jam",
        "winding's limit in a jam",
        "winding in a climb",
        "case in a climb",
        "magnet in a climb",
        "winding's limit in a climb",
        "settled winding of a climb",
        "controller in a jam",
        "controller's limit in a jam",
        "controller in a climb",
        "controller's limit in a climb",
        "pack in a climb",
    ];

    public static TheoryData<string> Quantities => [.. Named];

    [RefereeTheory]
    [MemberData(nameof(Quantities))]
    public void Circuits_and_check_agree_on_the(string quantity)
    {
        var apart = RefereedHeat.All.SelectMany(rig => Apart(quantity, rig)).ToList();
        Assert.True(apart.Count == 0, string.Join('\n', apart));
    }

    [RefereeFact]
    public void Every_figure_that_is_compared_is_named() =>
        Assert.Equal(
            Named.Order(StringComparer.Ordinal),
            RefereedHeat
                .All.SelectMany(rig => rig.Compared)
                .Select(one => one.Quantity)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    [RefereeFact]
    public void The_simulator_solves_every_jam_and_climb()
    {
        var unsolved = RefereedHeat.All.Where(rig => rig.Unsolved).Select(rig => rig.Rig.Number);
        Assert.Empty(unsolved);
    }

    [RefereeFact]
    public void Nearly_every_jam_is_solved_with_its_ripple()
    {
        var without = RefereedHeat.All.Where(rig => rig.Unrippled).Select(rig => rig.Rig.Number);
        Assert.True(without.Count() <= MostUnrippled, string.Join(' ', without));
    }

    private static IEnumerable<string> Apart(string quantity, RefereedHeat rig) =>
        from one in rig.Compared
        where one.Quantity == quantity
        where
            !DeviationLedger.Record(
                quantity,
                "circuit simulator",
                one.DeviationK,
                ComparedHeat.ToleranceK,
                "K",
                $"rig {rig.Rig.Number}"
            )
        select FormattableString.Invariant(
            $"rig {rig.Rig.Number}: {quantity} {one.CheckC:F2} by the check, {one.CircuitC:F2} by the circuit"
        );
}
