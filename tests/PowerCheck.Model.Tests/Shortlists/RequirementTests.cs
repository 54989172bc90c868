using System.Collections.Concurrent;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Shortlists;

/// <summary>What a part must be able to do that is left open (M14), against checks of rigs with a part that is just so.</summary>
public sealed class RequirementTests
{
    public static TheoryData<SoughtPart, int> Searches
    {
        get
        {
            var searches = new TheoryData<SoughtPart, int>();
            foreach (var part in Enum.GetValues<SoughtPart>())
            {
                foreach (var number in Enumerable.Range(1, 10))
                {
                    searches.Add(part, number);
                }
            }

            return searches;
        }
    }

    // A rig as it is but for the figures of one part.
    private static RigLabel Without(SoughtPart part, RigLabel label) =>
        part switch
        {
            SoughtPart.Motor => label with { Motor = new() { Kind = label.Motor.Kind } },
            SoughtPart.Controller => label with { Controller = new() },
            SoughtPart.Battery => label with
            {
                Battery = new() { Chemistry = label.Battery.Chemistry },
            },
            _ => label with
            {
                Vehicle = label.Vehicle with
                {
                    Drivetrain = label.Vehicle.Drivetrain with { PinionTeeth = null },
                },
            },
        };

    private static readonly ConcurrentDictionary<(SoughtPart, int), RequiredPart> Searched = new();

    private static RequiredPart Found(SoughtPart part, int number) =>
        Searched.GetOrAdd(
            (part, number),
            _ => RequiredPart.Of(Without(part, RandomRig.Of(number)), part, SpreadMethod.None)
        );

    private static IReadOnlyList<Requirement> Figures(RequiredPart found) => found.Requirements;

    private static bool IsHeld(Finding finding) =>
        finding is { Outcome: Outcome.Holds, Caution: false };

    private static Finding Setter(Requirement requirement, RigLabel label, SpreadMethod spread) =>
        Check
            .Run(label, spread)
            .Findings.First(f =>
                f.Kind.Code == requirement.SetBy
                && string.Equals(f.LoadCase, requirement.LoadCase, StringComparison.Ordinal)
            );

    // KV is sought with the resistance that goes with it in a motor of that mass.
    private static RigLabel AsSought(Requirement requirement, RigLabel settled) =>
        requirement.Path == "motor.kvRpmPerVolt"
            ? settled with
            {
                Motor = settled.Motor with { ResistanceOhm = null },
            }
            : settled;

    private static double Bound(Requirement requirement) =>
        double.IsNaN(requirement.Minimum) ? requirement.Maximum : requirement.Minimum;

    [Theory]
    [MemberData(nameof(Searches))]
    public void A_part_that_is_just_so_holds_the_limits_that_set_it(SoughtPart part, int number)
    {
        var found = Found(part, number);

        Assert.All(
            Figures(found),
            requirement =>
                Assert.True(IsHeld(Setter(requirement, found.Settled, SpreadMethod.None)))
        );
    }

    [Theory]
    [MemberData(nameof(Searches))]
    public void A_part_one_step_short_of_it_does_not_hold_without_a_caution(
        SoughtPart part,
        int number
    )
    {
        var found = Found(part, number);

        Assert.All(
            Figures(found),
            requirement =>
            {
                var counted = requirement.Unit == Unit.Teeth || requirement.Unit == Unit.Cells;
                var (step, sign) = (
                    counted ? 1 : 0.05 * Bound(requirement),
                    double.IsNaN(requirement.Minimum) ? 1 : -1
                );
                var shortOf = RigFigures.With(
                    AsSought(requirement, found.Settled),
                    requirement.Path,
                    Bound(requirement) + (sign * step)
                );
                Assert.False(IsHeld(Setter(requirement, shortOf, SpreadMethod.None)));
            }
        );
    }

    [Fact]
    public void Most_parts_that_are_sought_have_something_to_be_able_to_do()
    {
        var found = Enumerable
            .Range(1, 10)
            .SelectMany(n =>
                Enum.GetValues<SoughtPart>().Select(part => Found(part, n).Requirements.Count)
            );

        Assert.True(found.Sum() > 100);
    }

