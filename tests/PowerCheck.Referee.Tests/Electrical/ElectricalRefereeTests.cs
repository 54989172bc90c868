using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Rigs;
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
    public void What_stops_the_circuit_is_an_obstacle_to_the_check(PlainCase name) =>
        Assert.All(
            RefereedCases.All,
            rig =>
            {
                var (obstacle, circuit) = (rig.Of(name).Obstacle, rig.Circuits[name]);
                // A rotor that the controller does not see is told first, then its limit, then what the pack cannot carry.
                var blind = Blind(rig.Rig, name);
                var limited = !blind && circuit.MotorA > rig.Rig.Controller.CurrentLimitA;
                Assert.Equal(blind, obstacle == Obstacle.NoSensor);
                Assert.Equal(limited, obstacle == Obstacle.CurrentLimit);
                Assert.Equal(
                    !blind && !limited && !circuit.Attained,
                    PackObstacles.Contains(obstacle)
                );
            }
        );

    [RefereeTheory]
    [InlineData(PlainCase.Punch)]
    [InlineData(PlainCase.PunchAtReserve)]
    [InlineData(PlainCase.Jam)]
    public void What_the_circuit_holds_to_the_limit_is_limited_to_the_check(PlainCase name) =>
        Assert.All(
            RefereedCases.All,
            rig =>
                Assert.Equal(
                    rig.Circuits[name].MotorA >= rig.Rig.Controller.CurrentLimitA * (1 - 1e-6),
                    rig.Of(name).Obstacle == Obstacle.CurrentLimit
                )
        );

    [RefereeFact]
    public void A_stall_is_limited_where_full_throttle_of_the_circuit_gives_more_than_limit_or_burst() =>
        Assert.All(
            RefereedCases.All,
            rig =>
                Assert.Equal(
                    rig.Circuits[PlainCase.Stall].ProspectiveA
                        > (rig.Rig.Controller.CurrentLimitA ?? rig.Rig.Controller.BurstCurrentA),
                    rig.Of(PlainCase.Stall).Obstacle == Obstacle.CurrentLimit
                )
        );

    [RefereeFact]
    public void Each_obstacle_occurs_often_enough()
    {
        PlainCase[] cases = [PlainCase.Level, PlainCase.Climb, PlainCase.Slip];
        var told = RefereedCases
            .All.SelectMany(rig => cases.Select(one => rig.Of(one).Obstacle))
            .ToList();
        Obstacle?[] wanted =
        [
            null,
            Obstacle.NoSensor,
            Obstacle.CurrentLimit,
            Obstacle.BatteryPower,
            Obstacle.Voltage,
        ];
        Assert.All(wanted, one => Assert.True(told.Count(of => of == one) >= 5, $"{one}"));
    }

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

    // Without a sensor that is read, the back-EMF at the creep speed must be enough; a climb has to be started, too.
    private static bool Blind(PlainRig rig, PlainCase name)
    {
        var physics = new RigPhysics(rig);
        var sensorless = !rig.Motor.Brushed && !(rig.Motor.Sensored && rig.Controller.SensorInput);
        return sensorless
            && (
                physics.TorqueNmPerA * physics.CreepRadPerS < rig.Controller.LowSpeedBackEmfV
                || (name == PlainCase.Climb && !rig.Controller.LowSpeedStart)
            );
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
