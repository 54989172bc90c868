using PowerCheck.Circuit.Electrical;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Referee.Tests.Deviations;
using PowerCheck.Referee.Tests.Rigs;
using Xunit.Abstractions;

namespace PowerCheck.Referee.Tests.Electrical;

public sealed class ElectricalRefereeTests(ITestOutputHelper output)
    : IClassFixture<DeviationReport>
{
    private const double TolerancePercent = 0.1;

    private static readonly Obstacle?[] PackObstacles = [Obstacle.BatteryPower, Obstacle.Voltage];

    // These are told before what the pack can carry.
    private static readonly Obstacle?[] EarlierObstacles =
    [
        Obstacle.NoSensor,
        Obstacle.CurrentLimit,
    ];

    public static TheoryData<string> Quantities => [.. Quantity.All.Select(one => one.Name)];

    [RefereeTheory]
    [MemberData(nameof(Quantities))]
    public void Circuits_and_check_agree_in_every_load_case_on(string quantity)
    {
        var one = Quantity.All.Single(one => one.Name == quantity);
        var apart = RefereedCases.All.SelectMany(rig => Apart(one, rig)).ToList();
        Assert.True(apart.Count == 0, string.Join('\n', apart));
    }

    [RefereeFact]
    public void Every_load_case_of_every_rig_is_refereed() =>
        Assert.Equal(
            Refereed.Count * Enum.GetValues<PlainCase>().Length,
            RefereedCases.All.Sum(rig => rig.Circuits.Count)
        );

    [RefereeTheory]
    [InlineData(PlainCase.Level)]
    [InlineData(PlainCase.Climb)]
    [InlineData(PlainCase.Slip)]
    public void What_the_pack_of_the_circuit_cannot_carry_is_an_obstacle_to_the_check(
        PlainCase name
    ) =>
        Assert.All(
            RefereedCases.All,
            rig =>
            {
                var obstacle = rig.Of(name).Obstacle;
                if (!EarlierObstacles.Contains(obstacle))
                {
                    Assert.Equal(!rig.Circuits[name].Attained, PackObstacles.Contains(obstacle));
                }
            }
        );

    [RefereeFact]
    public void At_least_a_fifth_of_the_rigs_are_hard_and_each_kind_of_hardship_occurs()
    {
        var hard = RefereedCases.All.Select(rig => HardRigs.Of(rig).ToList()).ToList();
        var kinds = hard.SelectMany(all => all).CountBy(kind => kind).OrderBy(kind => kind.Key);
        foreach (var (kind, count) in kinds)
        {
            output.WriteLine($"{count} of {Refereed.Count} rigs: {kind}");
        }

        output.WriteLine($"{hard.Count(all => all.Count > 0)} of {Refereed.Count} rigs: hard");
        Assert.True(hard.Count(all => all.Count > 0) >= Refereed.Count / 5);
        Assert.Equal(5, kinds.Count());
        Assert.All(kinds, kind => Assert.True(kind.Value >= 5, kind.Key));
    }

    private static IEnumerable<string> Apart(Quantity quantity, RefereedCases rig) =>
        from entry in rig.Circuits
        let check = rig.Of(entry.Key)
        where quantity.Told(check, entry.Value)
        let percent = quantity.DeviationPercent(check, entry.Value)
        where
            !DeviationLedger.Record(
                $"{quantity.Name}, load cases",
                "circuit simulator",
                percent,
                TolerancePercent,
                "%",
                $"rig {rig.Rig.Number}, {entry.Key}"
            )
        select $"rig {rig.Rig.Number}, {entry.Key}: {quantity.Name} {quantity.OfCheck(check):G8} by the check, {quantity.OfCircuit(entry.Value):G8} by the circuits, {percent:G3} % apart";
}
