using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Referee.Tests.Rigs;

public class PlainRigTests
{
    [Fact]
    public void Nothing_is_assumed_and_nothing_is_unknown_of_a_plain_rig() =>
        Assert.All(
            Refereed.Numbers,
            number =>
            {
                var ledger = RigCompletion.Of(PlainLabel.Of(RandomPlainRig.Of(number))).Ledger;
                Assert.Empty(ledger.Assumptions.Select(assumption => assumption.Path));
                Assert.Empty(ledger.Unknowns.Select(unknown => unknown.Path));
            }
        );

    [Fact]
    public void The_same_number_gives_the_same_rig() =>
        Assert.Equal(
            PlainLabel.Of(RandomPlainRig.Of(17)).Motor with
            {
                NoLoadPoints = [],
            },
            PlainLabel.Of(RandomPlainRig.Of(17)).Motor with
            {
                NoLoadPoints = [],
            }
        );

    [Fact]
    public void The_decks_come_from_a_project_that_does_not_know_the_model() =>
        Assert.DoesNotContain(
            typeof(PlainRig).Assembly.GetReferencedAssemblies(),
            name => name.Name!.StartsWith("PowerCheck.", StringComparison.Ordinal)
        );

    [Fact]
    public void Every_chemistry_kind_of_motor_and_way_to_switch_occurs_among_the_rigs()
    {
        var rigs = Refereed.Numbers.Select(RandomPlainRig.Of).ToList();
        Assert.Equal(5, rigs.Select(rig => rig.Battery.Chemistry).Distinct().Count());
        Assert.Equal(3, rigs.Select(rig => rig.Controller.Hold).Distinct().Count());
        Assert.Equal(6, rigs.Select(rig => rig.Controller.PwmFrequencyKhz).Distinct().Count());
        Assert.Equal(
            3,
            rigs.Select(rig => (rig.Motor.Brushed, rig.Motor.OuterRotor)).Distinct().Count()
        );
        Assert.Equal(
            4,
            rigs.Select(rig => (rig.Controller.DiodeFreewheel, rig.Motor.Brushed))
                .Distinct()
                .Count()
        );
        Assert.Equal(2, rigs.Select(rig => rig.Vehicle.MotorCount).Distinct().Count());
        Assert.Equal(
            2,
            rigs.Select(rig => rig.Controller.ReceiverSupply.Linear).Distinct().Count()
        );
        Assert.Equal(2, rigs.Select(rig => rig.Motor.NoLoadPoints.Count).Distinct().Count());
    }
}