    [Theory]
    [MemberData(nameof(Searches))]
    public void Of_what_is_the_better_the_more_the_least_is_told_and_the_other_way_about(
        SoughtPart part,
        int number
    ) =>
        Assert.All(
            Figures(Found(part, number)),
            requirement =>
            {
                var resistance = requirement.Unit == Unit.Milliohm;
                var window =
                    requirement.Unit == Unit.RpmPerVolt
                    || requirement.Unit == Unit.Cells
                    || requirement.Unit == Unit.Teeth;
                Assert.True(window || double.IsNaN(requirement.Minimum) == resistance);
            }
        );

    [Fact]
    public void A_pack_is_asked_for_a_resistance_that_cells_have()
    {
        // Cells of 800 to 6000 mAh have 1 to 20 mΩ: common practice, no source.
        var most = Enumerable
            .Range(1, 10)
            .SelectMany(n => Found(SoughtPart.Battery, n).Requirements)
            .Where(r => r.Path == "battery.cellResistanceMilliohm")
            .Select(r => Unit.Milliohm.FromSi(r.Maximum))
            .ToArray();

        Assert.True(most.Length > 3);
        Assert.All(most, milliohm => Assert.True(milliohm > 1, $"{milliohm}"));
    }

    [Fact]
    public void What_is_assumed_of_the_rig_and_of_a_motor_without_a_mass_is_listed()
    {
        var label = SampleRig.Brushless with { Motor = new() { Kind = MotorKind.Brushless } };
        var assumed = RequiredPart
            .Of(label, SoughtPart.Motor, SpreadMethod.None)
            .Assumptions.Select(a => a.Path)
            .ToArray();

        Assert.Contains("motor.massG", assumed);
        Assert.Contains("vehicle.drivetrain.efficiency", assumed);
        Assert.DoesNotContain(
            "motor.massG",
            RequiredPart
                .Of(
                    label with
                    {
                        Motor = new() { Kind = MotorKind.Brushless, MassKg = 0.2 },
                    },
                    SoughtPart.Motor,
                    SpreadMethod.None
                )
                .Assumptions.Select(a => a.Path)
        );
    }

    [Fact]
    public void A_pack_that_is_just_full_asks_a_controller_for_its_voltage()
    {
        // Three cells of 4.2 V, full: common practice, no source.
        var label = SampleRig.Brushless with
        {
            Controller = new(),
        };
        var voltage = RequiredPart
            .Of(label, SoughtPart.Controller, SpreadMethod.None)
            .Requirements.Single(r => r.Path == "controller.maxVoltageV");

        Assert.Equal(4.2 * label.Battery.SeriesCells!.Value, voltage.Minimum, 1e-6);
        Assert.Equal("controller.voltage", voltage.SetBy);
    }

    [Theory]
    [InlineData(SoughtPart.Controller)]
    [InlineData(SoughtPart.Battery)]
    [Trait("speed", "slow")]
    public void With_spread_a_part_that_is_just_so_is_within_its_limits_without_a_caution_and_five_per_cent_less_is_not(
        SoughtPart part
    )
    {
        var found = RequiredPart.Of(Without(part, SampleRig.Brushless), part, SpreadMethod.Linear);

        Assert.All(
            Figures(found).Where(r => r.Unit != Unit.Cells && r.Unit != Unit.Volt),
            requirement =>
            {
                var just = Setter(requirement, found.Settled, SpreadMethod.Linear);
                var sign = double.IsNaN(requirement.Minimum) ? 1.05 : 0.95;
                var beyond = Setter(
                    requirement,
                    RigFigures.With(found.Settled, requirement.Path, sign * Bound(requirement)),
                    SpreadMethod.Linear
                );
                Assert.True(IsHeld(just), $"{requirement.Path} {just.Message}");
                Assert.False(IsHeld(beyond), $"{requirement.Path} {beyond.Message}");
            }
        );
    }
}
